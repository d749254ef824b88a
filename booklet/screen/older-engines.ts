/*
 * What the library uses of the language that a phone's browser may be too old for; each is put where it is missing and nowhere else.
 */

function lend(owner: object, name: string, value: unknown): void {
  if (!(name in owner)) Object.defineProperty(owner, name, { value, writable: true, configurable: true });
}

function at<Each>(this: ArrayLike<Each>, index: number): Each | undefined {
  return this[index < 0 ? this.length + index : index];
}

lend(Array.prototype, "at", at);
lend(String.prototype, "at", at);
lend(Array.prototype, "toSorted", function <Each>(this: readonly Each[], compare?: (a: Each, b: Each) => number) {
  return [...this].sort(compare);
});
lend(Array.prototype, "toReversed", function <Each>(this: readonly Each[]) {
  return [...this].reverse();
});
lend(Array.prototype, "findLast", function <Each>(this: readonly Each[], isIt: (each: Each) => boolean) {
  return [...this].reverse().find(isIt);
});
lend(Object, "hasOwn", (owner: object, key: PropertyKey) => Object.prototype.hasOwnProperty.call(owner, key));
lend(Element.prototype, "replaceChildren", function (this: Element, ...children: (Node | string)[]) {
  this.textContent = "";
  this.append(...children);
});
