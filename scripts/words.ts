import { mixed as mixedWith } from "../booklet/content/words.ts";
import { type Exact, formatAngle, type Head, type Setting } from "../src/index.ts";

export { counted as count } from "../booklet/content/words.ts";

const lineWidth = 78;
const labelWidth = 17;

/** One labelled line of an answer, folded under its own text. */
export function line(label: string, text: string): string {
  return fold(text, lineWidth - labelWidth - 2)
    .map((part, index) => `  ${(index === 0 ? label : "").padEnd(labelWidth)}${part}`)
    .join("\n");
}

/** A paragraph, folded and set in by two. */
export function paragraph(text: string): string {
  return fold(text, lineWidth - 2)
    .map((part) => `  ${part}`)
    .join("\n");
}

function fold(text: string, width: number): string[] {
  const lines: string[] = [];
  let current = "";
  for (const word of text.split(" ")) {
    if (current !== "" && current.length + 1 + word.length > width) {
      lines.push(current);
      current = word;
    } else {
      current = current === "" ? word : `${current} ${word}`;
    }
  }
  return [...lines, current];
}

/** An exact number as a machinist writes it: `2 1/3`. The sign is dropped. */
export function mixed(value: Exact): string {
  return mixedWith(value, " ");
}

/** A length of arc in a unit fit for its size. */
export function arc(arcSeconds: number): string {
  const size = Math.abs(arcSeconds);
  if (size >= 3600) return `${(size / 3600).toFixed(2)}°`;
  if (size >= 120) return `${(size / 60).toFixed(1)}′`;
  return size >= 0.095 || size === 0 ? `${size.toFixed(1)}″` : "under 0.1″";
}

/** A bound on an error, in a unit fit for its size; rounded upwards, so that nothing is further off than it says. */
export function arcUpTo(arcSeconds: number): string {
  const size = Math.abs(arcSeconds);
  const tenths = Math.ceil(size * 10) / 10;
  if (size >= 3600) return arc(Math.ceil(size / 36) * 36);
  return size >= 120 ? arc(Math.ceil(size / 6) * 6) : arc(tenths);
}

/** Which plate, and which face of it where it has two. */
export function plateName({ plate, face }: Pick<Setting, "plate" | "face">): string {
  return face === null ? `plate ${plate}` : `plate ${plate}, ${face} face`;
}

/** An angle in degrees, minutes and seconds to a tenth. */
export function degrees(angle: Exact): string {
  return formatAngle(angle, 1);
}

/** The head in one line: its name, and its ratio where the name does not say it. */
export function headLine(head: Pick<Head, "name" | "wormRatio">): string {
  const ratio = `${head.wormRatio}:1`;
  return head.name.includes(ratio) ? head.name : `${head.name} (${ratio})`;
}
