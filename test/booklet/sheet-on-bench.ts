import { type Head, type Side, type UnprovedSetting, wormRatioOf } from "../../src/index.ts";
import {
  add,
  atStart,
  holeAt,
  holes,
  type ListedMove,
  moved,
  type Stand,
  spindle,
  type Turns,
  times,
  turnsOf,
  withinTurn,
  workTurned,
} from "../support/bench.ts";
import { canBeSetUp, workPerMove } from "../support/mechanism.ts";
import type { PrintedPlace, PrintedSheet } from "./printed-sheet.ts";
import { arcSeconds, degreesIn, signedSecondsIn, wrongOnScales } from "./sheet-scales.ts";
import type { PrintedWay } from "./sheet-setting.ts";

/*
 * Every line of a printed sheet, done by hand on a head: holes and gears in whole numbers of the
 * tests' own. What is printed is not compared with what was to be printed, but with where it leads.
 */

/** What a sheet is for: the work on the head, and where everything stands at the start. */
export interface OnTheBench {
  readonly head: Head;
  /** From one tooth to the next, in turns of the work. */
  readonly step: Turns;
  readonly startTooth: number;
  readonly startHole: number;
  /** Where ring and dial stand at the start, in turns of the work. */
  readonly startAngle: Turns;
  readonly side: Side;
  /** The moves that are done before the first line: where a sheet is of what is left. */
  readonly made: number;
  /** The head of the column of places. */
  readonly key: "tooth" | "space" | "drill" | "line" | "flat";
}

/** Does every line of a sheet in turn, and says what is wrong with each; a way that the head has not is wrong at once. */
export function wrongOn({ places }: Pick<PrintedSheet, "places">, way: PrintedWay, bench: OnTheBench): readonly string[] {
  if (!isOwned(way, bench.head)) return [`${JSON.stringify(way)} cannot be set up on this head`];
  const move = way.by === "moves" ? wrongMove(way.setting, places, bench) : null;
  if (move !== null) return [move];
  let stand = way.by === "moves" ? afterMoves(bench.made, way.setting) : atStart;
  return places.flatMap((place, index) => {
    const number = Number(place[bench.key]);
    if (way.by === "moves" || way.by === "nearest-hole") {
      const isStart = index === 0 && number === bench.startTooth;
      stand = goneOn(stand, place, isStart, way);
    }
    return wrongAt(place, number, stand, way, bench).map((fault) => `${bench.key} ${number}: ${fault}`);
  });
}

/** The move in large figures, made once: it advances the teeth that are printed, exactly or to within half a step. */
function wrongMove(setting: UnprovedSetting, places: PrintedSheet["places"], { head, step }: OnTheBench): string | null {
  if (setting.armsEnclose !== null && setting.armsEnclose !== setting.spaces + 1)
    return "the arms enclose another number of holes";
  const made = workPerMove(setting, head);
  if (made === null) return "the move cannot be made";
  const miss = halfTurnEither(add(made, times(BigInt(-setting.teethPerMove), step)));
  const isExact = places.every((place) => place["off by"] === undefined);
  const isRight = isExact ? miss.n === 0n : !isLarger(miss, { n: step.n, d: 2n * step.d });
  return isRight ? null : `one move misses by ${miss.n}/${miss.d} of a turn`;
}

function isOwned(way: PrintedWay, head: Head): boolean {
  switch (way.by) {
    case "moves":
      return canBeSetUp(way.setting, head);
    case "nearest-hole": {
      const faces = head.plates.filter(({ name }) => name === way.plate).flatMap((plate) => plate.faces);
      return faces.some(({ name, circles }) => name === way.face && circles.includes(way.circle));
    }
    case "dial":
    case "ring":
      return head[way.by] !== null;
  }
}

function afterMoves(made: number, setting: UnprovedSetting): Stand {
  const second = setting.method === "compound" ? { second: { ...setting.second, turns: 0 } } : {};
  const one = moved(atStart, { direction: "forward", turns: setting.turns, spaces: setting.spaces, ...second }, setting);
  return { pin: times(BigInt(made), one.pin), rear: times(BigInt(made), one.rear), small: one.small };
}

type ByHoles = Extract<PrintedWay, { readonly by: "moves" | "nearest-hole" }>;

/** Goes on as the line says; where it says nothing, by one move of the large figures, the start apart. */
function goneOn(stand: Stand, place: PrintedPlace, isStart: boolean, way: ByHoles): Stand {
  const setting = way.by === "moves" ? way.setting : null;
  const circle = way.by === "moves" ? way.setting.circle : way.circle;
  const second = setting?.method === "compound" ? setting.second : undefined;
  const on = { circle } as UnprovedSetting;
  const spaces = circle === null ? place.spaces : place[`spaces of ${circle}`];
  if (spaces === "–" || (spaces === undefined && isStart)) return stand;
  if (spaces === undefined) {
    const own: ListedMove = { direction: "forward", turns: setting?.turns ?? 0, spaces: setting?.spaces ?? 0 };
    return moved(stand, second === undefined ? own : { ...own, second: { ...second, turns: 0 } }, on);
  }
  const [, back, size] = /^(BACK )?(\d+)$/.exec(spaces) ?? [];
  const turns = Number(place["GO ON BY turns"] ?? place["THEN GO ON BY turns"] ?? 0);
  const listed = { direction: back === undefined ? "forward" : "back", turns, spaces: Number(size) } as const;
  if (second === undefined) return moved(stand, listed, on);
  const [, word, whole = "0", rest] = /^(on|back) (?:(\d+) \+ )?(\d+)$/.exec(bothIn(place, second.circle)) ?? [];
  const goesOn = (word === "on") === (listed.direction === "forward");
  const both = { turns: Number(whole), spaces: Number(rest), circle: second.circle };
  return moved(stand, { ...listed, second: { ...both, direction: goesOn ? "with" : "against" } }, on);
}

/** The move of crank and plate together; a head over it that names no turns leaves none to be printed. */
function bothIn(place: PrintedPlace, circle: number): string {
  const spaces = place[`spaces of ${circle}`] ?? "";
  return place[`turns + spaces of ${circle}`] ?? (spaces.includes("+") ? "" : spaces);
}

/** What is wrong with where the pins stand, how far the work is off, and what the scales show. */
function wrongAt(place: PrintedPlace, tooth: number, stand: Stand, way: PrintedWay, bench: OnTheBench): readonly string[] {
  const truly = withinTurn(times(BigInt(tooth - bench.startTooth), bench.step));
  const set = turnedTo(place, stand, way, bench);
  const off = arcSeconds(halfTurnEither(add(set, times(-1n, truly))));
  const printed = place["off by"] === undefined ? 0 : signedSecondsIn(place["off by"]);
  const isExact = place["off by"] === undefined || place["off by"] === "0";
  return [
    ...(way.by === "moves" ? wrongPins(place, stand, way.setting, bench) : []),
    ...(way.by === "nearest-hole" ? wrongNearest(place, stand, truly, way.circle, bench) : []),
    ...(Math.abs(off - printed) > (isExact ? 0 : 0.0501) ? [`is off by ${off}″, printed ${place["off by"] ?? "exact"}`] : []),
    ...wrongOnScales(place, { truly, set }, way.by, bench),
  ];
}

/** How far the work has turned when all is set as the line says. */
function turnedTo(place: PrintedPlace, stand: Stand, way: PrintedWay, { head, startAngle, side }: OnTheBench): Turns {
  const worm = turnsOf(wormRatioOf(head));
  switch (way.by) {
    case "moves":
      return way.setting.method === "direct" ? stand.pin : spindle(stand, way.setting);
    case "nearest-hole":
      return workTurned(stand.pin, turnsOf("0"), worm);
    case "dial":
    case "ring": {
      const shown = degreesIn(place, way.by, head);
      const from = add(shown, times(-1n, startAngle));
      return side === "plus" ? from : times(-1n, from);
    }
  }
}

/** The pins stand in the holes printed, and the index pin has gone the turns printed. */
function wrongPins(place: PrintedPlace, { pin, rear }: Stand, setting: UnprovedSetting, bench: OnTheBench): readonly string[] {
  const { circle } = setting;
  const faults: string[] = [];
  const expectIn = (name: string, hole: number) => {
    if (place[name] !== undefined && Number(place[name]) !== hole) faults.push(`${name} is ${hole}, printed ${place[name]}`);
  };
  if (circle !== null && setting.method !== "dial") {
    if (place[`hole of ${circle}`] === undefined) faults.push("no hole is printed");
    expectIn(`hole of ${circle}`, holeAt(pin, circle, bench.startHole));
    expectIn("THEN AT turns", Number((pin.n - withinTurn(pin).n) / pin.d));
  }
  if (setting.method === "compound") {
    if (place[`rear of ${setting.second.circle}`] === undefined) faults.push("no rear hole is printed");
    expectIn(`rear of ${setting.second.circle}`, holeAt(rear, setting.second.circle));
  }
  return faults;
}

/** The hole is the one that the moves from line to line lead to, and none lies nearer. */
function wrongNearest(place: PrintedPlace, { pin }: Stand, truly: Turns, circle: number, bench: OnTheBench): readonly string[] {
  const counted = holes(Number(place["THEN AT turns"]), 0, circle);
  const hole = holeAt(pin, circle, bench.startHole);
  const faults = hole === Number(place[`hole of ${circle}`]) ? [] : [`hole is ${hole}, printed ${place[`hole of ${circle}`]}`];
  const turns = add(pin, times(-1n, counted));
  const space = turnsOf(`1/${2 * circle}`);
  const worm = turnsOf(wormRatioOf(bench.head));
  const past = add(pin, times(-1n, { n: truly.n * worm.n, d: truly.d * worm.d }));
  return [
    ...faults,
    ...(turns.n < 0n || turns.n >= turns.d ? [`has not gone ${place["THEN AT turns"]} turns`] : []),
    ...(isLarger(past, space) ? ["another hole lies nearer"] : []),
  ];
}

function isLarger(one: Turns, other: Turns): boolean {
  return (one.n < 0n ? -one.n : one.n) * other.d > other.n * one.d;
}

/** A turn more or less is the same place: from a half turn short to a half turn too far. */
function halfTurnEither(turns: Turns): Turns {
  const within = withinTurn(turns);
  return 2n * within.n > within.d ? add(within, turnsOf("-1")) : within;
}
