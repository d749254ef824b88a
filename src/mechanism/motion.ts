import type Fraction from "fraction.js";
import { quoted, refuse } from "../number/errors.ts";
import { isPositive, type Ratio } from "../number/ratio.ts";
import type { Method, SecondMove, SettingGears, SmallMove } from "../setting/setting.ts";
import { type Act, byCrank, type Motion, still } from "./act.ts";
import { exactNumber, holes, plateRatio, towards } from "./turns.ts";
import { wideRangeMotion } from "./wide-range-motion.ts";

/** A move as it is set on a head, right or wrong: all that the mechanism needs to make it. */
export interface SetMove {
  /** Crank turns for one spindle turn; null where no crank turns it, and the move is direct. */
  readonly wormRatio: Ratio | null;
  readonly turns: number;
  readonly spaces: number;
  /** Holes in the circle; null where the move is whole turns. */
  readonly circle: number | null;
  /** Left out, compound where there is a second move, wide range where there is one of a small crank, differential where there are gears, else simple. */
  readonly method?: Method | undefined;
  /** Compound only. */
  readonly second?: SecondMove | undefined;
  /** Wide range only. */
  readonly small?: Pick<SmallMove, "ratio" | "turns" | "spaces" | "circle"> | undefined;
  /** Differential only. */
  readonly gears?: Pick<SettingGears, "drivers" | "driven" | "direction"> | undefined;
}

/**
 * How each method moves the parts of a head. A method's motion is told here without a look at how
 * its settings are found.
 */
const motions: Readonly<Record<Method, MethodMotion>> = {
  direct: { needs: null, of: directMotion },
  simple: { needs: null, of: crankMotion("index-pin") },
  dial: { needs: null, of: crankMotion("dial") },
  compound: { needs: "second", of: compoundMotion },
  differential: { needs: "gears", of: differentialMotion },
  "wide-range": { needs: "small", of: wideRangeMotion },
};

/** What a move has besides turns and spaces, by its method. */
type MovePart = "second" | "small" | "gears";

const partNames: Readonly<Record<MovePart, string>> = {
  second: "a second move",
  small: "a move of the small crank",
  gears: "gears",
};

/** How a method moves the head, and what a move must have for it besides turns and spaces. */
interface MethodMotion {
  readonly needs: MovePart | null;
  of(move: SetMove, pin: Fraction): Motion;
}

/**
 * The motion of one move.
 *
 * @throws {@link InputError} when it is no move at all, or jams.
 */
export function motionOf(move: SetMove): Motion {
  if (typeof move !== "object" || move === null) refuse("unreadable", "setting", `${quoted(move)} is not a setting or a move`);
  return motions[methodOf(move)].of(move, pinTravel(move));
}

/** How far a motion turns the work, in turns. */
export function spindleOf({ acts }: Motion): Fraction {
  return sumOf(acts, "spindle");
}

/** How far a part turns in all the acts of a motion. */
export function sumOf(acts: readonly Act[], part: keyof Act): Fraction {
  const [first, second] = acts;
  if (first === undefined) return still;
  return second === undefined ? first[part] : acts.slice(1).reduce((sum, act) => sum.add(act[part]), first[part]);
}

function methodOf({ method, second, small, gears }: SetMove): Method {
  if (second && gears) refuse("conflict", "setting", "a move is compound or geared, not both");
  if (small && (second || gears)) refuse("conflict", "setting", "a move of the small crank is neither compound nor geared");
  const found = method ?? (second ? "compound" : small ? "wide-range" : gears ? "differential" : "simple");
  if (!Object.hasOwn(motions, found)) {
    const methods = Object.keys(motions).join(", ");
    refuse("unknown-word", "setting.method", `there is no method ${quoted(found)}; the methods are ${methods}`);
  }
  const { needs } = motions[found];
  const has = second ? "second" : small ? "small" : gears ? "gears" : null;
  if (needs !== has) {
    const what = partNames[needs ?? has ?? "second"];
    const lacks = needs === null ? `has no ${what.replace(/^a /, "")}` : `needs ${what}`;
    refuse("conflict", "setting", `a move by the method ${quoted(found)} ${lacks}; give one that fits its method`);
  }
  return found;
}

function pinTravel({ turns, spaces, circle, small }: SetMove): Fraction {
  if ((circle ?? null) === null && spaces !== 0) refuse("missing", "setting.circle", "is missing; spaces say nothing without it");
  const rest = holes(spaces, circle ?? 1, "spaces");
  const pin = turns === 0 ? rest : holes(turns, 1, "turns").add(rest);
  // The large crank may stay where it is while the small one moves.
  if (!isPositive(pin) && !small) refuse("out-of-range", "setting", "turns and spaces of 0 are no move; give a move above 0");
  return pin;
}

/** The worm is out of mesh, and the spindle itself moves by the holes of its plate. */
function directMotion({ circle }: SetMove, pin: Fraction): Motion {
  return { acts: [{ crank: still, small: still, plate: still, spindle: pin }], pin, pins: [{ at: "spindle-pin", circle }] };
}

/** One act of the crank, to a hole of a plate that stands still or to a mark of the dial. */
function crankMotion(at: "index-pin" | "dial"): MethodMotion["of"] {
  return ({ wormRatio, circle }, pin) => ({ acts: [byCrank(wormRatio, pin)], pin, pins: [{ at, circle }] });
}

/**
 * Two acts: the crank over a plate that the rear pin holds, and crank and plate together with the
 * index pin in its hole. A part that goes back is made first, so that the worm is last moved forward.
 */
function compoundMotion({ wormRatio, circle, second }: SetMove, pin: Fraction): Motion {
  const { spaces, circle: rear, direction } = second as SecondMove;
  const together = towards(direction, holes(spaces, rear, "second.spaces"), "second");
  const both: Act = { ...byCrank(wormRatio, together), plate: together };
  const alone = byCrank(wormRatio, pin);
  return {
    acts: direction === "with" ? [alone, both] : [both, alone],
    pin,
    pins: [
      { at: "index-pin", circle },
      { at: "rear-pin", circle: rear },
    ],
  };
}

/**
 * The pin moves over a plate that turns g for each turn of the spindle, so crank = pin + plate, with
 * crank = R·spindle and plate = g·spindle: spindle = pin/(R − g).
 */
function differentialMotion({ wormRatio, circle, gears }: SetMove, pin: Fraction): Motion {
  const worm = exactNumber(wormRatio, "wormRatio");
  const ratio = plateRatio(gears as NonNullable<SetMove["gears"]>);
  const net = worm.sub(ratio);
  if (!isPositive(net))
    refuse(
      "cannot-be-made",
      "setting.gears",
      "turn the plate as fast as the crank or faster, so that nothing can move; give a slower train",
    );
  const spindle = pin.div(net);
  return {
    acts: [{ crank: spindle.mul(worm), small: still, plate: spindle.mul(ratio), spindle }],
    pin,
    pins: [{ at: "index-pin", circle }],
  };
}
