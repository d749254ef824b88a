import type { PlannedJob } from "../src/index.ts";
import type { TextColumn } from "../src/words/index.ts";

/** More of an answer: data for `--json`, and lines in words. */
export interface More {
  readonly data: Readonly<Record<string, unknown>>;
  readonly lines: readonly string[];
  /** The same as a table with one value a cell, where it is one. */
  readonly table?: readonly TextColumn[];
  /** What is to be minded, where it is of another way than the answer's own. */
  readonly cautions?: string;
  /** The job whose places are listed. */
  readonly planned?: PlannedJob;
}

/** Where nothing more was asked for. */
export const nothingMore: More = { data: {}, lines: [] };

/** What a command with options of its own has to say. */
export interface MoreOfJob extends More {
  readonly json: boolean;
  /** Whether it is the table alone that is told. */
  readonly csv?: boolean;
  readonly markdown?: boolean;
  /** Left out, 0. */
  readonly code?: number;
  /** A file that goes to the output instead of the words. */
  readonly bytes?: Uint8Array | undefined;
}
