import type {
  Answer,
  Coordinate,
  Fault,
  NoJob,
  Place,
  PlannedJob,
  PossibleCount,
  TableRow,
  toothAt,
  UnequalSpacing,
  whatMoveGives,
} from "../../src/index.ts";

/** A refusal, of whatever question. */
export interface Refused {
  readonly error: {
    /** What the command ends with: 2 the question cannot be read, 3 a file cannot be read or written, 4 the program's own fault. */
    readonly status: 2 | 3 | 4;
    readonly message: string;
    readonly faults: readonly Fault[];
  };
}

/** A count or an angle. */
export type LookedUp = Answer & {
  /** With `--teeth`, `--after` or `--ring`. */
  readonly positions?: readonly Place[];
  /** With `--ring`: the tooth that it stands at. */
  readonly standingAt?: ReturnType<typeof toothAt>;
  /** With `--teeth` or `--after`. */
  readonly plan?: Omit<PlannedJob, "places"> | NoJob;
  /** With `--coordinates`, in millimetres. */
  readonly coordinates?: readonly Coordinate[];
  readonly chords?: readonly { readonly apart: number; readonly length: number }[];
};

/** `table`: every count in a range. */
export interface Tabled {
  readonly table: readonly TableRow[];
}

/** `spacing`. */
export interface Spaced {
  readonly spacing: UnequalSpacing;
}

/** An angle read by eye. */
export interface ByEye {
  readonly counts: readonly PossibleCount[];
}

/** `gives`: what a move really gives. */
export interface Gives {
  readonly gives: ReturnType<typeof whatMoveGives>;
}

/** `heads`. */
export interface Heads {
  readonly heads: readonly { readonly id: string; readonly name: string; readonly wormRatio: string }[];
}
