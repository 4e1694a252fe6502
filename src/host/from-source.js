// Starts a thread at a TypeScript module, in a checkout that is not compiled.
import { workerData } from 'node:worker_threads';
import { register } from 'tsx/esm/api';

register();
await import(workerData);
