import { type CheckCondition, type RebuiltCheck, rebuiltChecks } from "../../gear/repair/rebuilt-checks.ts";
import type { ToothRepair } from "../../gear/repair/tooth-repair.ts";
import type { SpurGear } from "../../gear/spur-gear.ts";
import type { Item } from "../item.ts";
import type { LengthWords } from "../lengths.ts";

/** A measure to take on the rebuilt teeth, in words. */
export interface CheckInWords {
  readonly code: RebuiltCheck["code"];
  readonly what: string;
  /** What it may be: a tooth at either end is right. */
  readonly limits: string;
  /** Where it is taken: `tooth 31`, `22–31`, `space 30 | 73`. */
  readonly places: readonly string[];
}

/**
 * What to measure on the rebuilt teeth, with what each measure may be. The limits are those of the
 * blade and the pins as they are shown, rounded inwards.
 */
export function checksInWords(gear: SpurGear, { plan, check }: ToothRepair, length: LengthWords): readonly CheckInWords[] {
  const setTo = (mm: number) => length.asShown(mm);
  return rebuiltChecks(gear, plan, check?.mayLose ?? null, setTo).map((each) => ({
    code: each.code,
    what: whatWords(each, length),
    limits: each.least === null ? `${length.downTo(each.most)} at most` : length.between(each.least, each.most),
    places: placeWords(each),
  }));
}

function whatWords(check: RebuiltCheck, length: LengthWords): string {
  switch (check.code) {
    case "across":
      return `Across the tooth, caliper blade set to ${length(check.blade)}`;
    case "span":
      return `Span over ${check.teeth} teeth, from a rebuilt tooth to a sound one`;
    case "over-pins": {
      const space = check.between === "rebuilt-teeth" ? "between two rebuilt teeth" : "between a rebuilt tooth and a sound one";
      return `Over pins of ${length(check.pinDiameter)}, one in the space ${space}, one in the sound space opposite`;
    }
  }
}

function placeWords(check: RebuiltCheck): readonly string[] {
  switch (check.code) {
    case "across":
      return check.teeth.map((tooth) => `tooth ${tooth}`);
    case "span":
      return check.spans.map(({ fromTooth, toTooth }) => `${fromTooth}–${toTooth}`);
    case "over-pins":
      return check.places.map(({ toothSpace, opposite }) => `space ${toothSpace} | ${opposite}`);
  }
}

const conditions: Readonly<Record<CheckCondition, string>> = {
  "loss-shared":
    "Spans and pins judge a tooth that has lost as much on one flank as on the other; the mean of its spans to both sides judges it however the loss is shared.",
  "teeth-alike": "Pins between two rebuilt teeth tell of both together.",
};

const mostPlaces = 12;

/** The checks one by one, with the places of those that are not taken on each tooth alone. */
export function checkItems(gear: SpurGear, repair: ToothRepair, length: LengthWords): readonly Item[] {
  const measures = checksInWords(gear, repair, length).map(({ code, what, limits, places }, index) => {
    const more = places.length > mostPlaces ? " and so on" : "";
    const at = code === "across" ? "" : ` (${code === "span" ? "teeth " : ""}${places.slice(0, mostPlaces).join(", ")}${more})`;
    return { term: index === 0 ? "Measure" : "", text: `${what}: ${limits}${at}` };
  });
  return [...measures, ...conditionItems(repair)];
}

/** What the checks hold under, and which of them decides; nothing where there is only the measure across. */
export function conditionItems({ checks }: ToothRepair): readonly Item[] {
  const named = new Set(checks.flatMap(({ holdsIf }) => holdsIf));
  const said = (["loss-shared", "teeth-alike"] as const).filter((each) => named.has(each)).map((each) => conditions[each]);
  const decides = checks.some(({ code }) => code === "across")
    ? ["Where measures disagree, the one across the tooth decides."]
    : [];
  return said.length === 0 ? [] : [{ term: "They hold", text: [...said, ...decides].join(" ") }];
}
