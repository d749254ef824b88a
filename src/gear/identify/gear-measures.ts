import { type FaultList, faultList } from "../../number/fault-list.ts";
import { lengthBounds, readIfGiven, readMeasured } from "../measured.ts";
import type { Span } from "../span.ts";
import { readTeeth } from "../spur-gear-spec.ts";

/** A piece of a gear, measured over the tips of its teeth. Lengths in mm. */
export interface Fragment {
  /** Straight from a tip to the same side of another. */
  readonly chord: number;
  /** How many teeth on that other one is. */
  readonly pitches: number;
  /** From the middle of the chord up to the tip circle, as from a straightedge over both tips to a tip half way. */
  readonly height?: number | undefined;
}

/**
 * What was measured on a gear of unknown pitch. Lengths in mm. Of the tips, where they are lost, nothing is needed: two
 * spans, or the centre distance with the mate's teeth, tell the pitch as well, and a fragment the count.
 */
export interface GearMeasures {
  /** Left out only where a fragment with its height tells it. */
  readonly teeth?: number | undefined;
  /** The outside diameter over the tips. */
  readonly tipDiameter?: number | undefined;
  readonly fragment?: Fragment | undefined;
  /** From tip to root. */
  readonly wholeDepth?: number | undefined;
  /** Spans over different numbers of teeth; two of them tell the pressure angle. */
  readonly spans?: readonly Span[] | undefined;
  /** Between the shafts of the gear and its mate; needs `mateTeeth`. */
  readonly centreDistance?: number | undefined;
  readonly mateTeeth?: number | undefined;
  /** The outside diameter of the mate; needs `mateTeeth`. */
  readonly mateTipDiameter?: number | undefined;
}

/** The measures as they were checked: a gear of so many teeth, or of as many as its fragment tells. */
export type CheckedMeasures = { readonly [Name in keyof GearMeasures]?: Exclude<GearMeasures[Name], undefined> };

/** The same, the count being known or supposed. */
export type Measures = CheckedMeasures & { readonly teeth: number };

const keys = ["teeth", "tipDiameter", "fragment", "wholeDepth", "spans", "centreDistance", "mateTeeth", "mateTipDiameter"];
const mostSpans = 8;

/**
 * Checks the measures.
 *
 * @throws {@link InputError} that lists every fault.
 */
export function checkMeasures(value: unknown): CheckedMeasures {
  const faults = faultList();
  const given = faults.object(value, "", keys) ?? {};
  const length = (key: string, what: string) => readIfGiven(given[key], key, { what, ...lengthBounds }, faults);
  const optional = {
    wholeDepth: length("wholeDepth", "a whole depth"),
    centreDistance: length("centreDistance", "a centre distance"),
    mateTipDiameter: length("mateTipDiameter", "a tip diameter"),
    mateTeeth: given.mateTeeth === undefined ? undefined : readTeeth(given.mateTeeth, "mateTeeth", faults),
    spans: given.spans === undefined ? undefined : readSpans(given.spans, faults),
    tipDiameter: length("tipDiameter", "a tip diameter"),
    fragment: given.fragment === undefined ? undefined : readFragment(given.fragment, faults),
    teeth: given.teeth === undefined ? undefined : readTeeth(given.teeth, "teeth", faults),
  };
  if (given.mateTeeth === undefined) {
    for (const key of ["centreDistance", "mateTipDiameter"]) {
      if (given[key] !== undefined) faults.add("no-effect", key, "tells nothing without the mate's teeth; give mateTeeth too");
    }
  }
  checkEnough(optional, faults);
  faults.throwIfAny();
  return withoutUndefined(optional) as CheckedMeasures;
}

/** A count, and one measure at least that tells the pitch. */
function checkEnough({ teeth, tipDiameter, fragment, mateTeeth, spans = [], ...mate }: GearMeasures, faults: FaultList): void {
  if (teeth === undefined && fragment?.height === undefined)
    faults.add("missing", "teeth", "how many is not known; give the count, or a fragment with its height, which tells it");
  if (teeth !== undefined && fragment !== undefined && fragment.pitches > teeth / 2)
    faults.add("conflict", "fragment.pitches", `${fragment.pitches} are over half of ${teeth} teeth; measure over fewer`);
  const byMate = mateTeeth !== undefined && (mate.centreDistance !== undefined || mate.mateTipDiameter !== undefined);
  if (tipDiameter === undefined && fragment === undefined && !byMate && spans.length < 2) {
    faults.add(
      "missing",
      "tipDiameter",
      "nothing given tells the pitch; give the tip diameter, or where the tips are lost two spans, a fragment, or the centre distance with the mate's teeth",
    );
  }
}

function readFragment(value: unknown, faults: FaultList): Fragment {
  const given = faults.object(value, "fragment", ["chord", "pitches", "height"]) ?? {};
  const chord = readMeasured(given.chord, "fragment.chord", { what: "a chord", ...lengthBounds }, faults);
  // Over half way round the chord grows shorter again.
  const bounds = { what: "a height over that chord", ...lengthBounds, most: chord / 2 };
  const height = readIfGiven(given.height, "fragment.height", bounds, faults);
  const pitches = faults.wholeNumber(given.pitches, "fragment.pitches", 1, 2500);
  return { chord, pitches, ...(height !== undefined && { height }) };
}

function readSpans(value: unknown, faults: FaultList): readonly Span[] {
  const spans = faults.list(value, "spans", mostSpans).map((entry, index) => {
    const span = faults.object(entry, `spans[${index}]`, ["teeth", "length"]) ?? {};
    const bounds = { what: "a span", ...lengthBounds };
    return {
      teeth: faults.wholeNumber(span.teeth, `spans[${index}].teeth`, 1, 5000),
      length: readMeasured(span.length, `spans[${index}].length`, bounds, faults),
    };
  });
  for (const [index, { teeth }] of spans.entries()) {
    if (spans.slice(0, index).some((other) => other.teeth === teeth)) {
      faults.add("twice", `spans[${index}].teeth`, `a span over ${teeth} teeth is given twice; give each number of teeth once`);
    }
  }
  return [...spans].sort((a, b) => a.teeth - b.teeth);
}

/** Leaves out what was not given, so that the result is as the caller would write it. */
function withoutUndefined<T extends object>(value: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(value).filter(([, entry]) => entry !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}
