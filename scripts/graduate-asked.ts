import {
  type Graduated,
  graduate,
  type Head,
  type LineStyle,
  type NoJob,
  type StraightScale,
  type VernierSpec,
} from "../src/index.ts";
import { graduatedWithWhys, lengthsIn, scaleLineColumns } from "../src/words/index.ts";
import { fault, wholeNumber } from "./command-line.ts";
import { askedAs, unitOf } from "./gear-options.ts";
import { graduateHelp } from "./graduate-help.ts";
import { graduateOptions } from "./graduate-options.ts";
import { graduatedLines } from "./graduate-words.ts";
import { headAsked } from "./head-asked.ts";
import type { MoreOfJob } from "./more.ts";
import { noPlateLines } from "./plate-words.ts";
import { type Given, readOptions } from "./read-options.ts";
import { toldOfItself } from "./self-told.ts";
import { searchAsked, startAsked, wayAsked } from "./shared-options.ts";
import { checkSheet, withSheet } from "./sheet-options.ts";
import { toldAs } from "./told-as.ts";

type GraduateGiven = Given<typeof graduateOptions>;

/** What the library calls the things, and what the command does. */
const names: Readonly<Record<string, string>> = {
  divisions: "",
  spaces: "--spaces",
  space: "--space",
  lead: "--lead",
  marks: "--marks",
  turnsPerSpindle: "--geared",
  "vernier.spaces": "--vernier",
  "vernier.over": "--over",
  vernier: "--vernier",
  long: "--long",
  medium: "--medium",
  figureEvery: "--figure-every",
  figureFrom: "--figure-from",
  perLine: "--per-line",
  by: "--by",
  startHole: "--start-hole",
  startAngle: "--start-angle",
  mounted: "--mounted",
  methods: "--method",
  teethPerMove: "--teeth-per-move",
};

/** `graduate …`: a scale or its vernier, line by line, in words, as data, and as a sheet to print. */
export async function graduateAsked(words: readonly string[], columns?: number): Promise<MoreOfJob> {
  const { values, positionals } = readOptions(words, graduateOptions, "graduate --help");
  const itself = toldOfItself(values, graduateHelp, columns);
  if (itself !== null) return itself;
  const divisions = divisionsAsked(positionals);
  checkSheet(values);
  checkTogether(values, divisions === null);
  const as = toldAs(values);
  const head = await headAsked(values.head);
  const scale = divisions === null ? straight(head, values) : round(head, divisions, values);
  const data = { scale: graduatedWithWhys(scale) };
  if (!scale.planned) return { data, lines: noPlateLines(scale, head), code: 1, ...as };
  const length = lengthsIn(unitOf(values));
  const answer = {
    data,
    table: scaleLineColumns(scale, length.unit),
    lines: graduatedLines(scale, head, length),
    code: scale.exact ? 0 : 1,
    ...as,
  };
  return withSheet(answer, values, "scale", () => ({ scale, head, inches: length.unit === "in" }));
}

function divisionsAsked([text, more]: readonly string[]): number | null {
  if (more !== undefined)
    throw fault("too-many", "", `"${more.slice(0, 40)}" was not expected; give one count of divisions, such as graduate 100`);
  return text === undefined ? null : wholeNumber(text, "");
}

const ofStraight = ["space", "lead", "marks", "geared"] as const;
const ofRound = ["by", "method", "teeth-per-move", "mounted", "start-hole", "start-angle", "minus"] as const;

/** Refuses options that would change nothing, and what does not go together. */
function checkTogether(given: GraduateGiven, isStraight: boolean): void {
  const idle = (isStraight ? ofRound : ofStraight).find((name) => given[name] !== undefined);
  if (idle !== undefined)
    throw fault("no-effect", `--${idle}`, `has no effect on a ${isStraight ? "straight" : "round"} scale; leave it out`);
  for (const name of ["over", "two-sided"] as const)
    if (given[name] !== undefined && given.vernier === undefined)
      throw fault("no-effect", `--${name}`, "goes with --vernier, its spaces");
  if (!isStraight) return;
  if (given.space === undefined)
    throw fault(
      "missing",
      "",
      "what scale? Begin with the divisions of a dial, such as graduate 100, or give --space of a straight one",
    );
  if (given.lead === undefined)
    throw fault("missing", "--lead", "is needed: travel of the table for one turn of its screw, such as 5");
  if ((given.marks === undefined) === (given.geared === undefined))
    throw fault(
      "conflict",
      "--marks",
      "or --geared: give the marks of the screw's dial, or how a head is geared to the screw, one of the two",
    );
  if (given.head !== undefined && given.geared === undefined)
    throw fault("no-effect", "--head", "has no effect on a straight scale by the screw's dial; leave it out, or give --geared");
}

function round(head: Head, divisions: number, given: GraduateGiven): Graduated | NoJob {
  const { side, ...start } = startAsked(given);
  const options = {
    ...searchAsked(given),
    ...start,
    ...(given.minus === true && { side }),
    ...(given.by !== undefined && { by: wayAsked(given.by) }),
  };
  const scale = { divisions, ...cutAsked(given) };
  return askedAs(given, () => graduate(head, scale, options), names);
}

function straight(head: Head, given: GraduateGiven): Graduated {
  const lead = exactMillimetres(given.lead ?? "", "--lead");
  const { geared } = given;
  const scale: StraightScale = { space: exactMillimetres(given.space ?? "", "--space"), ...cutAsked(given) };
  const on =
    geared === undefined ? { lead, marks: wholeNumber(given.marks ?? "", "--marks") } : { lead, head, turnsPerSpindle: geared };
  return askedAs(given, () => graduate(on, scale), names);
}

/** How many spaces are cut, or which vernier, and how long the lines are. */
function cutAsked(given: GraduateGiven): Pick<StraightScale, "spaces" | "vernier"> & LineStyle {
  const { spaces, long, medium, "figure-every": figureEvery, "figure-from": figureFrom, "per-line": perLine } = given;
  return {
    ...(spaces !== undefined && { spaces: wholeNumber(spaces, "--spaces") }),
    ...(given.vernier !== undefined && { vernier: vernierAsked(given.vernier, given) }),
    ...(long !== undefined && { long: wholeNumber(long, "--long") }),
    ...(medium !== undefined && { medium: wholeNumber(medium, "--medium") }),
    ...(figureEvery !== undefined && { figureEvery: wholeNumber(figureEvery, "--figure-every") }),
    ...(figureFrom !== undefined && { figureFrom }),
    ...(perLine !== undefined && { perLine }),
  };
}

function vernierAsked(spaces: string, { over, "two-sided": twoSided }: GraduateGiven): VernierSpec {
  return {
    spaces: wholeNumber(spaces, "--vernier"),
    ...(over !== undefined && { over: wholeNumber(over, "--over") }),
    ...(twoSided === true && { twoSided }),
  };
}

/** Exactly, as text: millimetres, or with `in` inches. */
function exactMillimetres(text: string, place: string): string {
  const [, whole, places = "", below, unit] = /^\s*(\d{1,6})?(?:\.(\d{1,6}))?(?:\/(\d{1,6}))?\s*(mm|in|")?\s*$/.exec(text) ?? [];
  const size = `${whole ?? ""}${places}`;
  if (size === "" || (places !== "" && below !== undefined) || Number(below ?? 1) === 0)
    throw fault(
      "unreadable",
      place,
      `"${text.slice(0, 40)}" is not a length; give millimetres such as 0.5, or inches such as 0.025in or 1/40in`,
    );
  const [n, d] = [BigInt(size), 10n ** BigInt(places.length) * BigInt(below ?? 1)];
  return unit === "in" || unit === '"' ? `${n * 127n}/${d * 5n}` : `${n}/${d}`;
}
