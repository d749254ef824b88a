/** More of an answer: data for `--json`, and lines in words. */
export interface More {
  readonly data: Readonly<Record<string, unknown>>;
  readonly lines: readonly string[];
  /** What is to be minded, where it is of another way than the answer's own. */
  readonly cautions?: string;
}

/** Where nothing more was asked for. */
export const nothingMore: More = { data: {}, lines: [] };
