import { placesOf } from "../../src/head/direct-plate.ts";
import type { Head, Scale } from "../../src/index.ts";
import { arcUpTo, capital, counted, directNouns, handOf, mixed, plateWithCircles } from "../../src/words/index.ts";
import type { Edition } from "../edition.ts";
import type { Block, PanelBlock, Part } from "./blocks.ts";
import type { Desk } from "./parts.ts";
import { plateInFull } from "./plate-keys.ts";
import { isReadHead } from "./readings.ts";
import type { BookSection } from "./sections.ts";
import { degreesPerTurn, placesInWords, ratioInWords } from "./words.ts";

/** The title page: the head as its owner described it, the contents, and how the book was made. */
export function titlePart(desk: Desk, edition: Edition, parts: readonly Part[]): Part {
  const { head, counts } = desk;
  const [from, to] = [counts[0]?.divisions ?? 0, counts.at(-1)?.divisions ?? 0];
  const blocks: Block[] = [
    { kind: "panel", items: atAGlance(desk) },
    {
      kind: "paragraph",
      text:
        head.wormRatio === null
          ? "No crank turns this spindle: it is turned by hand and set by what stands below. Prove that before the first job: count the places once round. If there are not as many, this book is for another head."
          : `One turn of the ${handOf(head)} turns the spindle ${degreesPerTurn(head)}. Prove it before the first job: chalk the spindle and turn it round once. That must take ${mixed(head.wormRatio)} turns; if it does not, this book is for another head.`,
    },
    { kind: "list", items: equipment(desk) },
    { kind: "heading", text: "Contents" },
    { kind: "list", folds: true, items: parts.map(({ id, title }) => ({ term: `page {page:${id}}`, text: title, link: id })) },
    { kind: "heading", text: "How this book was made" },
    {
      kind: "paragraph",
      style: "small",
      text: `Turns & Holes, edition ${edition.version}, counts ${from} to ${to}, inputs ${edition.digest}. ${proved(head)}${leftUntried(counts)}`,
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
  const ways = isReadHead(head)
    ? [
        { head: "ON THE MARKS", figure: many(["simple", "direct", "dial"]), under: "counts, exact" },
        { head: "FROM ONE ZERO", figure: many(["readings"]), under: `counts, within ${withinAtMost(counts)}` },
        { head: "NOT POSSIBLE", figure: many(["impossible"]), under: "counts" },
        { head: "NOT FOUND", figure: many(["unfound"]), under: "counts" },
      ]
    : [
        { head: head.wormRatio === null ? "EXACT" : "NO GEARS", figure: many(["simple", "direct", "dial"]), under: "counts" },
        { head: "BOTH CRANKS", figure: many(["wide-range"]), under: "counts" },
        { head: "WITH GEARS", figure: many(["geared"]), under: "counts" },
        { head: "TWO MOVES", figure: many(["compound"]), under: "counts" },
        { head: "NOT POSSIBLE", figure: many(["impossible"]), under: "counts" },
        { head: "NOT FOUND", figure: many(["unfound"]), under: "counts" },
      ];
  return [
    head.wormRatio === null
      ? { head: "NO CRANK", figure: String(mostPlaces(head)), under: "places a turn at most" }
      : { head: "WORM RATIO", figure: ratioInWords(head.wormRatio).replaceAll(" ", ""), under: `${degreesPerTurn(head)} a turn` },
    ...ways.filter(({ figure }) => figure > 0).map((way) => ({ ...way, figure: String(way.figure) })),
  ];
}

/** Of direct plates and ring, what can be set to the most places in a turn. */
function mostPlaces({ directPlates, ring }: Head): number {
  return Math.max(ring === null ? 0 : ring.marksPerTurn * ring.vernierLines, ...directPlates.map(placesOf));
}

/** How far the worst position of any count that is read off is from its place. */
function withinAtMost(counts: Desk["counts"]): string {
  return arcUpTo(Math.max(0, ...counts.map(({ read }) => read?.worstArcSeconds ?? 0)));
}

/** How what is printed was proved. */
function proved(head: Head): string {
  const tried = "was turned through all its moves on a model of the mechanism";
  if (head.wormRatio === null)
    return `Every count by a plate ${tried} (pin, plate, spindle, in exact fractions) before it was printed${head.ring === null ? "" : "; every other position is read off the ring from one exact zero"}.`;
  return isReadHead(head)
    ? `Every count from mark to mark ${tried} (handwheel, worm, spindle, in exact fractions) before it was printed; every other position is read off the scales from one exact zero.`
    : `Every setting in it ${tried} (crank, pin, plate, gears, worm, spindle, in exact fractions) before it was printed.`;
}

/** That better settings may have been left; of those that were not found their own part tells. */
function leftUntried(counts: Desk["counts"]): string {
  const many = counts.filter(({ setting, complete }) => setting !== null && !complete).length;
  if (many === 0) return "";
  return ` This head has so many circles or gears that for ${counted(many, "count")} not everything was tried: there may be better settings.`;
}

/** What the owner described; of what there is none, only what a reader would look for. */
function equipment({ head, keys }: Desk): { term: string; text: string }[] {
  const { plates, directPlates, gears, ring, dial, smallCrank } = head;
  return [
    ...plates.map((plate) => ({ term: "Plate", text: plateWithCircles({ ...plate, name: plateInFull(keys, plate.name) }) })),
    ...directPlates.map((plate) => ({
      term: capital(directNouns(plate).what),
      text: `${plateInFull(keys, plate.name)}: ${placesInWords(plate)}`,
    })),
    ...(smallCrank === undefined
      ? []
      : [
          {
            term: "Small crank",
            text: `${smallCrank.ratio} turns for one of the large; circles ${smallCrank.circles.join(" ")}`,
          },
        ]),
    ...(plates.length === 0 ? [] : plateWorkings(head, gears)),
    ...(ring === null && (plates.length > 0 || head.wormRatio === null) ? [] : [{ term: "Ring", text: scaleInWords(ring) }]),
    ...(dial === null && (plates.length > 0 || head.wormRatio === null) ? [] : [{ term: "Dial", text: scaleInWords(dial) }]),
  ];
}

/** What turns a plate, or holds it by a second circle. */
function plateWorkings(head: Head, gears: readonly number[]): { term: string; text: string }[] {
  return [
    { term: "Change gears", text: gears.length === 0 ? "none" : gears.join(" ") },
    ...(gears.length === 0 ? [] : [{ term: "Gearing", text: gearingInWords(head) }]),
    { term: "Rear pin", text: head.rearPin ? "yes: compound indexing can be done" : "none" },
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
