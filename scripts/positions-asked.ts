import {
  type Answer,
  dialReadings,
  formatAngle,
  type Head,
  nearestHoles,
  type Position,
  type PositionOptions,
  parseAngle,
  positions,
  positionsAfter,
  type Setting,
  toothAt,
} from "../src/index.ts";
import { type Asked, fault, wholeNumber } from "./command-line.ts";
import { type More, nothingMore } from "./more.ts";
import { checkLines, type FromZero, fromZeroLines, positionLines } from "./position-words.ts";
import { line, paragraph } from "./words.ts";

/** The positions asked for by `--teeth`, `--after` or `--ring`. */
export function positionsAsked(answer: Answer, head: Head, options: Asked["options"]): More {
  const { teeth, after, ring } = options;
  const [best] = answer.settings;
  if (teeth === undefined && after === undefined && ring === undefined) return nothingMore;
  if (best === undefined) return fromZeroAsked(answer, head, options);
  const how = positionOptions(head, options);
  if (ring !== undefined) return standingAt(best, ring, how);
  const list = after === undefined ? listed(best, teeth ?? "all", how) : positionsAfter(best, wholeNumber(after, "--after"), how);
  if (list.length === 0) return { data: { positions: [] }, lines: ["", paragraph("That was the last: nothing is left to do.")] };
  return { data: { positions: list }, lines: ["", ...positionLines(best, list, head), ...checkLines(best, how)] };
}

function positionOptions(head: Head, options: Asked["options"]): Omit<PositionOptions, "teeth"> {
  const { "start-hole": hole, "start-angle": angle, minus = false, nearer = false } = options;
  return {
    head,
    side: minus ? "minus" : "plus",
    direction: nearer ? "nearer" : "forward",
    ...(hole !== undefined && { startHole: wholeNumber(hole, "--start-hole") }),
    ...(angle !== undefined && angle !== "0" && { startAngle: parseAngle(angle) }),
  };
}

function listed(setting: Setting, teeth: string, how: Omit<PositionOptions, "teeth">): readonly Position[] {
  if (teeth.trim() === "all") return positions(setting, how);
  return positions(setting, { ...how, teeth: teeth.split(",").map((tooth) => wholeNumber(tooth, "--teeth")) });
}

/** Where nothing closes, every position by itself from one zero: by dial, ring and nearest hole. */
function fromZeroAsked(
  { target, near }: Answer,
  head: Head,
  { teeth = "all", after, "start-angle": angle, minus = false }: Asked["options"],
): More {
  if (!("divisions" in target)) return nothingMore;
  const circle = near.find(({ kind }) => kind === "nearest-hole")?.circle ?? null;
  const holes = circle === null ? null : nearestHoles(head, target.divisions, circle);
  const start = angle === undefined || angle === "0" ? {} : { startAngle: parseAngle(angle) };
  const all =
    head.dial === null && head.ring === null
      ? []
      : dialReadings(head, target.divisions, { side: minus ? "minus" : "plus", ...start }).positions;
  const wanted =
    after !== undefined ? teethAfter(wholeNumber(after, "--after"), target.divisions) : wantedTeeth(teeth, target.divisions);
  const rows = wanted.map((tooth): FromZero => ({ tooth, hole: holes?.[tooth - 1] ?? null, scales: all[tooth - 1] ?? null }));
  return { data: { fromZero: rows }, lines: ["", ...fromZeroLines(rows, circle, head)] };
}

function wantedTeeth(teeth: string, divisions: number): readonly number[] {
  if (teeth.trim() === "all") return teethAfter(0, divisions);
  return teeth.split(",").map((text) => {
    const tooth = wholeNumber(text, "--teeth");
    if (tooth < 1 || tooth > divisions) throw fault("--teeth", `${tooth} is not a tooth of ${divisions}; give 1 to ${divisions}`);
    return tooth;
  });
}

function teethAfter(tooth: number, divisions: number): readonly number[] {
  return Array.from({ length: Math.max(0, divisions - tooth) }, (_, index) => tooth + 1 + index);
}

function standingAt(setting: Setting, ring: string, how: Omit<PositionOptions, "teeth">): More {
  const at = toothAt(setting, /^\s*0+(?:\.0+)?\s*°?\s*$/.test(ring) ? "0" : parseAngle(ring), how);
  const off =
    at.past === "0"
      ? "exactly"
      : at.past.startsWith("-")
        ? `${formatAngle(at.past.slice(1), 1)} short of it`
        : `${formatAngle(at.past, 1)} past it`;
  const [here] = positions(setting, { ...how, teeth: [at.tooth] });
  return {
    data: { standingAt: at },
    lines: [
      "",
      line(
        "The ring says",
        `tooth ${at.tooth}, ${off}${here?.hole === null || here === undefined ? "" : `; the pin should be in hole ${here.hole}`}`,
      ),
      line("What is left", `--after ${at.tooth}`),
    ],
  };
}
