import type Fraction from "fraction.js";
import { quoted, refuse } from "../number/errors.ts";
import { type Exact, fromExact, isPositive, rational, toExact } from "../number/ratio.ts";
import type { Proof } from "../setting/proof.ts";
import type { SecondMove, SettingGears, UnprovedSetting } from "../setting/setting.ts";

/** A move as it is set on a head, right or wrong: all that the mechanism needs to make it. */
export interface SetMove {
  /** Crank turns for one spindle turn. */
  readonly wormRatio: Exact;
  readonly turns: number;
  readonly spaces: number;
  /** Holes in the circle; null where the move is whole turns. */
  readonly circle: number | null;
  /** `"direct"` where the spindle itself is moved by its plate; left out or anything else, the crank is. */
  readonly method?: string;
  /** Compound only. */
  readonly second?: SecondMove;
  /** Differential only. */
  readonly gears?: Pick<SettingGears, "drivers" | "driven" | "direction">;
}

/** The head set up for one setting: how far each part turns in one move. */
interface Rig {
  readonly spindle: Fraction;
  readonly crank: Fraction;
  readonly plate: Fraction;
  readonly pin: Fraction;
  /** What each pin moves over in one move, and the holes of its circle: it must drop into one after every move. */
  readonly pins: readonly { readonly perMove: Fraction; readonly holes: number }[];
}

/**
 * Turns a setting through all its moves on a model of the head (crank, pin, plate, gears, worm,
 * spindle) and says whether it lands on every position. It knows nothing of how settings are found.
 *
 * One move turns the spindle by s. Should s be exactly k/N in lowest terms, then move j lands at
 * j·k/N: the N moves reach N places that differ, as k has an inverse modulo N, and the last is the
 * start. That identity proves every move at once; `walk` makes the moves one by one instead, and
 * looks for the hole under each pin and the place of each division.
 *
 * @param setting - As returned by the library, or through JSON.
 * @param options.walk - Make every move; time and memory grow with the divisions.
 * @throws {@link InputError} when the setting is no move at all, or jams.
 */
export function prove(setting: UnprovedSetting, options: { readonly walk?: boolean } = {}): Proof {
  const rig = setUp(setting);
  const wanted = exactNumber(setting.spindlePerMove, "spindlePerMove");
  const moves = Number(wanted.d);
  const allMoves = rational(wanted.d);
  const lands =
    rig.spindle.equals(wanted) && rig.pins.every(({ perMove, holes }) => (perMove.n * BigInt(holes)) % perMove.d === 0n);
  const over = (turns: Fraction) => (turns === still ? "0" : toExact(turns.mul(allMoves)));
  const pinTurns = over(rig.pin);
  const isDirect = setting.method === "direct";
  return {
    closes: options.walk === true ? walk(rig, wanted) : lands,
    shownBy: options.walk === true ? "walk" : "identity",
    moves,
    rounds: Number(wanted.n),
    crankTurns: isDirect ? null : rig.crank === rig.pin ? pinTurns : over(rig.crank),
    pinTurns: isDirect ? null : pinTurns,
    plateTurns: isDirect ? null : over(rig.plate),
  };
}

/**
 * How far one move really turns the spindle, in turns.
 *
 * @throws {@link InputError} when it is no move at all, or jams.
 */
export function spindleTurnsPerMove(move: SetMove): Exact {
  return toExact(setUp(move).spindle);
}

const still = rational(0);

function setUp(setting: SetMove): Rig {
  if ((setting.circle ?? null) === null && setting.spaces !== 0)
    refuse("missing", "setting.circle", "is missing; spaces say nothing without it");
  const rest = holes(setting.spaces, setting.circle ?? 1, "spaces");
  const pin = setting.turns === 0 ? rest : holes(setting.turns, 1, "turns").add(rest);
  if (!isPositive(pin)) refuse("out-of-range", "setting", "turns and spaces of 0 are no move; give a move above 0");
  const pins = [{ perMove: pin, holes: setting.circle ?? 1 }];
  // Direct: the worm is out of mesh, and the spindle itself moves by the holes of its plate.
  if (setting.method === "direct") return { spindle: pin, crank: still, plate: still, pin, pins };
  const worm = exactNumber(setting.wormRatio, "wormRatio");
  if (setting.second) {
    // Compound: first the crank over a plate held still, then crank and plate together at the rear pin.
    const { spaces, circle, direction } = setting.second;
    if (setting.gears) refuse("conflict", "setting", "a move is compound or geared, not both");
    const plate = towards(direction, holes(spaces, circle, "second.spaces"), "second");
    const crank = pin.add(plate);
    return { spindle: crank.div(worm), crank, plate, pin, pins: [...pins, { perMove: plate, holes: circle }] };
  }
  if (!setting.gears) return { spindle: pin.div(worm), crank: pin, plate: still, pin, pins };
  // Differential: the pin moves over a plate that turns g for each turn of the spindle,
  // so crank = pin + plate, with crank = R·spindle and plate = g·spindle: spindle = pin / (R − g).
  const ratio = plateRatio(setting.gears);
  const net = worm.sub(ratio);
  if (!isPositive(net))
    refuse(
      "cannot-be-made",
      "setting.gears",
      "turn the plate as fast as the crank or faster, so that nothing can move; give a slower train",
    );
  const spindle = pin.div(net);
  return { spindle, crank: spindle.mul(worm), plate: spindle.mul(ratio), pin, pins };
}

function plateRatio({ drivers, driven, direction }: NonNullable<SetMove["gears"]>): Fraction {
  if (drivers.length !== driven.length || drivers.length < 1 || drivers.length > 2)
    refuse(
      "unreadable",
      "setting.gears",
      `${drivers.length} drivers and ${driven.length} driven gears are no train of one or two pairs`,
    );
  const areGears = (teeth: readonly number[]) => teeth.every((each) => Number.isSafeInteger(each) && each > 0);
  if (!areGears(drivers) || !areGears(driven)) {
    refuse(
      "unreadable",
      "setting.gears",
      `${drivers.join(" and ")} to ${driven.join(" and ")} are not the teeth of gears; give whole numbers above 0`,
    );
  }
  const pairs = drivers.map((driver, index) => holes(driver, driven[index] ?? 0, "gears"));
  return towards(
    direction,
    pairs.reduce((all, pair) => all.mul(pair)),
    "gears",
  );
}

/** Turns with the crank count up, turns against it down. */
function towards(direction: unknown, turns: Fraction, place: string): Fraction {
  if (direction === "with") return turns;
  if (direction === "against") return turns.neg();
  return refuse("unknown-word", `setting.${place}.direction`, `${quoted(direction)} is neither "with" nor "against"`);
}

/**
 * Makes every move: each pin must find a hole, each division be reached once, and the work come
 * round as often as wanted. Places are counted in the parts of a turn that one move is made of.
 */
function walk({ spindle, pins }: Rig, wanted: Fraction): boolean {
  const reached = new Uint8Array(Number(wanted.d));
  const pinSteps = pins.map(({ perMove, holes }) => ({ step: perMove.s * perMove.n * BigInt(holes), parts: perMove.d, at: 0n }));
  const step = spindle.s * spindle.n;
  let place = 0n;
  for (let move = 0; move < reached.length; move += 1) {
    const divisions = place * wanted.d;
    if (divisions % spindle.d !== 0n) return false;
    reached[Number((divisions / spindle.d) % wanted.d)] = 1;
    place += step;
    for (const pin of pinSteps) {
      pin.at += pin.step;
      if (pin.at % pin.parts !== 0n) return false;
    }
  }
  return place === wanted.n * spindle.d && reached.every((times) => times === 1);
}

function holes(count: number, circle: number, place: string): Fraction {
  if (!Number.isSafeInteger(count) || count < 0 || !Number.isSafeInteger(circle) || circle < 1) {
    refuse("unreadable", `setting.${place}`, `${quoted(count)} of ${quoted(circle)} is not a move in whole holes`);
  }
  return rational(count, circle);
}

function exactNumber(text: unknown, place: string): Fraction {
  if (typeof text === "string" && /^-?\d{1,15}(?:\/0*[1-9]\d{0,14})?$/.test(text)) {
    const value = fromExact(text);
    if (isPositive(value)) return value;
  }
  return refuse("unreadable", `setting.${place}`, `${quoted(text)} is not an exact number above 0, such as "40" or "81/2"`);
}
