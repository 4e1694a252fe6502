'use strict';

require('./wanted-node.js').demand();
require('./launch-checks.js');
