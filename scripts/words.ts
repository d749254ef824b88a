import { formatAngle, type Revolutions } from "../src/index.ts";
import type { Item } from "../src/words/index.ts";

const lineWidth = 78;
const labelWidth = 17;

/** One labelled line of an answer, folded under its own text. */
export function line(label: string, text: string): string {
  return fold(text, lineWidth - labelWidth - 2)
    .map((part, index) => `  ${(index === 0 ? label : "").padEnd(labelWidth)}${part}`)
    .join("\n");
}

/** Items, each on a line of its own. */
export function itemLines(items: readonly Item[]): string[] {
  return items.map(({ term, text }) => line(term, text));
}

/** A paragraph, folded and set in by two. */
export function paragraph(text: string): string {
  return fold(text, lineWidth - 2)
    .map((part) => `  ${part}`)
    .join("\n");
}

/** Lines set apart from what stands above, where there are any. */
export function apart(lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ["", ...lines];
}

/** A space where a line may break: not within an angle, nor before the name of a plate. */
const breaks = / (?!\d\d(?:\.\d+)?[′″])(?<!\(plate )(?<!≈ )/;

/** Breaks a text into lines no wider than asked for, but for a word that is. */
export function fold(text: string, width: number): string[] {
  const lines: string[] = [];
  let current = "";
  for (const word of text.split(breaks)) {
    if (current !== "" && current.length + 1 + word.length > width) {
      lines.push(current);
      current = word;
    } else {
      current = current === "" ? word : `${current} ${word}`;
    }
  }
  return [...lines, current];
}

/** An angle in degrees, minutes and seconds to a tenth. */
export function degrees(angle: Revolutions): string {
  return formatAngle(angle, 1);
}
