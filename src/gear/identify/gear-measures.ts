import { type FaultList, faultList } from "../../number/fault-list.ts";
import { lengthBounds, readIfGiven, readMeasured } from "../measured.ts";
import type { Span } from "../span.ts";
import { readTeeth } from "../spur-gear-spec.ts";

/** What was measured on a gear of unknown pitch. Lengths in mm. */
export interface GearMeasures {
  readonly teeth: number;
  /** The outside diameter over the tips. */
  readonly tipDiameter: number;
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

const keys = ["teeth", "tipDiameter", "wholeDepth", "spans", "centreDistance", "mateTeeth", "mateTipDiameter"];
const mostSpans = 8;

/**
 * Checks the measures.
 *
 * @throws {@link InputError} that lists every fault.
 */
export function checkMeasures(value: unknown): GearMeasures {
  const faults = faultList();
  const given = faults.object(value, "", keys) ?? {};
  const length = (key: string, what: string) => readIfGiven(given[key], key, { what, ...lengthBounds }, faults);
  const optional = {
    wholeDepth: length("wholeDepth", "a whole depth"),
    centreDistance: length("centreDistance", "a centre distance"),
    mateTipDiameter: length("mateTipDiameter", "a tip diameter"),
    mateTeeth: given.mateTeeth === undefined ? undefined : readTeeth(given.mateTeeth, "mateTeeth", faults),
    spans: given.spans === undefined ? undefined : readSpans(given.spans, faults),
  };
  const teeth = readTeeth(given.teeth, "teeth", faults);
  const tipDiameter = readMeasured(given.tipDiameter, "tipDiameter", { what: "a tip diameter", ...lengthBounds }, faults);
  if (given.mateTeeth === undefined) {
    for (const key of ["centreDistance", "mateTipDiameter"]) {
      if (given[key] !== undefined) faults.add("no-effect", key, "tells nothing without the mate's teeth; give mateTeeth too");
    }
  }
  faults.throwIfAny();
  return { teeth, tipDiameter, ...withoutUndefined(optional) };
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
