import type { Head, Scale } from "../../src/index.ts";
import { counted, mixed, plateWithCircles } from "../../src/words/index.ts";
import type { Edition } from "../edition.ts";
import type { Block, PanelBlock, Part } from "./blocks.ts";
import type { Desk } from "./parts.ts";
import type { BookSection } from "./sections.ts";
import { degreesPerTurn, ratioInWords } from "./words.ts";

/** The title page: the head as its owner described it, the contents, and how the book was made. */
export function titlePart(desk: Desk, edition: Edition, parts: readonly Part[]): Part {
  const { head, counts } = desk;
  const [from, to] = [counts[0]?.divisions ?? 0, counts.at(-1)?.divisions ?? 0];
  const blocks: Block[] = [
    { kind: "panel", items: atAGlance(desk) },
    {
      kind: "paragraph",
      text: `One turn of the ${head.plates.length === 0 ? "handwheel" : "crank"} turns the spindle ${degreesPerTurn(head)}. Prove it before the first job: chalk the spindle and turn it round once. That must take ${mixed(head.wormRatio)} turns; if it does not, this book is for another head.`,
    },
    { kind: "list", items: equipment(head) },
    { kind: "heading", text: "Contents" },
    { kind: "list", folds: true, items: parts.map(({ id, title }) => ({ term: `page {page:${id}}`, text: title, link: id })) },
    { kind: "heading", text: "How this book was made" },
    {
      kind: "paragraph",
      style: "small",
      text: `Turns & Holes, edition ${edition.version}, counts ${from} to ${to}, inputs ${edition.digest}. Every setting in it was turned through all its moves on a model of the mechanism (crank, pin, plate, gears, worm, spindle, in exact fractions) before it was printed.`,
    },
    {
      kind: "paragraph",
      style: "caution",
      text: "Lock the spindle before each cut and unlock it before each move. Stop the cutter before reaching near it. The machine’s manual, local rules and qualified practice come before this book.",
    },
    { kind: "ruled", text: "Owner, head, and the day its turns were counted", lines: 2, least: 1 },
  ];
  return { id: "title", title: head.name, blocks };
}

/** The ratio, large, and how many counts are done by what. */
function atAGlance({ head, counts }: Desk): PanelBlock["items"] {
  const many = (sections: readonly BookSection[]) => counts.filter(({ section }) => sections.includes(section)).length;
  const ways = [
    { head: "NO GEARS", figure: many(["simple", "direct", "dial"]), under: "counts" },
    { head: "WITH GEARS", figure: many(["geared"]), under: "counts" },
    { head: "TWO MOVES", figure: many(["compound"]), under: "counts" },
    { head: "NOT POSSIBLE", figure: many(["impossible"]), under: "counts" },
  ];
  return [
    { head: "WORM RATIO", figure: ratioInWords(head.wormRatio).replaceAll(" ", ""), under: `${degreesPerTurn(head)} a turn` },
    ...ways.filter(({ figure }) => figure > 0).map((way) => ({ ...way, figure: String(way.figure) })),
  ];
}

function equipment(head: Head): { term: string; text: string }[] {
  return [
    ...head.plates.map((plate) => ({ term: "Plate", text: plateWithCircles(plate) })),
    ...head.directPlates.map(({ name, holes }) => ({ term: "Direct plate", text: `${name}: ${holes}` })),
    ...(head.plates.length === 0 ? [{ term: "Plates", text: "none" }] : []),
    { term: "Change gears", text: head.gears.length === 0 ? "none" : head.gears.join(" ") },
    { term: "Gearing", text: gearingInWords(head) },
    { term: "Rear pin", text: head.rearPin ? "yes: compound indexing can be done" : "none" },
    { term: "Ring", text: scaleInWords(head.ring) },
    { term: "Dial", text: scaleInWords(head.dial) },
  ];
}

function gearingInWords({ gearing }: Head): string {
  if (gearing === null) return "the plate cannot be geared to the spindle";
  const { onePair, twoPairs } = gearing.idlersWithCrank;
  return `the plate turns with the crank with ${counted(onePair, "idler")} in one pair and ${counted(twoPairs, "idler")} in two pairs; one idler more turns it against the crank`;
}

function scaleInWords(scale: Scale | null): string {
  if (scale === null) return "none";
  const vernier = scale.vernierLines > 1 ? `, vernier of ${scale.vernierLines}` : ", no vernier";
  return `${scale.marksPerTurn} marks a turn${vernier}`;
}
