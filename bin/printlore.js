#!/usr/bin/env node
'use strict';

require('./wanted-node.js').demand();
require('./launch.js');
