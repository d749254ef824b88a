import type { Coverage, Head } from "../../src/index.ts";
import {
  circleItems,
  expectedItems,
  type Item,
  kindWords,
  kitDoneItem,
  kitGearItems,
  kitMissingItem,
  plateItems,
  untriedOfKitWords,
  wantItems,
  withoutPlateItems,
} from "../../src/words/index.ts";
import type { Edition } from "../edition.ts";
import type { Block, Book, GridBlock } from "./blocks.ts";
import { runningOf } from "./book.ts";
import { itemList } from "./item-list.ts";
import { keyedHead } from "./plate-keys.ts";
import { type BookSection, bookSections, sectionWords } from "./sections.ts";
import { ratioOrNone } from "./words.ts";

/** What the sheet of a kit is made from. */
export interface KitSheet {
  /** What `coverage` of the library says of the head. */
  readonly kit: Coverage;
  readonly head: Head;
}

/** Writes the sheet of a kit: every count at a glance, what is lost with a plate, and what would add the most. */
export function kitBookOf({ kit: answer, head }: KitSheet, edition: Edition): Book {
  const { from, to } = answer;
  return {
    title: head.name,
    fileTitle: `What this kit does, ${from} to ${to}: ${head.name}`,
    subject: `What is done, what is not and what would add the most, on ${ratioOrNone(head)}`,
    digest: edition.digest,
    running: runningOf(keyedHead(head), edition),
    sheetsStandAlone: false,
    parts: [
      {
        id: "kit",
        title: `What this kit does, ${from} to ${to}`,
        blocks: [
          itemList([
            kitDoneItem(answer),
            // The grid shows them all, but for those of the list beyond it.
            ...(hasGrid(answer) ? [] : [kitMissingItem(answer)]),
            ...expectedItems(answer),
          ]),
          ...grid(answer),
          ...titled("Without a plate", withoutPlateItems(answer)),
          ...titled("Your list", wantItems(answer, head)),
          ...titled("What would add the most", [...circleItems(answer), ...plateItems(answer), ...kitGearItems(answer)]),
          ...untried(answer),
          { kind: "ruled", text: "Notes: bought, drilled, lent, date", lines: 4, least: 1 },
        ],
      },
    ],
  };
}

function titled(text: string, items: readonly Item[]): readonly Block[] {
  return items.length === 0
    ? []
    : [
        { kind: "heading", text },
        { ...itemList(items), together: true },
      ];
}

function untried(answer: Coverage): readonly Block[] {
  const text = untriedOfKitWords(answer.untried);
  return text === "" ? [] : [{ kind: "paragraph", style: "small", text }];
}

/** A grid of more counts is no glance; all that are not done are listed all the same. */
const mostInGrid = 600;

function hasGrid({ counts }: Coverage): boolean {
  return counts.length <= mostInGrid;
}

function grid(answer: Coverage): readonly GridBlock[] {
  if (!hasGrid(answer)) return [];
  const { counts, complete } = answer;
  const none: BookSection = complete ? "impossible" : "unfound";
  const cells = counts.map(({ divisions, kind }) => ({ divisions, section: kind === null ? none : kindWords[kind].section }));
  const used = bookSections.filter((section) => cells.some((cell) => cell.section === section));
  const said = (section: BookSection) =>
    `${cells.filter((cell) => cell.section === section).length} of ${cells.length} ${sectionWords[section].done}`;
  return [
    {
      kind: "grid",
      small: true,
      summary: `Every count by how it is done: ${used.map(said).join("; ")}.`,
      key: used.map((section) => ({ look: sectionWords[section].look, text: said(section) })),
      cells: cells.map(({ divisions, section }) => ({ text: String(divisions), look: sectionWords[section].look })),
    },
  ];
}
