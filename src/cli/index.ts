export { main } from './main.ts';
export type { Terminal } from './terminal.ts';
export type { RunningWorkbench, Workbench, WorkbenchOptions } from './workbench.ts';
