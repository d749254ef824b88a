import { keysOf } from "../number/check-options.ts";
import { type Fault, InputError, quoted } from "../number/errors.ts";
import { type FaultList, faultList } from "../number/fault-list.ts";
import { type Ratio, rational, toRatio } from "../number/ratio.ts";
import { readDirectPlates } from "./direct-plate.ts";
import { readGearing, readGears } from "./gearing.ts";
import type { CrankedHead, Head, HeadSpec } from "./head.ts";
import { readPlates } from "./plate.ts";
import { readScale } from "./scale.ts";
import { readSmallCrank } from "./small-crank.ts";
import { checkWithoutCrank } from "./without-crank.ts";
import { readWormError } from "./worm-error.ts";

/** The keys of a description of a head. */
const keys = keysOf<HeadSpec & { readonly $schema: string }>({
  $schema: true,
  id: true,
  name: true,
  wormRatio: true,
  plates: true,
  directPlates: true,
  rearPin: true,
  gears: true,
  idlers: true,
  gearing: true,
  ring: true,
  dial: true,
  mounted: true,
  wormErrorArcSeconds: true,
  smallCrank: true,
});

/** The greatest worm ratio taken: 4,000 is the greatest common one. */
const greatestWormRatio = 100_000;
const greatestWormDenominator = 1000;

/**
 * Makes a head of a plain description: checked, complete and frozen.
 *
 * @param spec - Typed for callers in TypeScript; anything at all is checked, such as parsed JSON.
 * @throws {@link InputError} that lists every fault with its place.
 *
 * @example
 * ```ts
 * defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [15, 16, 17, 18, 19, 20] }] }).id; // "ratio-40"
 * ```
 */
export function defineHead(spec: HeadSpec & { readonly wormRatio: number | string }): CrankedHead;
export function defineHead(spec: HeadSpec): Head;
export function defineHead(spec: HeadSpec): Head {
  const checked = checkHead(spec);
  if (!checked.ok) throw new InputError(checked.faults);
  return checked.head;
}

/** What a description of a head comes to: the head, or all that is wrong with it. `ok` tells which. */
export type CheckedHead = { readonly ok: true; readonly head: Head } | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Checks a description of a head as {@link defineHead} does, and throws nothing: for a form or an
 * editor that shows every fault at its place.
 *
 * @param spec - Anything at all, such as parsed JSON.
 *
 * @example
 * ```ts
 * checkHead({ wormRatio: 0 }).faults.map(({ code, place }) => `${code}: ${place}`); // ["out-of-range: wormRatio","missing: plates"]
 * ```
 */
export function checkHead(spec: unknown): CheckedHead {
  const faults = faultList();
  const given = faults.object(spec, "", keys);
  if (given === null) return { ok: false, faults: faults.all };
  const head = readHead(given, faults);
  checkWhole(head, faults);
  return faults.all.length === 0 ? { ok: true, head: Object.freeze(head) } : { ok: false, faults: faults.all };
}

function readHead(given: Readonly<Record<string, unknown>>, faults: FaultList): Head {
  // Left out is one thing, and null another: it stands where a head has none of what most have.
  const { plates = [], directPlates = [], gears: teeth = [] } = given;
  const wormRatio = readWormRatio(given.wormRatio, faults);
  const gears = readGears(teeth, "gears", faults);
  const gearing =
    given.gearing === undefined && gears.length === 0
      ? null
      : readGearing(given.gearing ?? (given.gearing === null ? null : {}), "gearing", faults);
  return {
    id: readId(given.id, wormRatio, faults),
    name: given.name === undefined ? usualName(wormRatio) : faults.name(given.name, "name"),
    wormRatio,
    plates: readPlates(plates, "plates", faults),
    directPlates: readDirectPlates(directPlates, "directPlates", faults),
    rearPin: given.rearPin === undefined ? false : faults.flag(given.rearPin, "rearPin"),
    gears,
    idlers: given.idlers === undefined || given.idlers === null ? null : readGears(given.idlers, "idlers", faults),
    gearing,
    ring: readScale(given.ring, "ring", "angle", faults),
    dial: readScale(given.dial, "dial", "marks", faults),
    mounted: given.mounted === undefined || given.mounted === null ? null : faults.name(given.mounted, "mounted"),
    ...readWormError(given.wormErrorArcSeconds, faults),
    ...readSmallCrank(given.smallCrank, faults),
  };
}

function usualName(wormRatio: Ratio | null): string {
  return wormRatio === null ? "Head without a crank" : `${wormRatio}:1 head`;
}

function readWormRatio(value: unknown, faults: FaultList): Ratio | null {
  if (value === null) return null;
  if (value === undefined) {
    faults.add(
      "missing",
      "wormRatio",
      'is missing; give the crank turns for one spindle turn, such as 40 or "81/2", or null where no crank turns it',
    );
    return toRatio(rational(1));
  }
  const ratio = faults.positive(value, "wormRatio");
  if (ratio === null) return toRatio(rational(1));
  if (ratio.n > ratio.d * BigInt(greatestWormRatio) || ratio.d > greatestWormDenominator) {
    faults.add(
      "out-of-range",
      "wormRatio",
      `${quoted(value)} is out of range; give at most 100,000, as a fraction over at most 1,000`,
    );
  }
  return toRatio(ratio);
}

function readId(value: unknown, wormRatio: Ratio | null, faults: FaultList): string {
  if (value === undefined) return wormRatio === null ? "no-crank" : `ratio-${wormRatio.replace("/", "-over-")}`;
  if (typeof value === "string" && /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(value) && value.length <= 60) return value;
  faults.add("unreadable", "id", `${quoted(value)} is not an id; use up to 60 lower-case letters, digits and single hyphens`);
  return "";
}

function checkWhole(head: Head, faults: FaultList): void {
  if (faults.has("plates")) return;
  if (head.wormRatio === null) {
    checkWithoutCrank(head, faults);
    return;
  }
  if (head.plates.length === 0 && head.directPlates.length === 0 && head.dial === null) {
    faults.add(
      "missing",
      "plates",
      "there are none, nor a direct plate or a dial, so no move can be counted; list the plates with their circles",
    );
  }
  if (head.plates.length === 0 && head.rearPin)
    faults.add("conflict", "rearPin", "a rear pin needs a plate to hold; list the plates");
  if (head.plates.length === 0 && head.smallCrank !== undefined)
    faults.add("conflict", "smallCrank", "the large crank beside it needs a plate to stand on; list the plates");
  if (head.plates.length === 0 && head.gearing !== null)
    faults.add(
      "conflict",
      head.gears.length > 0 ? "gears" : "gearing",
      "without a plate there is nothing to gear; list the plates",
    );
  if (head.mounted !== null && !faults.has("mounted") && !head.plates.some(({ name }) => name === head.mounted)) {
    faults.add("not-owned", "mounted", `${quoted(head.mounted)} is not one of the plates listed`);
  }
}
