/** What the browser keeps between one time and the next; where it keeps nothing, the page does without. */
export interface Keep {
  read(name: string): unknown;
  write(name: string, value: unknown): void;
}

/**
 * Opens the browser's storage.
 *
 * @param owner - Whose it is: pages for other heads may share the storage of a browser, and must not take over each other's.
 */
export function keepFor(owner: string): Keep {
  const keyOf = (name: string) => `turns-and-holes ${owner} ${name}`;
  return {
    read(name) {
      try {
        return JSON.parse(localStorage.getItem(keyOf(name)) ?? "null");
      } catch {
        return null;
      }
    },
    write(name, value) {
      try {
        localStorage.setItem(keyOf(name), JSON.stringify(value));
      } catch {
        // Storage is full or forbidden: the place stands in the link all the same.
      }
    },
  };
}
