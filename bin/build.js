'use strict';

require('./wanted-node.js').demand();
require('./launch-build.js');
