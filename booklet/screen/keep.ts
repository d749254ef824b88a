/** What the browser keeps between one time and the next; where it keeps nothing, the page does while it is open. */
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
  const unkept = new Map<string, unknown>();
  const keyOf = (name: string) => `turns-and-holes ${owner} ${name}`;
  return {
    read(name) {
      if (unkept.has(name)) return unkept.get(name);
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
        // Storage is full or forbidden.
        unkept.set(name, value);
      }
    },
  };
}
