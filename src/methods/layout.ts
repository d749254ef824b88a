import { type Head, mountedPlate, type OwnedCircle, ownedCircles } from "../head/head.ts";
import type { Plate } from "../head/plate.ts";
import { refuse } from "../number/errors.ts";
import { fromExact, gcd, type Ratio, type Revolutions, ratioOf, revolutionsOf } from "../number/ratio.ts";
import type { Move } from "../setting/move.ts";
import type { OfMove } from "../setting/setting.ts";
import { type GearedMoves, gearedMovesOn, type Terms } from "./crank-moves.ts";
import { type GearBox, gearBox } from "./gear-box.ts";

/** A head as the solvers need it, in safe integers and laid out once for many counts. */
export interface HeadLayout {
  readonly head: Head;
  /** The worm ratio; 1 where no crank turns the spindle, and no method that goes by one is asked. */
  readonly wormRatio: Ratio;
  /** The same in whole numbers. */
  readonly worm: Terms;
  /** The most plate turns for one of the spindle; 0 where the plate cannot be geared. */
  readonly plateTurns: Terms;
  readonly circles: readonly OwnedCircle[];
  /** The plate taken to be on the head already, or null. */
  readonly mounted: string | null;
  /** The change gears, sorted for looking up. */
  readonly box: GearBox;
  readonly gearedMoves: GearedMoves;
}

/** Lays out a head for the solvers. */
export function layOut(head: Head, mounted?: string): HeadLayout {
  const circles = ownedCircles(head);
  const wormRatio = head.wormRatio ?? ratioOf(1, 1);
  const worm = terms(wormRatio);
  const plateTurns = terms(head.gearing?.greatestPlateRatio ?? ratioOf(0, 1));
  const box = gearBox(head.gears);
  const gearedMoves = gearedMovesOn({ worm, plateTurns, circles }, box);
  return { head, wormRatio, worm, plateTurns, circles, mounted: mountedPlate(head, mounted), box, gearedMoves };
}

/** A laid-out head with another plate on it: the rest stays as it was laid out. */
export function withMounted(layout: HeadLayout, mounted: string | undefined): HeadLayout {
  return mounted === undefined ? layout : { ...layout, mounted: mountedPlate(layout.head, mounted) };
}

/** A laid-out head with other plates in place of its own; its gears stay laid out. */
export function withPlates(layout: HeadLayout, plates: readonly Plate[]): HeadLayout {
  const head: Head = { ...layout.head, plates, mounted: null };
  const circles = ownedCircles(head);
  return { ...layout, head, circles, mounted: null, gearedMoves: gearedMovesOn({ ...layout, circles }, layout.box) };
}

function terms(ratio: Ratio): Terms {
  const { n, d } = fromExact(ratio);
  return { n: Number(n), d: Number(d) };
}

/**
 * Refuses an angle with terms so large that the solvers would leave the safe integers on this head.
 * No count comes near that.
 */
export function checkTerms({ worm, circles, plateTurns }: HeadLayout, { teeth }: Move): void {
  const holes = Math.max(1, ...circles.map((circle) => circle.holes));
  if (Math.max(worm.n, worm.d * Math.max(1, plateTurns.n)) * holes * teeth > Number.MAX_SAFE_INTEGER)
    refuse("out-of-range", "angle", "it has too large terms for this head; give a coarser or a smaller angle");
}

/** Whole crank turns and the rest of a turn, `part`/`parts` in lowest terms, `part` < `parts`. */
export interface CrankTurns {
  readonly turns: number;
  readonly part: number;
  readonly parts: number;
}

/** The crank turns of one move over a plate that stands still: t = R·k/N. */
export function crankTurns({ worm }: Pick<HeadLayout, "worm">, { divisions, teeth }: Move): CrankTurns {
  const numerator = worm.n * teeth;
  const denominator = worm.d * divisions;
  const common = gcd(numerator, denominator);
  const parts = denominator / common;
  const part = (numerator % denominator) / common;
  return { turns: (numerator - part * common) / denominator, part, parts };
}

/** What a setting says of its move, whichever way it is made. */
export function ofMove({ head }: HeadLayout, { divisions, teeth }: Move): OfMove {
  return { teethPerMove: teeth, wormRatio: head.wormRatio, spindlePerMove: partOfTurn(divisions, teeth) };
}

/** Part of a turn of the work, as exact text: the terms of a move are coprime. */
export function partOfTurn(divisions: number, teeth: number): Revolutions {
  return revolutionsOf(teeth, divisions);
}
