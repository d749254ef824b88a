import {
  type Answer,
  chord,
  coordinates,
  countsFromAngle,
  formatAngle,
  type Head,
  type Position,
  type PositionOptions,
  type PossibleCount,
  parseAngle,
  positions,
  positionsAfter,
  type SetMove,
  type Setting,
  toothAt,
  whatMoveGives,
} from "../src/index.ts";
import { type Asked, fault, millimetres, wholeNumber } from "./command-line.ts";
import { checkLines, positionLines, table } from "./position-words.ts";
import { arc, count, degrees, line, paragraph } from "./words.ts";

/** More of an answer: data for `--json`, and lines in words. */
export interface More {
  readonly data: Readonly<Record<string, unknown>>;
  readonly lines: readonly string[];
}

const nothing: More = { data: {}, lines: [] };

/** The positions asked for by `--teeth`, `--after` or `--ring`. */
export function positionsAsked({ settings: [best] }: Answer, head: Head, options: Asked["options"]): More {
  const { teeth, after, ring } = options;
  if (teeth === undefined && after === undefined && ring === undefined) return nothing;
  if (!best) return nothing;
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

/** The coordinates asked for by `--coordinates`. */
export function coordinatesAsked({ target }: Answer, options: Asked["options"]): More {
  if (options.coordinates !== true) return nothing;
  if (!("divisions" in target)) throw fault("--coordinates", "are those of a count; give a count such as 12");
  if (options.radius === undefined) throw fault("--coordinates", "need the radius of the circle; add --radius 40");
  const radius = millimetres(options.radius, "--radius");
  const list = coordinates(target.divisions, {
    radius,
    sense: options.clockwise === true ? "clockwise" : "counter-clockwise",
    origin: options.tangents === true ? "tangents" : "centre",
    ...(options["start-angle"] !== undefined &&
      options["start-angle"] !== "0" && { startAngle: parseAngle(options["start-angle"]) }),
  });
  const across = Math.floor(target.divisions / 2);
  const chords =
    target.divisions < 2
      ? []
      : [...new Set([1, across])].map((apart) => ({ apart, length: chord(target.divisions, radius, apart) }));
  const fixed = (value: number) => (Math.abs(value) < 0.0005 ? 0 : value).toFixed(3).replace("-", "−");
  return {
    data: { coordinates: list, chords },
    lines: [
      "",
      paragraph(
        `Coordinates in millimetres on a radius of ${fixed(radius)}, from ${options.tangents ? "the left and bottom tangents" : "the centre"}; x to the right, y up:`,
      ),
      "",
      ...table([
        { head: "tooth", cells: list.map(({ tooth }) => String(tooth)) },
        { head: "x", cells: list.map(({ x }) => fixed(x)) },
        { head: "y", cells: list.map(({ y }) => fixed(y)) },
      ]),
      "",
      ...chords.map(({ apart, length }) =>
        line(apart === 1 ? "Chord to next" : "Chord across", `${fixed(length)} mm, ${count(apart, "division")} apart`),
      ),
    ],
  };
}

/** `2.9° ± 0.05°`: the counts that an angle read by eye could mean; null where this is no such question. */
export function countsByEye(question: string): More | null {
  const [angle, uncertainty, more] = question.split(/±|\+\/?-/);
  if (angle === undefined || uncertainty === undefined || more !== undefined) return null;
  const counts = countsFromAngle(parseAngle(angle), parseAngle(uncertainty));
  return { data: { counts }, lines: eyeLines(counts) };
}

function eyeLines(counts: readonly PossibleCount[]): string[] {
  if (counts.length === 0) return [paragraph("No whole count has that angle; read it again over more teeth.")];
  const most = Math.max(0, ...counts.map(({ teethToTellFromNext }) => teethToTellFromNext ?? 0));
  const listed = counts.map(({ divisions }) => divisions);
  const shown = listed.length > 20 ? `${listed[0]} to ${listed.at(-1)}` : listed.join(", ");
  return [
    line("It could be", `${shown} divisions`),
    ...(most > 0
      ? [
          line(
            "To tell apart",
            `measure over ${most} teeth or more, with the same care, and ask again with that angle divided by the teeth`,
          ),
        ]
      : []),
  ];
}

/** `gives MOVE`: what count a move really gives. */
export function moveGives(move: string, head: Head, options: Asked["options"]): More {
  const set = { wormRatio: head.wormRatio, ...readMove(move), ...readGears(options) };
  const teeth = options["teeth-per-move"] === undefined ? 1 : wholeNumber(options["teeth-per-move"], "--teeth-per-move");
  const gives = whatMoveGives(set, teeth);
  const perMove = teeth === 1 ? "" : `, ${teeth} teeth per move`;
  return {
    data: { gives },
    lines: [
      line(
        "This gives",
        gives.exact
          ? `${count(gives.divisions, "division")} exactly${perMove}`
          : `no whole count; nearest is ${gives.divisions}${perMove}`,
      ),
      ...(gives.exact
        ? []
        : [
            line(
              "At the close",
              `the work is ${arc(gives.closingArcSeconds)} ${gives.closingArcSeconds > 0 ? "too far" : "short"}`,
            ),
          ]),
      line("Each move", `${degrees(gives.spindlePerMove)} of the work`),
    ],
  };
}

const movePattern =
  /^(?:(\d{1,6})(?:\s*t(?:urns?)?)?)?\s*(?:^|\+|\s)\s*(?:(\d{1,6})\s*(?:\/|of)\s*(\d{1,6}))?\s*(?:([+\-−])\s*(\d{1,6})\s*(?:\/|of)\s*(\d{1,6}))?$/;

function readMove(text: string): Omit<SetMove, "wormRatio"> {
  const parts = /^\d+$/.test(text.trim()) ? [text, text.trim()] : movePattern.exec(text.trim());
  if (!parts || text.trim() === "")
    throw fault(
      "",
      `"${text.slice(0, 40)}" is not a move; write turns and spaces such as "0 + 22/33", or "1 + 7/39 + 29/41" for a compound one`,
    );
  const [, turns = "0", spaces, circle, sign, then, second] = parts;
  return {
    turns: Number(turns),
    spaces: Number(spaces ?? 0),
    circle: circle === undefined ? null : Number(circle),
    ...(sign !== undefined && {
      second: { spaces: Number(then), circle: Number(second), direction: sign === "+" ? "with" : "against" } as const,
    }),
  };
}

function readGears({ gears, plate }: Asked["options"]): Pick<SetMove, "gears"> {
  if (gears === undefined) return {};
  const sides = gears.split("/").map((side) => side.split(/[*×x]/).map((teeth) => wholeNumber(teeth, "--gears")));
  const [drivers, driven] = sides;
  if (!drivers || !driven || sides.length > 2 || drivers.length !== driven.length || drivers.length > 2) {
    throw fault("--gears", `"${gears.slice(0, 40)}" is not a train; give drivers over driven, such as 56/24 or 64*44/24*40`);
  }
  if (plate !== "with" && plate !== "against")
    throw fault("--plate", "say which way these gears turn the plate: with or against the crank");
  return { gears: { drivers, driven, direction: plate } };
}
