import type { Head } from "../../src/index.ts";

/** A letter that stands for a plate on the page, with the name that the page gives it. */
export interface PrintedKey {
  readonly key: string;
  readonly name: string;
}

/** The letters that print gives to the plates of a head, read from its lines: `A = first plate, from the old machine`. */
export function keysPrinted(lines: readonly string[], head: Head): readonly PrintedKey[] {
  const names = [...head.plates, ...head.directPlates].map(({ name }) => ({ name, letters: withoutGaps(name) }));
  // Names are broken into lines anywhere between words.
  const text = withoutGaps(lines.join(" "));
  const found = new Map<string, string>();
  for (const { key, at } of keysIn(text)) {
    const said = text.slice(at);
    const [named] = names.filter(({ letters }) => said.startsWith(letters)).sort((a, b) => b.letters.length - a.letters.length);
    if (named !== undefined) found.set(key, named.name);
  }
  return [...found].map(([key, name]) => ({ key, name }));
}

function withoutGaps(text: string): string {
  return text.replace(/[\s|]+/g, "");
}

function keysIn(text: string): readonly { readonly key: string; readonly at: number }[] {
  return [...text.matchAll(/(?<![A-Z])([A-Z]{1,2})=/g)].map((match) => ({
    key: match[1] ?? "",
    at: (match.index ?? 0) + match[0].length,
  }));
}

/** The head with its plates named as print names them: by a letter where its lines give one. */
export function headAsPrinted(lines: readonly string[], head: Head): Head {
  const keys = new Map(keysPrinted(lines, head).map(({ key, name }) => [name, key]));
  const short = <Named extends { readonly name: string }>(plate: Named) => ({
    ...plate,
    name: keys.get(plate.name) ?? plate.name,
  });
  return { ...head, plates: head.plates.map(short), directPlates: head.directPlates.map(short), mounted: null };
}
