/** What a run of the command gives out, and what it ends with. */
export interface Said {
  /** 0: answered, or printed; 1: no exact setting. */
  readonly code: number;
  readonly text: string;
  /** A file that goes to the output itself. */
  readonly bytes?: Uint8Array;
  /** The paths of files that were written. */
  readonly written?: readonly string[];
}
