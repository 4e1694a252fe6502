import { forbidden, options } from './tools/walls/rules.js';

export default { forbidden, options };
