/** How the workbench is to be started. */
export interface WorkbenchOptions {
  /** Dossier to open; without one the last or the demo. */
  readonly folder?: string;
  /** Port that is tried first; a busy one gets the next. */
  readonly port?: number;
}

/** A workbench that answers. */
export interface RunningWorkbench {
  /** Address for the browser. */
  readonly url: string;
  close(): Promise<void>;
}

/** Starts the workbench; given from outside, because the terminal does not know the server. */
export interface Workbench {
  start(options: WorkbenchOptions): Promise<RunningWorkbench>;
}
