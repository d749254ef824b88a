/*
 * What the library uses of the language that the browser of an old phone may lack; each is put where it is missing and nowhere else.
 */

type List = readonly unknown[];

function lend(owner: object, methods: object): void {
  for (const [name, value] of Object.entries(methods)) {
    if (!(name in owner)) Object.defineProperty(owner, name, { value });
  }
}

lend(Object, { hasOwn: (owner: object, key: PropertyKey) => Object.getOwnPropertyDescriptor(owner, key) !== undefined });
lend(Array.prototype, {
  at(this: List, index: number) {
    return this[index < 0 ? this.length + index : index];
  },
  toSorted(this: List, compare?: (a: unknown, b: unknown) => number) {
    return [...this].sort(compare);
  },
});
