import type { Graduated, GraduatedRound, GraduatedStraight } from "../machine/graduate.ts";
import type { StraightLine } from "../machine/straight-scale.ts";
import { formatAngle } from "../number/angle.ts";
import { type Exact, fromExact, type Ratio } from "../number/ratio.ts";
import type { Item } from "./item.ts";
import type { LengthWords } from "./lengths.ts";
import { arcUpTo, counted, shortAngle, withPlus } from "./numbers.ts";
import { plateName } from "./plates.ts";

const errorPlaces = 4;
const sizePlaces = 4;

/** A scale by what is cut: `dial of 100 lines`, `vernier of 12 spaces over 11`. */
export function scaleWords(scale: Graduated, length: LengthWords): string {
  const { vernier, lines } = scale;
  if (vernier !== null)
    return `vernier of ${vernier.spaces} spaces over ${vernier.over}${vernier.twoSided ? ", on both sides of its zero" : ""}`;
  if (scale.shape === "straight") return `scale of ${counted(lines.length - 1, "space")} of ${lengthOf(scale.space, length)}`;
  return lines.length === scale.divisions
    ? `dial of ${counted(lines.length, "line")}`
    : `sector of ${counted(lines.length - 1, "space")} of ${shortAngle(scale.step)}`;
}

/** What a scale is from line to line, and what it and its vernier read to. */
export function scaleItems(scale: Graduated, length: LengthWords): readonly Item[] {
  const said = scale.shape === "round" ? angleOf : (of: Exact) => lengthOf(of as Ratio, length);
  const { vernier, leastCount, step } = scale;
  return [
    { term: "Line to line", text: said(step) },
    ...(vernier === null || leastCount === null
      ? []
      : [
          { term: "Reads to", text: `${said(leastCount)}, a space of the main scale over ${vernier.spaces}` },
          {
            term: "Figures",
            text: vernier.twoSided
              ? `from its zero outwards both ways: that side is read whose figures rise ${vernier.runs} those of the main scale`
              : runs[vernier.runs],
          },
        ]),
    ...(scale.shape === "straight" ? straightItems(scale, length) : []),
    { term: "Off by", text: offBy(scale, length) },
  ];
}

const runs = {
  with: "rise the way that those of the main scale do",
  against: "rise AGAINST those of the main scale: lay the lines from its zero the other way",
} as const;

/** What is counted on for a straight scale. */
function straightItems({ counter, travelPerTurn }: GraduatedStraight, length: LengthWords): readonly Item[] {
  return counter.by === "dial"
    ? [
        {
          term: "By the screw",
          text: `${counted(counter.marks, "mark")} of its dial to a turn, which is ${lengthOf(travelPerTurn, length)}`,
        },
      ]
    : [
        {
          term: "Plate",
          text: `${plateName(counter)}, circle of ${counter.holes} holes, stop pin in; a turn of the crank is ${lengthOf(travelPerTurn, length)}`,
        },
      ];
}

function offBy(scale: Graduated, length: LengthWords): string {
  if (scale.exact) return "nothing: every line is set exactly";
  const most = scale.shape === "round" ? arcUpTo(scale.worstArcSeconds) : length.upTo(scale.worstMm, errorPlaces);
  return `no line over ${most} from its place${scale.shape === "straight" ? ", each by itself from the first" : ""}`;
}

function angleOf(angle: Exact): string {
  return formatAngle(angle as GraduatedRound["step"], 1);
}

function lengthOf(mm: Ratio, length: LengthWords): string {
  return length(fromExact(mm).valueOf(), sizePlaces);
}

/** What stands for a line of a straight scale: where it is counted to, and where it is not exact how far it is off. */
export function straightCells(
  line: StraightLine,
  { exact }: Pick<GraduatedStraight, "exact">,
  length: LengthWords,
): readonly string[] {
  const { from, at, travel, errorMm } = line;
  return [
    `${from.turns} + ${from.marks}`,
    String(at.turns),
    String(at.marks),
    length.bare(fromExact(travel).valueOf()),
    ...(exact ? [] : [withPlus(length.bare(errorMm, errorPlaces))]),
  ];
}

/** What the columns of a straight scale mean. */
export function straightLegend({ counter }: Pick<GraduatedStraight, "counter">, { unit }: LengthWords): string {
  const spaces = counter.by === "dial" ? "marks" : "spaces";
  return `"Go on by" is turns + ${spaces} from the line before; the rest is counted from the first. Lengths in ${unit === "in" ? "inches" : "millimetres"}.`;
}

/** The heads over those cells. */
export function straightHeads({ counter, exact }: Pick<GraduatedStraight, "counter" | "exact">): readonly string[] {
  const at = counter.by === "dial" ? `mark of ${counter.marks}` : `hole of ${counter.holes}`;
  return ["go on by", "turns", at, "travel", ...(exact ? [] : ["off by"])];
}

/** What is minded when a scale is cut; of a round one its plan says the rest. General workshop practice, no source. */
export function scaleCautions(shape: Graduated["shape"]): readonly Item[] {
  const each = { term: "Each line", text: "Set it, lock, and draw the tool to the stop of its length: long, medium or short." };
  return shape === "round" ? [each] : [each, ...ofScrew];
}

const ofScrew: readonly Item[] = [
  {
    term: "One way",
    text: "Come to every line from the same side, so that slack is always taken up. Past it: go back half a turn or more and come up to it again.",
  },
  { term: "First", text: "Go through all of it with a pencil line on layout blue, and see that the last comes where it should." },
];
