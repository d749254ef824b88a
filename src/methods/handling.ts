import type { SecondMove } from "../setting/setting.ts";

/** What the hand does in one move. */
export interface Handled {
  readonly turns: number;
  readonly spaces: number;
  readonly circle: number | null;
  readonly plate: string | null;
  readonly second?: SecondMove;
}

/** A geared move as the bench sees it. */
export interface GearedHandled extends Handled {
  /** The size of the plate's turns for one of the spindle, numerator over denominator. */
  readonly numerator: number;
  readonly denominator: number;
  readonly with: boolean;
}

/**
 * Orders settings of one kind and one number of teeth per move by how they handle: the plate
 * already mounted; a second part that goes on before one that goes back, where the worm's slack
 * is to be taken up anew; fewer spaces to miscount (both parts of a compound move count), the
 * larger circle, fewer turns.
 */
export function byHandling(mounted: string | null): (a: Handled, b: Handled) => number {
  return (a, b) => byMounted(a, b, mounted) || goesBack(a) - goesBack(b) || byCounting(a, b);
}

/**
 * Orders geared moves with like trains by how they handle: the plate already mounted; a plate that
 * turns slowly; a plate that turns with the crank, which takes an idler less; then as
 * {@link byHandling}.
 */
export function byGearedHandling(mounted: string | null): (a: GearedHandled, b: GearedHandled) => number {
  return (a, b) =>
    byMounted(a, b, mounted) ||
    isFaster(a, fast) - isFaster(b, fast) ||
    Number(b.with) - Number(a.with) ||
    isFaster(a, brisk) - isFaster(b, brisk) ||
    byCounting(a, b);
}

/** A plate that is already on the head before any other. */
export function byMounted(a: Pick<Handled, "plate">, b: Pick<Handled, "plate">, mounted: string | null): number {
  return offMounted(a, mounted) - offMounted(b, mounted);
}

function offMounted({ plate }: Pick<Handled, "plate">, mounted: string | null): number {
  return plate === null || plate === mounted ? 0 : 1;
}

function goesBack({ second }: Handled): number {
  return second?.direction === "against" ? 1 : 0;
}

function byCounting(a: Handled, b: Handled): number {
  return spacesOf(a) - spacesOf(b) || (b.circle ?? 0) - (a.circle ?? 0) || a.turns - b.turns;
}

function spacesOf({ spaces, second }: Handled): number {
  return spaces + (second?.spaces ?? 0);
}

/**
 * Plate turns for one of the spindle: a train above `fast` is taken only where no slower one is to
 * be had, one above `brisk` only to save an idler; our own choice.
 */
const fast = 2.5;
const brisk = 1.5;

function isFaster({ numerator, denominator }: GearedHandled, speed: number): number {
  return numerator > speed * denominator ? 1 : 0;
}
