import {
  type Head,
  type ProposedSpacing,
  parseAngle,
  proposeSpacing,
  type UnequalSpacing,
  unequalSpacing,
} from "../src/index.ts";
import {
  cautionsBesides,
  headLine,
  proposedItems,
  readingShort,
  readingWords,
  signedArc,
  spacingColumns,
  spacingItems,
  spacingScale,
  spacingTitle,
} from "../src/words/index.ts";
import { fault, optionNames, wholeNumber } from "./command-line.ts";
import type { Options } from "./look-up-options.ts";
import type { More } from "./more.ts";
import { withOptionNames } from "./read-options.ts";
import { type Column, table } from "./table.ts";
import { degrees, itemLines, paragraph } from "./words.ts";

/** `spacing ANGLES`: the places of a work whose spaces are not equal; with `--propose` such spaces are found. */
export function spacingAsked(angles: string, head: Head, options: Options): More {
  const { mounted, propose } = options;
  if (propose !== undefined) {
    if (angles.trim() !== "")
      throw fault("conflict", "--propose", "is given beside angles; give the angles, or let them be proposed");
    const proposed = proposedFor(propose, head, options);
    return spacingTold(proposed.spacing, head, proposed);
  }
  if (angles.trim() === "")
    throw fault(
      "missing",
      "",
      "no angles were given; list those from each place to the next, such as 58°,62°,59°,61°,60°,60°, or --propose a number of flutes",
    );
  const steps = angles.split(",").map(parseAngle);
  return spacingTold(
    withOptionNames(optionNames, () => unequalSpacing(head, steps, mounted === undefined ? {} : { mounted })),
    head,
    null,
  );
}

function proposedFor(flutes: string, head: Head, { mounted, uneven, unpaired }: Options): ProposedSpacing {
  const names = { ...optionNames, flutes: "--propose", uneven: "--uneven", opposite: "--unpaired", head: "--head" };
  const asked = {
    ...(mounted !== undefined && { mounted }),
    ...(uneven !== undefined && { uneven: withOptionNames({ angle: "--uneven" }, () => parseAngle(uneven)) }),
    ...(unpaired === true && { opposite: false }),
  };
  return withOptionNames(names, () => proposeSpacing(head, wholeNumber(flutes, "--propose"), asked));
}

function spacingTold(spacing: UnequalSpacing, head: Head, proposed: ProposedSpacing | null): More {
  const oneWay =
    spacing.circle === null
      ? ({ hand: head.wormRatio === null ? "spindle" : "handwheel", to: "mark" } as const)
      : ({ hand: "crank", to: "hole" } as const);
  return {
    data: { spacing, ...(proposed !== null && { proposed: besidesSpacing(proposed) }) },
    table: spacingColumns(spacing.places),
    lines: [
      spacingTitle(spacing),
      headLine(head),
      "",
      ...itemLines([...(proposed === null ? [] : proposedItems(proposed)), ...spacingItems(spacing)]),
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

/** A proposal without its places, which stand beside it. */
function besidesSpacing({ spacing: _, ...proposed }: ProposedSpacing): Omit<ProposedSpacing, "spacing"> {
  return proposed;
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
