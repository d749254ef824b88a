/** What spaces there may be in one round, in holes of a circle. */
export interface SpacesWanted {
  /** How many spaces there are. */
  readonly many: number;
  /** What they come to. */
  readonly sum: number;
  /** The least and the greatest of them. */
  readonly least: number;
  readonly greatest: number;
}

/**
 * Spaces that all differ, spread evenly from the least to the greatest and put small beside large; null
 * where there are not so many, or they cannot come to the sum.
 */
export function allDifferent({ many, sum, least, greatest }: SpacesWanted): readonly number[] | null {
  if (many < 2 || greatest - least < many - 1) return null;
  const spaces = Array.from({ length: many }, (_, index) => Math.round(least + (index * (greatest - least)) / (many - 1)));
  let missing = sum - spaces.reduce((total, each) => total + each, 0);
  const step = Math.sign(missing);
  // The outermost on the side that has to give way moves first, so that there is room for the next.
  const order = step > 0 ? [...spaces.keys()].reverse() : [...spaces.keys()];
  for (let moved = true; missing !== 0 && moved; ) {
    moved = false;
    for (const index of order) {
      const next = (spaces[index] ?? 0) + step;
      if (missing === 0 || next < least || next > greatest || spaces[index + step] === next) continue;
      spaces[index] = next;
      missing -= step;
      moved = true;
    }
  }
  return missing === 0 ? smallBesideLarge(spaces) : null;
}

function smallBesideLarge(ascending: readonly number[]): readonly number[] {
  return ascending.map((_, index) => (index % 2 === 0 ? ascending[index / 2] : ascending.at(-(index + 1) / 2)) ?? 0);
}

/**
 * Spaces of which no two neighbours are alike, the last and the first among them; null where there are none.
 *
 * They begin as the least that may be, by turns the least and one more, and where they are odd in number the
 * last two more. From there first the larger and then the smaller are raised one by one, which passes through
 * every sum up to the greatest there is: so nothing is found only where there is nothing.
 */
export function neighboursDiffer({ many, sum, least, greatest }: SpacesWanted): readonly number[] | null {
  const isOdd = many % 2 === 1;
  if (many < 2 || greatest - least < (isOdd ? 2 : 1)) return null;
  const spaces = Array.from({ length: many }, (_, index) => least + (isOdd && index === many - 1 ? 2 : index % 2));
  let missing = sum - spaces.reduce((total, each) => total + each, 0);
  if (missing < 0) return null;
  const last = isOdd ? [many - 1] : [];
  const paired = [...spaces.keys()].slice(0, many - last.length).reverse();
  const order = [...last, ...paired.filter((index) => index % 2 === 1), ...paired.filter((index) => index % 2 === 0)];
  for (const index of order) {
    const now = spaces[index] ?? 0;
    const above = [spaces.at(index - 1) ?? 0, spaces[(index + 1) % many] ?? 0].filter((each) => each > now);
    // Not beyond a neighbour that is larger, nor up to it.
    const raised = Math.min(missing, Math.min(greatest, ...above.map((each) => each - 1)) - now);
    spaces[index] = now + raised;
    missing -= raised;
  }
  return missing === 0 ? spaces : null;
}
