import { arcSecondsAlong, errorAtRadius } from "../number/error-at-radius.ts";
import { type ErrorSources, type ReadSources, readSources } from "./error-sources.ts";
import { isGraded } from "./graded.ts";
import { finestGrade, finestTotalGrade } from "./pitch-deviation.ts";

/** What an error comes of: the setting itself, the work off its axis, the holes of the plate, worm and wheel, the reading of a scale. */
export type ErrorSource = "setting" | "run-out" | "holes" | "worm" | "reading";

/** What one source leaves. Without sign. */
export interface ErrorItem {
  readonly code: ErrorSource;
  /** Of any place against its true one. */
  readonly arcSeconds: number;
  /** The same along the arc at the radius. */
  readonly mm: number;
  /** Of any place against any other. */
  readonly anyTwoArcSeconds: number;
  /** From a place to the next; null where there is no count. */
  readonly pitchArcSeconds: number | null;
}

/** What sources leave together, were all at their worst the same way. */
export interface ErrorSum {
  readonly arcSeconds: number;
  readonly mm: number;
  /** The accuracy grades that a gear of that pitch radius could still be of; null where there is no count, or no such grade. */
  readonly grades: ErrorGrades | null;
}

/** Grades of ISO 1328-1:1995, 0 the finest; null where it is worse than 12. */
export interface ErrorGrades {
  /** By the single pitch deviation. */
  readonly toothToTooth: number | null;
  /** By the total cumulative pitch deviation. */
  readonly allRound: number | null;
}

/** What the error of a work is made of. */
export interface ErrorBudget {
  /** In mm. */
  readonly radius: number;
  /** The greatest first. */
  readonly items: readonly ErrorItem[];
  readonly together: ErrorSum;
  /** The same with a setting that is exact: all that better gears or plates could reach. */
  readonly withoutSetting: ErrorSum;
  /** What nothing was said of. */
  readonly untold: readonly ErrorSource[];
}

/**
 * What the error of a work is made of at a radius, and which part of it matters: it stops one from
 * buying gears to cure 16″ on a work that runs out by 80″.
 *
 * The laws: an axis off centre by e puts a place up to e/r radians off, either way, and the next one
 * against it 2·e/r·sin(π/N); e is half of what an indicator shows on the work over a turn. A hole that is off by h
 * on a circle of diameter D turns the crank 2h/D wrong, and the work R times less. Of worm and wheel nothing is
 * divided. All are added up as if each were at its worst the same way, so that nothing is further off.
 *
 * @param sources - Lengths in mm.
 * @throws {@link InputError} when a source is not allowed.
 *
 * @example
 * ```ts
 * errorBudget({ radius: 50, runOut: 0.04, setting: { worstArcSeconds: 16 } }).items.map(({ code, arcSeconds }) => `${code} ${arcSeconds.toFixed(1)}`); // ["run-out 82.5","setting 16.0"]
 * ```
 */
export function errorBudget(sources: ErrorSources): ErrorBudget {
  const read = readSources(sources);
  const found = [ofSetting(read), ofRunOut(read), ofHoles(read), ofWorm(read), ofReading(read)];
  const items = found.filter((item) => item !== null).sort((a, b) => b.arcSeconds - a.arcSeconds);
  const told = items.map(({ code }) => code);
  return {
    radius: read.radius,
    items,
    together: sumOf(items, read),
    withoutSetting: sumOf(
      items.filter(({ code }) => code !== "setting"),
      read,
    ),
    untold: allSources.filter((code) => !told.includes(code)),
  };
}

const allSources: readonly ErrorSource[] = ["setting", "run-out", "holes", "worm", "reading"];

/** An error as large between neighbours as between any two, which is so many times that of one place. */
function item(code: ErrorSource, arcSeconds: number, times: 1 | 2, { radius, divisions }: ReadSources): ErrorItem {
  const anyTwoArcSeconds = times * arcSeconds;
  return {
    code,
    arcSeconds,
    mm: errorAtRadius(arcSeconds, radius).mm,
    anyTwoArcSeconds,
    pitchArcSeconds: divisions === null ? null : anyTwoArcSeconds,
  };
}

/** Made over and over a move is off ever further the same way; each place by itself may be off either way. */
function ofSetting(read: ReadSources): ErrorItem | null {
  if (read.setting === null) return null;
  const { worstArcSeconds, pitchArcSeconds, moves } = read.setting;
  const whole = item("setting", worstArcSeconds, moves === "equal" ? 1 : 2, read);
  if (pitchArcSeconds === undefined || read.divisions === null) return whole;
  // Of a few places next to each other a move is off by less than it is from its last place to its first.
  return { ...whole, pitchArcSeconds: Math.min(pitchArcSeconds, whole.anyTwoArcSeconds) };
}

function ofRunOut(read: ReadSources): ErrorItem | null {
  const { runOut, radius, divisions } = read;
  if (runOut === null) return null;
  const offCentre = runOut / 2;
  const whole = item("run-out", arcSecondsAlong(offCentre, radius), 2, read);
  const pitchArcSeconds = divisions === null ? null : whole.anyTwoArcSeconds * Math.sin(Math.PI / Math.max(2, divisions));
  // Along the arc it is the off-centre itself, at any radius.
  return { ...whole, mm: offCentre, pitchArcSeconds };
}

/** Each pin in a circle adds its own: a compound move has two. */
function ofHoles(read: ReadSources): ErrorItem | null {
  if (read.holes === null) return null;
  const { error, circleDiameters, wormRatio } = read.holes;
  const crank = circleDiameters.reduce((sum, diameter) => sum + arcSecondsAlong(error, diameter / 2), 0);
  return item("holes", crank / wormRatio, 1, read);
}

function ofWorm(read: ReadSources): ErrorItem | null {
  return read.wormErrorArcSeconds === null ? null : item("worm", read.wormErrorArcSeconds, 1, read);
}

function ofReading(read: ReadSources): ErrorItem | null {
  return read.readingArcSeconds === null ? null : item("reading", read.readingArcSeconds, 2, read);
}

function sumOf(items: readonly ErrorItem[], { radius, divisions }: ReadSources): ErrorSum {
  const sum = (of: (each: ErrorItem) => number) => items.reduce((total, each) => total + of(each), 0);
  const gear = divisions === null ? null : { module: (2 * radius) / divisions, diameterMm: 2 * radius };
  return {
    arcSeconds: sum(({ arcSeconds }) => arcSeconds),
    mm: sum(({ mm }) => mm),
    grades:
      gear !== null && isGraded(gear)
        ? {
            toothToTooth: finestGrade(
              gear,
              sum(({ pitchArcSeconds }) => pitchArcSeconds ?? 0),
            ),
            allRound: finestTotalGrade(
              gear,
              sum(({ anyTwoArcSeconds }) => anyTwoArcSeconds),
            ),
          }
        : null,
  };
}
