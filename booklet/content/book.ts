import { type Head, prepare } from "../../src/index.ts";
import { counted, plateWithCircles } from "../../src/words/index.ts";
import type { Edition } from "../edition.ts";
import { anglesPart } from "./angles-part.ts";
import type { Book, Running } from "./blocks.ts";
import { cautionsPart } from "./cautions-part.ts";
import { circlesPart } from "./circles-part.ts";
import { compoundPart } from "./compound-part.ts";
import { degreesPart } from "./degrees-part.ts";
import { dialPart } from "./dial-part.ts";
import { directPart } from "./direct-part.ts";
import { drawingsPart } from "./drawings-part.ts";
import { footRule } from "./foot-rule.ts";
import { gearedPart } from "./geared-part.ts";
import { glossaryPart } from "./glossary-part.ts";
import { countsOneByOne, type HeadCount } from "./head-counts.ts";
import { impossiblePart } from "./impossible-part.ts";
import { indexPart } from "./index-part.ts";
import { type Desk, type PartId, type PartWriter, partIds } from "./parts.ts";
import { plateCheckPart } from "./plate-check-part.ts";
import { type KeyedHead, keyedHead } from "./plate-keys.ts";
import { reachPart } from "./reach-part.ts";
import { readingPart } from "./reading-part.ts";
import { isReadHead } from "./readings.ts";
import { readingsPart } from "./readings-part.ts";
import { simplePart } from "./simple-part.ts";
import { titlePart } from "./title-part.ts";
import { unfoundPart } from "./unfound-part.ts";
import { wideRangePart } from "./wide-range-part.ts";
import { degreesPerTurn, placesInWords, ratioInWords, ratioOrNone } from "./words.ts";

/** What a book is to hold. */
export interface Contents {
  readonly from: number;
  readonly to: number;
  readonly parts: readonly PartId[];
  /** Counts with a table of every position each; null leaves it to the head. */
  readonly degreeTables: readonly number[] | null;
  /** Whether lengths stand in inches; left out, in millimetres. */
  readonly inches?: boolean;
}

const writers: Readonly<Record<PartId, PartWriter>> = {
  reading: readingPart,
  reach: reachPart,
  simple: simplePart,
  circles: circlesPart,
  "wide-range": wideRangePart,
  angles: anglesPart,
  direct: directPart,
  dial: dialPart,
  readings: readingsPart,
  geared: gearedPart,
  compound: compoundPart,
  impossible: impossiblePart,
  unfound: unfoundPart,
  degrees: degreesPart,
  drawings: drawingsPart,
  chords: plateCheckPart,
  index: indexPart,
  cautions: cautionsPart,
  glossary: glossaryPart,
};

/** The counts of a head as its books tell them, their plates by their letters, each worked out and proved when it is asked for. */
export function countsTold(head: Head, from: number, to: number): Generator<HeadCount, undefined> {
  return countsOneByOne(prepare(keyedHead(head).head), from, to);
}

/**
 * Lays out what parts are written from: every count with its settings, proved.
 *
 * @param counts - Where {@link countsTold} worked them out before.
 */
export function deskOf(
  head: Head,
  { from, to, parts, degreeTables, inches }: Contents,
  counts: readonly HeadCount[] | null = null,
): Desk {
  const keyed = keyedHead(head);
  const on = prepare(keyed.head);
  return {
    ...keyed,
    on,
    counts: counts ?? [...countsTold(head, from, to)],
    included: sectionsIn(head, parts),
    degreeTables,
    ...(inches === true && { inches: true }),
  };
}

/** Writes the book of a head as plain data: what it says, not how it looks. */
export function bookOf(head: Head, edition: Edition, contents: Contents, counts: readonly HeadCount[] | null = null): Book {
  const { from, to } = contents;
  const desk = deskOf(head, contents, counts);
  const parts = partIds.filter((id) => contents.parts.includes(id)).flatMap((id) => writers[id](desk) ?? []);
  return {
    title: head.name,
    fileTitle: head.name,
    subject: `Indexing tables for ${ratioOrNone(head)}, counts ${from} to ${to}`,
    digest: edition.digest,
    running: runningOf(desk, edition, onTitlePage),
    parts: [titlePart(desk, edition, parts), ...parts],
    plateKeys: desk.keys,
    sheetsStandAlone: false,
  };
}

/** The parts that hold counts by name; among readings stand also those that are done from mark to mark. */
function sectionsIn(head: Head, parts: readonly PartId[]): ReadonlySet<string> {
  if (!isReadHead(head)) return new Set(parts);
  const others = parts.filter((part) => part !== "simple" && part !== "dial");
  return new Set<string>([...others, ...(parts.includes("readings") ? ["simple", "dial"] : [])]);
}

/** Where to find what the letters of plates mean. */
const onTitlePage = " (letters: page 1)";

/** What stands on every sheet of a book that has no title page. */
export function withoutTitlePage(running: Running): Running {
  const without = (text: string) => text.replace(onTitlePage, "");
  return { ...running, plates: without(running.plates), platesInShort: without(running.platesInShort) };
}

/**
 * What stands on every page of a head's book or sheet.
 *
 * @param whereKeys - Stands after `plates` where letters stand for them: where to find what those mean.
 */
export function runningOf({ head, keys }: KeyedHead, edition: Edition, whereKeys = ""): Running {
  const where = keys.length === 0 ? "" : whereKeys;
  const circles = head.plates.flatMap(({ faces }) => faces.flatMap((face) => face.circles));
  const plates = head.plates.map(plateWithCircles).join("   ");
  if (head.wormRatio === null) return runningWithoutCrank(head, edition);
  return {
    ratio: ratioInWords(head.wormRatio),
    turn: `${degreesPerTurn(head)} a turn`,
    gears:
      head.gears.length === 0
        ? ["no gears"]
        : [`with gears ${head.gears.join(" ")}`, `with ${counted(head.gears.length, "gear")}`],
    plates: plates === "" ? "no plates" : `Plates${where} ${plates}`,
    platesInShort: `${counted(head.plates.length, "plate")}${where}, ${counted(circles.length, "circle")} of ${Math.min(...circles)} to ${Math.max(...circles)} holes`,
    rule: footRule(head, { method: "simple" }),
    ...madeBy(edition),
  };
}

/** Of a head that no crank turns: what stands on its spindle instead of plates and gears. */
function runningWithoutCrank(head: Head, edition: Edition): Running {
  const onSpindle = head.directPlates.map((plate) => `${plate.name} ${placesInWords(plate)}`);
  const what = onSpindle.length === 0 ? "set by its ring" : onSpindle.join("   ");
  return {
    ratio: "no crank",
    turn: "set by its spindle",
    gears: ["no gears"],
    plates: what,
    platesInShort: onSpindle.length === 0 ? what : counted(onSpindle.length, "plate"),
    rule: footRule(head, { method: "direct" }),
    ...madeBy(edition),
  };
}

/**
 * What stands on every page of a sheet that no head is turned for.
 *
 * @param what - What the sheet is of, large, and beside it the measure that tells it from another.
 * @param by - What does the work.
 */
export function runningWithoutHead(
  [ratio, turn]: readonly [what: string, measure: string],
  { by, rule }: { readonly by: string; readonly rule: string },
  edition: Edition,
): Running {
  return { ratio, turn, gears: [turn], plates: by, platesInShort: by, rule, ...madeBy(edition) };
}

function madeBy({ version, digest }: Edition): Pick<Running, "edition" | "editionInShort"> {
  return { edition: `Turns & Holes ${version} · ${digest}`, editionInShort: `${version} · ${digest}` };
}
