import { wormRatioOf } from "../../src/head/head.ts";
import { type CircleChords, type FaceChords, fromExact, type HoleChord, plateChords } from "../../src/index.ts";
import { arcUpTo, type LengthWords, lengthsIn } from "../../src/words/index.ts";
import type { Block, Book, Part } from "./blocks.ts";
import type { Desk } from "./parts.ts";
import { plateHeading } from "./plate-keys.ts";
import type { Cell, Column } from "./table-block.ts";
import { anchorOf, plateOf } from "./words.ts";

/** Decimals of a chord in millimetres, as a caliper reads, and of a chord factor. */
const caliper = 2;
const factorPlaces = 5;

/** The chords by which the plates are checked; where diameters are stated, each face at true size. */
export function plateCheckPart(desk: Desk): Part | null {
  const { head, inches } = desk;
  const length = lengthsIn(inches === true ? "in" : "mm");
  const faces = plateChords(head);
  if (faces.length === 0) return null;
  return {
    id: "chords",
    title: "Plate check",
    blocks: [...howTo(desk, faces), ...faces.flatMap((face, index) => faceBlocks(desk, face, index, length))],
  };
}

/** What is out by so much at so large a circle, as an example; mm. */
const example = { out: 0.1, diameter: 100 };

function howTo({ head }: Desk, faces: readonly FaceChords[]): Block[] {
  const plateSeconds = ((example.out / (example.diameter / 2)) * 180 * 3600) / Math.PI;
  const workSeconds = plateSeconds / fromExact(wormRatioOf(head)).valueOf();
  const byFactors = faces.some(({ circles }) => circles.some(({ diameter }) => diameter === null));
  const factors = byFactors
    ? " Where no diameter is known, factors stand for the chords: a chord divided by its factor is the diameter of the circle, and all three of a circle must give the same."
    : "";
  return [
    {
      kind: "paragraph",
      text: `Put a pin that fits into each of two holes, measure over both pins, and take off one pin: that is the chord. The last space is as long as the first where the circle closes: spaces that are all a little out show there.${factors}`,
    },
    {
      kind: "paragraph",
      text: `A hole ${example.out} mm out along a circle of ${example.diameter} mm turns the crank by ${arcUpTo(plateSeconds)} and the work by ${arcUpTo(workSeconds)}: the worm divides it by ${head.wormRatio}.`,
    },
  ];
}

function faceBlocks({ head, keys }: Desk, face: FaceChords, index: number, length: LengthWords): Block[] {
  const name = plateOf(head, face);
  const known = face.circles.every(({ diameter }) => diameter !== null);
  const template: Block[] = known
    ? [
        {
          kind: "figure",
          figure: {
            type: "template",
            circles: face.circles.map(({ holes }) => holes),
            diameters: face.circles.map(({ diameter }) => diameter ?? 0),
          },
          alt: `Plate ${name} at true size, a cross on each hole and a ring round hole 0 of each circle, with scales of 50 mm and 2 inches`,
          caption: `Plate ${name} at true size, from the crank side: print without scaling, and measure both scales with a rule before it is used. A cross is a hole; hole 0 is ringed.`,
        },
      ]
    : [];
  return [
    {
      kind: "heading",
      text: `${plateHeading(keys, face)}${known ? `, in ${length.unit}` : ", in diameters of the circle"}`,
      anchor: anchorOf("chord", index),
    },
    {
      kind: "table",
      summary: `Chords of plate ${name}`,
      columns: columnsOf(known),
      rows: face.circles.map((circle) => ({ cells: cellsOf(circle, known, length) })),
    },
    ...template,
  ];
}

function columnsOf(known: boolean): readonly Column[] {
  return [
    { head: "circle", align: "right", strong: true },
    ...(known ? [{ head: "diameter", align: "right" } as const] : []),
    { head: "holes", group: "FIRST AND LAST SPACE", align: "left" },
    { head: "chord", group: "FIRST AND LAST SPACE", align: "right", strong: true },
    { head: "holes", group: "A QUARTER ROUND", align: "left" },
    { head: "chord", group: "A QUARTER ROUND", align: "right", strong: true },
    { head: "holes", group: "HALF ROUND", align: "left" },
    { head: "chord", group: "HALF ROUND", align: "right", strong: true },
  ];
}

function cellsOf(
  { holes, diameter, first, last, quarter, half }: CircleChords,
  known: boolean,
  length: LengthWords,
): readonly Cell[] {
  const shown = (chord: HoleChord | null) =>
    chord === null ? "–" : chord.length === null ? chord.ratio.toFixed(factorPlaces) : length.bare(chord.length, caliper);
  const between = (chord: HoleChord | null) => (chord === null ? "–" : `${chord.from} to ${chord.to}`);
  const texts = [
    String(holes),
    ...(known ? [diameter === null ? "–" : length.bare(diameter, caliper)] : []),
    `${between(first)}, ${between(last)}`,
    shown(first),
    between(quarter),
    shown(quarter),
    between(half),
    shown(half),
  ];
  return texts.map((text) => ({ text }));
}

/** Whether anything in a book is to be printed at true size. */
export function hasTemplates({ parts }: Pick<Book, "parts">): boolean {
  return parts.some(({ blocks }) => blocks.some((block) => block.kind === "figure" && block.figure.type === "template"));
}
