import type { Style, TextMark } from "./marks.ts";

/** Tells how wide text is, in points; refuses text with a character that the type lacks. */
export type Measure = (text: string, style: Style) => number;

/** In smaller type the figures of a set fraction could not be read. */
const leastWithFractions = 9.5;

/** Whether fractions in type of this size are set as such. */
export function setsFractions(size: number): boolean {
  return size >= leastWithFractions;
}

/**
 * Fractions as they are set: small figures over and under a slash, so that `53 1/3` is not read as
 * two columns, nor as 531/3. In small type they stay on the line.
 */
export function withFractions(text: string, size: number): string {
  if (!setsFractions(size) || !text.includes("/")) return text;
  return text.replace(/(?<=^|[^\d/])(\d+)\/(\d+)(?![\d/])/g, "$1⁄$2").replace(/\u00a0\u00a0(?=\d+⁄)/g, "\u00a0");
}

/** Sets text from x, which is its left edge, its middle or its right edge. */
export function setText(
  measure: Measure,
  text: string,
  style: Style,
  x: number,
  y: number,
  align: "left" | "center" | "right" = "left",
): TextMark {
  const set = withFractions(text, style.size);
  const width = measure(set, style);
  const left = align === "left" ? x : align === "right" ? x - width : x - width / 2;
  return { kind: "text", x: left, y, width, text: set, ...style };
}

/** Spaces that a line may end at: an angle such as `≈ 90° 00′ 00.0″` is one word, or its degrees alone would be read. */
const betweenWords = / (?!(?<=≈ )\d)(?!(?<=° )\d\d′)(?!(?<=′ )\d\d)/;

/** Breaks text into lines no wider than the measure; a word that is too long is broken anywhere. */
export function brokenIntoLines(measure: Measure, text: string, style: Style, width: number): readonly string[] {
  const space = measure(" ", style);
  const lines: string[] = [];
  let line = "";
  let used = 0;
  for (const word of text.split(betweenWords).flatMap((word) => pieces(measure, word, style, width))) {
    const wide = measure(word, style);
    if (line !== "" && used + space + wide > width) {
      lines.push(line);
      line = word;
      used = wide;
    } else {
      used += line === "" ? wide : space + wide;
      line = line === "" ? word : `${line} ${word}`;
    }
  }
  return [...lines, line];
}

/** Between the parts of a line that may go on below only where one of them ends. */
export const betweenParts = "  ·  ";

/** Breaks a line of several parts between them, and only a part that is too long within itself. */
export function brokenAtPoints(measure: Measure, text: string, style: Style, width: number): readonly string[] {
  const lines: string[] = [];
  for (const part of text.split(betweenParts)) {
    const last = lines.at(-1);
    const longer = `${last}${betweenParts}${part}`;
    if (last !== undefined && measure(longer, style) <= width) lines[lines.length - 1] = longer;
    else lines.push(...brokenIntoLines(measure, part, style, width));
  }
  return lines;
}

function pieces(measure: Measure, word: string, style: Style, width: number): readonly string[] {
  if (measure(word, style) <= width) return [word];
  const found: string[] = [];
  let piece = "";
  for (const letter of word) {
    if (piece !== "" && measure(piece + letter, style) > width) {
      found.push(piece);
      piece = letter;
    } else {
      piece += letter;
    }
  }
  return [...found, piece];
}
