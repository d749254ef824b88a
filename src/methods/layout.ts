import { type Head, mountedPlate, type OwnedCircle, ownedCircles } from "../head/head.ts";
import { refuse } from "../number/errors.ts";
import { type Exact, fromExact, gcd } from "../number/ratio.ts";
import type { Move } from "../setting/move.ts";
import type { Method, UnprovedSetting } from "../setting/setting.ts";

/** What the solvers need of a head, in safe integers and made once for many counts. */
export interface Bench {
  readonly head: Head;
  /** The worm ratio, numerator over denominator in lowest terms. */
  readonly worm: { readonly n: number; readonly d: number };
  /** The most plate turns for one of the spindle, likewise; 0 where the plate cannot be geared. */
  readonly plateTurns: { readonly n: number; readonly d: number };
  readonly circles: readonly OwnedCircle[];
  /** The plate taken to be on the head already, or null. */
  readonly mounted: string | null;
}

/** Lays out a head for the solvers. */
export function bench(head: Head, mounted?: string): Bench {
  return {
    head,
    worm: terms(head.wormRatio),
    plateTurns: terms(head.gearing?.greatestPlateRatio ?? "0"),
    circles: ownedCircles(head),
    mounted: mountedPlate(head, mounted),
  };
}

function terms(ratio: Exact): { n: number; d: number } {
  const { n, d } = fromExact(ratio);
  return { n: Number(n), d: Number(d) };
}

/**
 * Refuses an angle with terms so large that the solvers would leave the safe integers on this head.
 * No count comes near that.
 */
export function checkTerms({ worm, circles, plateTurns }: Bench, { teeth }: Move): void {
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
export function crankTurns({ worm }: Bench, { divisions, teeth }: Move): CrankTurns {
  const numerator = worm.n * teeth;
  const denominator = worm.d * divisions;
  const common = gcd(numerator, denominator);
  const parts = denominator / common;
  const part = (numerator % denominator) / common;
  return { turns: (numerator - part * common) / denominator, part, parts };
}

/** What a setting says of its move, before the crank is spoken of. */
export function settingOf<M extends Method>(
  method: M,
  { head }: Bench,
  { divisions, teeth }: Move,
): Pick<UnprovedSetting, "teethPerMove" | "wormRatio" | "spindlePerMove"> & { readonly method: M } {
  return {
    method,
    teethPerMove: teeth,
    wormRatio: head.wormRatio,
    spindlePerMove: partOfTurn(divisions, teeth),
  };
}

/** How the crank goes in one move: spaces on a circle, or whole turns, which come back to the same hole on any. */
export interface CrankPart {
  readonly turns: number;
  readonly spaces: number;
  readonly on: OwnedCircle | null;
}

/**
 * A setting by the crank. Written out as one object, since thousands are made for a table and to
 * put them together from parts takes longer than to find them.
 */
export function crankSetting(
  method: Method,
  plateStopPin: "in" | "out",
  { head }: Bench,
  { divisions, teeth }: Move,
  { turns, spaces, on }: CrankPart,
): UnprovedSetting {
  const circle = spaces === 0 ? null : on;
  return {
    method,
    teethPerMove: teeth,
    wormRatio: head.wormRatio,
    spindlePerMove: partOfTurn(divisions, teeth),
    turns,
    spaces,
    circle: circle === null ? null : circle.holes,
    plate: circle === null ? null : circle.plate,
    face: circle === null ? null : circle.face,
    armsEnclose: circle === null ? null : spaces + 1,
    plateStopPin,
  };
}

function partOfTurn(divisions: number, teeth: number): Exact {
  return divisions === 1 ? String(teeth) : `${teeth}/${divisions}`;
}
