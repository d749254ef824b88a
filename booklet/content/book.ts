import type { Head } from "../../src/index.ts";
import type { Edition } from "../edition.ts";
import type { Book, Part, Running } from "./blocks.ts";
import { compoundPart } from "./compound-part.ts";
import { directPart } from "./direct-part.ts";
import { gearedPart } from "./geared-part.ts";
import { type HeadCount, headCounts, type Section } from "./head-counts.ts";
import { impossiblePart } from "./impossible-part.ts";
import { simplePart } from "./simple-part.ts";
import { titlePart } from "./title-part.ts";
import { counted, degreesPerTurn, plateInWords, ratioInWords } from "./words.ts";

/** Which counts a book holds. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

/** Writes the book of a head as plain data: what it says, not how it looks. */
export function bookOf(head: Head, edition: Edition, range: Range, onProgress?: (done: number) => void): Book {
  const counts = headCounts(head, range.from, range.to, onProgress);
  const inSection = (section: Section) => counts.filter((count) => count.section === section);
  const unlessEmpty = (part: (counts: readonly HeadCount[]) => Part, section: Section) => {
    const found = inSection(section);
    return found.length === 0 ? [] : [part(found)];
  };
  const parts = [
    simplePart(head, counts),
    ...unlessEmpty(directPart, "direct"),
    ...unlessEmpty((found) => gearedPart(head, found), "geared"),
    ...unlessEmpty((found) => compoundPart(head, found), "compound"),
    ...unlessEmpty((found) => impossiblePart(head, found), "impossible"),
  ];
  return {
    title: head.name,
    subject: `Indexing tables for a worm ratio of ${ratioInWords(head.wormRatio)}, counts ${range.from} to ${range.to}`,
    digest: edition.digest,
    running: runningOf(head, edition),
    parts: [titlePart(head, edition, range, parts), ...parts],
  };
}

function runningOf(head: Head, { version, digest }: Edition): Running {
  const circles = head.plates.flatMap(({ faces }) => faces.flatMap((face) => face.circles));
  const plates = head.plates.map(plateInWords).join("   ");
  return {
    ratio: `${ratioInWords(head.wormRatio)}   ${degreesPerTurn(head)} a turn`,
    plates: plates === "" ? "no plates" : `Plates ${plates}`,
    platesInShort: `${counted(head.plates.length, "plate")}, ${counted(circles.length, "circle")} of ${Math.min(...circles)} to ${Math.max(...circles)} holes`,
    rule: `Crank turns of one division = ${ratioInWords(head.wormRatio).replace(" : 1", "").replace(" : ", "⁄")} ÷ count`,
    edition: `Turns & Holes ${version} · ${digest}`,
  };
}
