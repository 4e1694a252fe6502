/** A place where a rule of the house is broken. */
export interface Finding {
  readonly file: string;
  /** From 1. */
  readonly line: number;
  readonly says: string;
}
