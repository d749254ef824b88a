import { quoted, refuse } from "../number/errors.ts";
import { type FaultList, faultList } from "../number/fault-list.ts";
import { type Ratio, rational, toRatio } from "../number/ratio.ts";
import { type Gearing, type GearingSpec, readGearing, readGears } from "./gearing.ts";
import { type DirectPlate, type Plate, type PlateSpec, readDirectPlates, readPlates } from "./plate.ts";
import { readScale, type Scale, type ScaleSpec } from "./scale.ts";

/**
 * A dividing head or rotary table, checked and frozen: what it is and what its owner has for it.
 *
 * A head is plain data. It goes through JSON unchanged and is itself a valid spec.
 */
export interface Head {
  /** Short name for files and commands: lower-case letters, digits and hyphens. */
  readonly id: string;
  /** The owner's name for it, as printed. */
  readonly name: string;
  /** Crank turns for one spindle turn. */
  readonly wormRatio: Ratio;
  /** Index plates on the crank side. */
  readonly plates: readonly Plate[];
  /** Plates on the spindle for direct indexing. */
  readonly directPlates: readonly DirectPlate[];
  /** Whether a pin at the back can hold the plate by any circle, as compound indexing needs. */
  readonly rearPin: boolean;
  /** Teeth of each change gear owned, ascending, duplicates counted. */
  readonly gears: readonly number[];
  /**
   * Teeth of each gear kept as an idler, ascending; a change gear that a train leaves over serves as
   * one too. Null where the owner has not said: any gear of a size that fits will do.
   */
  readonly idlers: readonly number[] | null;
  /** How the plate is geared to the spindle; null where it cannot be. */
  readonly gearing: Gearing | null;
  /** The spindle's own scale, or null. */
  readonly ring: Scale | null;
  /** The handwheel's scale, or null. */
  readonly dial: Scale | null;
  /** The plate that is on the head now, or null. */
  readonly mounted: string | null;
}

/** A head as a person writes it: only the worm ratio and a way to count its turns are needed. */
export interface HeadSpec {
  readonly id?: string;
  readonly name?: string;
  /** A whole number, or an exact fraction in quotes: `40`, `"81/2"`. */
  readonly wormRatio: number | string;
  readonly plates?: readonly (PlateSpec | Plate)[];
  readonly directPlates?: readonly DirectPlate[];
  /** Left out: false. */
  readonly rearPin?: boolean;
  /** Left out: none. */
  readonly gears?: readonly number[];
  /** Gears kept as idlers besides; left out: not said, and taken to be at hand. */
  readonly idlers?: readonly number[] | null;
  /** Left out: as on most heads where gears are listed, and none where they are not. */
  readonly gearing?: GearingSpec | null;
  readonly ring?: ScaleSpec | null;
  readonly dial?: ScaleSpec | null;
  readonly mounted?: string | null;
}

const keys = [
  "$schema",
  "id",
  "name",
  "wormRatio",
  "plates",
  "directPlates",
  "rearPin",
  "gears",
  "idlers",
  "gearing",
  "ring",
  "dial",
  "mounted",
] as const;

/** The greatest worm ratio taken: 4,000 is the greatest common one. */
const greatestWormRatio = 100_000;
const greatestWormDenominator = 1000;

/**
 * Checks a plain description of a head and returns it complete and frozen.
 *
 * @param spec - Typed for callers in TypeScript; anything at all is checked, such as parsed JSON.
 * @throws {@link InputError} that lists every fault with its place.
 *
 * @example
 * ```ts
 * defineHead({ wormRatio: 40, plates: [{ name: "1", circles: [15, 16, 17, 18, 19, 20] }] }).id; // "ratio-40"
 * ```
 */
export function defineHead(spec: HeadSpec): Head {
  const faults = faultList();
  const fields = faults.object(spec, "", keys);
  if (fields === null) faults.throwIfAny();
  const given = fields ?? {};
  // Left out is one thing, and null another: it stands where a head has none of what most have.
  const { plates = [], directPlates = [], gears: teeth = [] } = given;
  const wormRatio = readWormRatio(given.wormRatio, faults);
  const gears = readGears(teeth, "gears", faults);
  const gearing =
    given.gearing === undefined && gears.length === 0
      ? null
      : readGearing(given.gearing ?? (given.gearing === null ? null : {}), "gearing", faults);
  const head: Head = {
    id: readId(given.id, wormRatio, faults),
    name: given.name === undefined ? `${wormRatio}:1 head` : faults.name(given.name, "name"),
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
  };
  checkWhole(head, faults);
  faults.throwIfAny();
  return Object.freeze(head);
}

function readWormRatio(value: unknown, faults: FaultList): Ratio {
  if (value === undefined) {
    faults.add("missing", "wormRatio", 'is missing; give the crank turns for one spindle turn, such as 40 or "81/2"');
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

function readId(value: unknown, wormRatio: Ratio, faults: FaultList): string {
  if (value === undefined) return `ratio-${wormRatio.replace("/", "-over-")}`;
  if (typeof value === "string" && /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(value) && value.length <= 60) return value;
  faults.add("unreadable", "id", `${quoted(value)} is not an id; use up to 60 lower-case letters, digits and single hyphens`);
  return "";
}

function checkWhole(head: Head, faults: FaultList): void {
  if (faults.has("plates")) return;
  if (head.plates.length === 0 && head.directPlates.length === 0 && head.dial === null) {
    faults.add(
      "missing",
      "plates",
      "there are none, nor a direct plate or a dial, so no move can be counted; list the plates with their circles",
    );
  }
  if (head.plates.length === 0 && head.rearPin)
    faults.add("conflict", "rearPin", "a rear pin needs a plate to hold; list the plates");
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

/** A hole circle with the plate and face it is on. */
export interface OwnedCircle {
  readonly plate: string;
  readonly face: string | null;
  readonly holes: number;
}

/** Every hole circle of a head, plate by plate. The same count on two faces is there twice. */
export function ownedCircles(head: Head): readonly OwnedCircle[] {
  return head.plates.flatMap(({ name, faces }) =>
    faces.flatMap((face) => face.circles.map((holes) => ({ plate: name, face: face.name, holes }))),
  );
}

/** The plate taken to be on the head: the one asked for, else the head's own `mounted`. */
export function mountedPlate(head: Head, asked: string | undefined): string | null {
  if (asked === undefined) return head.mounted;
  if (!head.plates.some(({ name }) => name === asked)) {
    const names = head.plates.map(({ name }) => name).join(", ");
    refuse("not-owned", "mounted", `this head has no plate ${quoted(asked)}; its plates are ${names === "" ? "none" : names}`);
  }
  return asked;
}
