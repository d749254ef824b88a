import type { Coverage, Head } from "../src/index.ts";
import {
  circleItems,
  expectedItems,
  headLine,
  type Item,
  kindWords,
  kitDoneItem,
  kitGearItems,
  kitMissingItem,
  kitTitle,
  methodWords,
  plateItems,
  untriedOfKitWords,
  wantItems,
  withoutPlateItems,
} from "../src/words/index.ts";
import { apart, itemLines, paragraph } from "./words.ts";

/** What a kit does and what it lacks, in words. */
export function kitLines(coverage: Coverage, head: Head): readonly string[] {
  const untried = untriedOfKitWords(coverage.untried);
  return [
    kitTitle(coverage),
    headLine(head),
    ...apart(itemLines([kitDoneItem(coverage), kitMissingItem(coverage), ...expectedItems(coverage)])),
    ...apart(gridLines(coverage)),
    ...apart(itemLines(withoutPlateItems(coverage))),
    ...titled("YOUR LIST", wantItems(coverage, head)),
    ...titled("WHAT WOULD ADD THE MOST", [...circleItems(coverage), ...plateItems(coverage), ...kitGearItems(coverage)]),
    ...apart(untried === "" ? [] : [paragraph(untried)]),
  ];
}

function titled(title: string, items: readonly Item[]): readonly string[] {
  return items.length === 0 ? [] : ["", title, ...itemLines(items)];
}

const inRow = 50;
/** A grid of more rows is no glance: its counts are listed all the same. */
const mostInGrid = 1000;

/** Every count in its place, the letter of its method in it; a point where there is none. */
function gridLines({ counts, from, to }: Coverage): readonly string[] {
  if (counts.length > mostInGrid) return [];
  const width = String(to).length;
  const letter = (divisions: number) => {
    const { kind = undefined } = counts[divisions - from] ?? {};
    return kind === undefined ? " " : kind === null ? "." : kindWords[kind].mark;
  };
  const rows: string[] = [];
  for (let first = from - (from % inRow); first <= to; first += inRow) {
    const tens = Array.from({ length: inRow / 10 }, (_, ten) =>
      Array.from({ length: 10 }, (_, one) => letter(first + 10 * ten + one)).join(""),
    );
    rows.push(`  ${String(first).padStart(width)}  ${tens.join(" ")}`.trimEnd());
  }
  const head = `  ${" ".repeat(width)}  ${Array(inRow / 10)
    .fill("0123456789")
    .join(" ")}`;
  return [head, ...rows, paragraph(`${legend(counts)}. is not done`)];
}

function legend(counts: Coverage["counts"]): string {
  const marks = new Map(
    Object.values(methodWords).flatMap(({ name, kinds }) =>
      Object.entries(kinds).flatMap(([kind, { mark }]) =>
        counts.some((each) => each.kind === kind) ? [[mark, name] as const] : [],
      ),
    ),
  );
  return [...marks].map(([mark, name]) => `${mark} ${name.toLowerCase()}, `).join("");
}
