import { type Head, parseAngle, type UnequalSpacing, unequalSpacing } from "../src/index.ts";
import {
  cautionsBesides,
  headLine,
  readingShort,
  readingWords,
  signedArc,
  spacingColumns,
  spacingItems,
  spacingScale,
  spacingTitle,
} from "../src/words/index.ts";
import { fault, optionNames } from "./command-line.ts";
import type { Options } from "./look-up-options.ts";
import type { More } from "./more.ts";
import { withOptionNames } from "./read-options.ts";
import { type Column, table } from "./table.ts";
import { degrees, itemLines, paragraph } from "./words.ts";

/** `spacing ANGLES`: the places of a work whose spaces are not equal. */
export function spacingAsked(angles: string, head: Head, { mounted }: Options): More {
  if (angles.trim() === "")
    throw fault("missing", "", "no angles were given; list those from each place to the next, such as 58°,62°,59°,61°,60°,60°");
  const steps = angles.split(",").map(parseAngle);
  const spacing = withOptionNames(optionNames, () => unequalSpacing(head, steps, mounted === undefined ? {} : { mounted }));
  const oneWay =
    spacing.circle === null ? ({ hand: "handwheel", to: "mark" } as const) : ({ hand: "crank", to: "hole" } as const);
  return {
    data: { spacing },
    table: spacingColumns(spacing.places),
    lines: [
      spacingTitle(spacing),
      headLine(head),
      "",
      ...itemLines(spacingItems(spacing)),
      "",
      ...table(columnsOf(spacing, head)),
      "",
      paragraph(
        cautionsBesides([
          { code: "one-way", ...oneWay },
          { code: "lock-spindle" },
          { code: "stop-cutter" },
          { code: "manual-first" },
        ]),
      ),
    ],
  };
}

type Place = UnequalSpacing["places"][number];

function columnsOf({ places, circle, exact }: UnequalSpacing, { dial, ring, wormRatio }: Head): readonly Column[] {
  const column = (head: string, cell: (place: Place) => string): Column => ({ head, cells: places.map(cell) });
  // By the holes a scale only shows where the work is; without a plate it is what is set.
  const set = circle === null ? spacingScale(places) : null;
  const error = (scale: "dial" | "ring") =>
    scale === set ? [column("off by", (place) => signedArc(place[scale]?.errorArcSeconds ?? 0))] : [];
  return [
    column("place", ({ place }) => String(place)),
    ...(circle === null
      ? []
      : [
          column("go on by", ({ from, place }) => (place === 1 ? "start" : `${from?.turns} + ${from?.spaces}/${circle.holes}`)),
          column("turns", ({ turns }) => String(turns)),
          column("hole", ({ hole }) => String(hole)),
        ]),
    ...(circle === null || exact ? [] : [column("off by", ({ errorArcSeconds }) => signedArc(errorArcSeconds ?? 0))]),
    ...(dial === null
      ? []
      : [column("dial", (place) => (place.dial ? readingWords(place.dial, dial, wormRatio) : "")), ...error("dial")]),
    ...(ring === null ? [] : [column("ring", (place) => (place.ring ? readingShort(place.ring, ring) : "")), ...error("ring")]),
    column("angle", ({ angle }) => degrees(angle)),
  ];
}
