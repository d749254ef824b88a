/** More of an answer: data for `--json`, and lines in words. */
export interface More {
  readonly data: Readonly<Record<string, unknown>>;
  readonly lines: readonly string[];
}

/** Where nothing more was asked for. */
export const nothingMore: More = { data: {}, lines: [] };
