import type Fraction from "fraction.js";
import { quoted, refuse } from "../number/errors.ts";
import { isPositive, type Ratio, rational } from "../number/ratio.ts";
import type { Method, SecondMove, SettingGears, SmallMove } from "../setting/setting.ts";
import { exactNumber, holes, plateRatio, towards } from "./turns.ts";

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

/** How far crank, plate and spindle turn in one act of the hand, seen from the bench, in turns; + is forward. */
export interface Act {
  /** The crank; of two the large. */
  readonly crank: Fraction;
  /** The small crank, over its plate. */
  readonly small: Fraction;
  readonly plate: Fraction;
  readonly spindle: Fraction;
}

/** A pin that is to drop into a hole when a move is made, and the circle it drops into. */
export interface Pin {
  readonly at: "index-pin" | "small-pin" | "rear-pin" | "spindle-pin" | "dial";
  /** Holes of the circle, or places of the dial; null where any circle serves. */
  readonly circle: number | null;
}

/** One move of a head that is set up: the acts in the order of work, and the pins. */
export interface Motion {
  readonly acts: readonly Act[];
  /** The pin over the plate; for direct indexing over the plate on the spindle. */
  readonly pin: Fraction;
  readonly pins: readonly Pin[];
}

/** That a part does not turn. */
export const still: Fraction = rational(0);

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

/** The crank over a plate that stands still. */
function byCrank(wormRatio: SetMove["wormRatio"], turns: Fraction): Act {
  return { crank: turns, small: still, plate: still, spindle: turns.div(exactNumber(wormRatio, "wormRatio")) };
}

/** Two acts: the large crank over its plate, then the small one over its own, which turns the worm that many times slower. */
function wideRangeMotion({ wormRatio, circle, small }: SetMove, pin: Fraction): Motion {
  const { ratio, turns, spaces, circle: ofSmall } = small as NonNullable<SetMove["small"]>;
  const travel = holes(turns, 1, "small.turns").add(holes(spaces, ofSmall, "small.spaces"));
  if (!isPositive(travel)) refuse("out-of-range", "setting.small", "turns and spaces of 0 are no move; give a move above 0");
  const worm = travel.div(exactNumber(String(ratio), "small.ratio"));
  const act: Act = { ...byCrank(wormRatio, worm), crank: still, small: travel };
  return {
    acts: isPositive(pin) ? [byCrank(wormRatio, pin), act] : [act],
    pin,
    pins: [
      { at: "index-pin", circle },
      { at: "small-pin", circle: ofSmall },
    ],
  };
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
