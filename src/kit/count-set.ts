/** Some of the counts of a list, each told by its place in it: a bit for each, so that thousands are put together at once. */
export type CountSet = Uint32Array;

/** None of so many counts. */
export function noCounts(of: number): CountSet {
  return new Uint32Array(Math.ceil(of / 32));
}

/** Adds the count at a place of the list. */
export function addCount(set: CountSet, place: number): void {
  const word = place >>> 5;
  set[word] = (set[word] ?? 0) | (1 << (place & 31));
}

/** Whether the count at a place of the list is one of them. */
export function hasCount(set: CountSet, place: number): boolean {
  return (((set[place >>> 5] ?? 0) >>> (place & 31)) & 1) === 1;
}

/** The counts of any of the sets, which are all of one list. */
export function anyOf(first: CountSet, ...others: readonly (CountSet | undefined)[]): CountSet {
  const all = first.slice();
  for (const other of others) {
    if (other === undefined) continue;
    for (let word = 0; word < all.length; word += 1) all[word] = (all[word] ?? 0) | (other[word] ?? 0);
  }
  return all;
}

/** How many counts are in both sets. */
export function sharedCounts(one: CountSet, other: CountSet): number {
  let shared = 0;
  for (let word = 0; word < one.length; word += 1) shared += bitsOf((one[word] ?? 0) & (other[word] ?? 0));
  return shared;
}

/** How many counts there are in a set. */
export function countsIn(set: CountSet): number {
  return sharedCounts(set, set);
}

/** How many bits of a word are set: pairs, fours and bytes added side by side. */
function bitsOf(word: number): number {
  const pairs = word - ((word >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

/** Of those that do the same counts only the first, with the others beside it. */
export function distinctBy<Each extends { readonly does: CountSet }>(
  all: readonly Each[],
): readonly (Each & { readonly others: readonly Each[] })[] {
  const groups = new Map<string, Each & { readonly others: Each[] }>();
  for (const each of all) {
    const key = each.does.join();
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { ...each, others: [] });
    else group.others.push(each);
  }
  return [...groups.values()];
}
