/** Whether everything is gone through, as `npm run soak` does, and not the share of it that each landing does. */
export const sweepsAll = process.env.SWEEP === "all";

/** What can be gone through: by its id, or a word. */
type Named = string | { readonly id: string };

const nameOf = (each: Named) => (typeof each === "string" ? each : each.id);

/** Pairs of each with each, with a name; of them as many that each comes at least once, where not everything is gone through. */
export function eachWithEach<One extends Named, Other extends Named>(
  ones: readonly One[],
  others: readonly Other[],
): readonly (readonly [name: string, One, Other])[] {
  return ones.flatMap((one, row) =>
    others.flatMap((other, column) =>
      sweepsAll || isOnDiagonal(row, column, ones.length, others.length)
        ? [[`${nameOf(one)}, ${nameOf(other)}`, one, other] as const]
        : [],
    ),
  );
}

/** Down a diagonal that begins again at the top of whichever is the shorter. */
function isOnDiagonal(row: number, column: number, rows: number, columns: number): boolean {
  return rows < columns ? column % rows === row : row % columns === column;
}

/** How many cases of a law that takes long are tried. */
export function runs(most: number): { readonly numRuns: number } {
  return { numRuns: sweepsAll ? most : Math.ceil(most / 3) };
}

/** The last count of a range that reaches to 400 in a soak; at a landing as far as every kind of row has come, and three figures. */
export const farthest = sweepsAll ? 400 : 130;

/** Of cases that take long all in a soak, and every so many-th of them at a landing, from the first on. */
export function everyOf<Case>(step: number, cases: readonly Case[]): readonly Case[] {
  return sweepsAll ? cases : cases.filter((_, index) => index % step === 0);
}
