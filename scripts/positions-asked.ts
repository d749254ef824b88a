import {
  type Answer,
  dialReadings,
  formatAngle,
  type Head,
  type NearestTooth,
  nearestHoles,
  type Position,
  type PositionOptions,
  positions,
  positionsAfter,
  type Setting,
  toothAt,
} from "../src/index.ts";
import { type Asked, angleFromZero, fault, wholeNumber } from "./command-line.ts";
import { type More, nothingMore } from "./more.ts";
import { numbersListed } from "./number-list.ts";
import { checkLines, type FromZero, fromZeroLines, positionLines } from "./position-words.ts";
import { startAsked } from "./shared-options.ts";
import { line, paragraph } from "./words.ts";

/** The positions asked for by `--teeth`, `--after` or `--ring`. */
export function positionsAsked(answer: Answer, head: Head, options: Asked["options"]): More {
  const { teeth, after, ring } = options;
  const [best] = answer.settings;
  if (teeth === undefined && after === undefined && ring === undefined) return nothingMore;
  const how = positionOptions(head, options);
  if (ring !== undefined) return standingAt(answer, ring, how);
  if (best === undefined) return fromZeroAsked(answer, head, options, how);
  const list = after === undefined ? listed(best, teeth ?? "all", how) : positionsAfter(best, wholeNumber(after, "--after"), how);
  if (list.length === 0) return nothingLeft("positions");
  const checks = after === undefined && teeth !== "all" ? [] : checkLines(best, list, how);
  return { data: { positions: list }, lines: ["", ...positionLines(best, list, head, how.startHole), ...checks] };
}

function positionOptions(head: Head, options: Asked["options"]): Omit<PositionOptions, "teeth"> {
  return { head, direction: options.nearer === true ? "nearer" : "forward", ...startAsked(options) };
}

function listed(setting: Setting, teeth: string, how: Omit<PositionOptions, "teeth">): readonly Position[] {
  if (teeth.trim() === "all") return positions(setting, how);
  return positions(setting, { ...how, teeth: numbersListed(teeth, "--teeth", 100_000) });
}

/** Where nothing closes, every position by itself from one zero: by dial, ring and nearest hole. */
function fromZeroAsked(
  { target, near }: Answer,
  head: Head,
  { teeth = "all", after }: Asked["options"],
  how: Pick<PositionOptions, "side" | "startAngle">,
): More {
  if (!("divisions" in target)) return nothingMore;
  const circle = near.find(({ kind }) => kind === "nearest-hole")?.circle ?? null;
  const holes = circle === null ? null : nearestHoles(head, target.divisions, circle);
  const all = head.dial === null && head.ring === null ? [] : dialReadings(head, target.divisions, how).positions;
  const wanted = after === undefined ? wantedTeeth(teeth, target.divisions) : teethAfter(after, target.divisions);
  if (wanted.length === 0) return nothingLeft("fromZero");
  const rows = wanted.map((tooth): FromZero => ({ tooth, hole: holes?.[tooth - 1] ?? null, scales: all[tooth - 1] ?? null }));
  return { data: { fromZero: rows }, lines: ["", ...fromZeroLines(rows, circle, head)] };
}

function wantedTeeth(teeth: string, divisions: number): readonly number[] {
  if (teeth.trim() === "all") return onward(0, divisions);
  return numbersListed(teeth, "--teeth", divisions).map((tooth) => checkTooth(tooth, divisions, "--teeth"));
}

function teethAfter(tooth: string, divisions: number): readonly number[] {
  return onward(toothOf(divisions, tooth, "--after"), divisions);
}

function onward(tooth: number, divisions: number): readonly number[] {
  return Array.from({ length: divisions - tooth }, (_, index) => tooth + 1 + index);
}

function toothOf(divisions: number, text: string, place: string): number {
  return checkTooth(wholeNumber(text, place), divisions, place);
}

function checkTooth(tooth: number, divisions: number, place: string): number {
  if (tooth >= 1 && tooth <= divisions) return tooth;
  throw fault("out-of-range", place, `${tooth} is not a tooth of ${divisions}; give 1 to ${divisions}`);
}

function nothingLeft(key: "positions" | "fromZero"): More {
  return { data: { [key]: [] }, lines: ["", paragraph("That was the last: nothing is left to do.")] };
}

/** The tooth that a reading of the ring stands for; where nothing closes, of the count alone. */
function standingAt({ target, settings: [best] }: Answer, ring: string, how: Omit<PositionOptions, "teeth">): More {
  const step = best ?? ("divisions" in target ? { spindlePerMove: `1/${target.divisions}`, teethPerMove: 1 } : null);
  if (step === null) return nothingMore;
  const { head, startAngle, side } = how;
  const at = toothAt(step, angleFromZero(ring, "--ring"), {
    ring: head?.ring ?? null,
    ...(startAngle !== undefined && { startAngle }),
    ...(side !== undefined && { side }),
  });
  const [here] = best === undefined ? [] : positions(best, { ...how, teeth: [at.tooth] });
  const hole =
    here === undefined || here.hole === null || best?.method === "dial" ? "" : `; the pin should be in hole ${here.hole}`;
  const doubt = at.sure ? null : whyNotSure(at, head?.ring ?? null);
  return {
    data: { standingAt: at },
    lines: [
      "",
      line("The ring says", `${at.sure ? "" : "about "}tooth ${at.tooth}, ${pastWords(at)}${hole}`),
      ...(doubt === null ? [] : [line("NOT SURE", doubt)]),
      line("What is left", `ask again with --after ${at.tooth}`),
    ],
  };
}

function whyNotSure({ alike }: NearestTooth, ring: Head["ring"]): string {
  if (ring === null)
    return "that is over a quarter of a tooth off: check the zero of the ring, its side, and the count; or the ring is too coarse for this count";
  if (alike === null)
    return "no tooth reads so on this ring: check its zero, its side, and the count, and that nothing has moved since";
  return `teeth ${alike.first} to ${alike.last} read the same on this ring, which is too coarse for this count: find the tooth by the pin's hole, or count`;
}

function pastWords({ past, sure }: NearestTooth): string {
  if (past === "0") return sure ? "exactly" : "as read";
  return past.startsWith("-") ? `${formatAngle(past.slice(1), 1)} short of it` : `${formatAngle(past, 1)} past it`;
}
