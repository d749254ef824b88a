import { type FaultList, faultList } from "../number/fault-list.ts";
import type { Ratio } from "../number/ratio.ts";
import { lengthBounds, readIfGiven, readMeasured } from "./measured.ts";

/** How far a setting is off by itself: what any setting, near or exact, says of itself. */
export interface SettingErrors {
  /** Of any place against its true one; 0 where exact. */
  readonly worstArcSeconds: number;
  /** From a place to the next; left out, as much as between any two. */
  readonly pitchArcSeconds?: number | undefined;
  /** `"equal"` where one move is made over and over; left out, each place may be off either way. */
  readonly moves?: "equal" | "from-zero" | undefined;
}

/** How far the holes of an index plate are off. */
export interface HoleErrors {
  /** The most that two holes of a circle are off against each other, in mm. */
  readonly error: number;
  /** Of the circle that the pin is in, through the middles of its holes, in mm; of a compound move of both. */
  readonly circleDiameters: readonly number[];
  /** Crank turns for one of the spindle, by which it is divided; 1 for a plate on the spindle itself. */
  readonly wormRatio: number | Ratio;
}

/** What may put a work out; what is not known is left out. Lengths in mm. */
export interface ErrorSources {
  /** Of the work, where its errors are looked at: the pitch radius of a gear. */
  readonly radius: number;
  /** The count; left out, of an angle. */
  readonly divisions?: number | undefined;
  /** Any setting of the library may be handed in. */
  readonly setting?: SettingErrors | undefined;
  /** All that an indicator shows on the work over a turn of the spindle, lowest to highest: twice what it is off centre. */
  readonly runOut?: number | undefined;
  readonly holes?: HoleErrors | undefined;
  /** Of worm and wheel between any two places of the spindle, as a head file states it. */
  readonly wormErrorArcSeconds?: number | undefined;
  /** How far off a dial or ring may be read, either way, in arc-seconds of the work. */
  readonly readingArcSeconds?: number | undefined;
}

/** The same as read, null where nothing was said. */
export interface ReadSources {
  readonly radius: number;
  readonly divisions: number | null;
  readonly setting: SettingErrors | null;
  readonly runOut: number | null;
  readonly holes: { readonly error: number; readonly circleDiameters: readonly number[]; readonly wormRatio: number } | null;
  readonly wormErrorArcSeconds: number | null;
  readonly readingArcSeconds: number | null;
}

const keys = ["radius", "divisions", "setting", "runOut", "holes", "wormErrorArcSeconds", "readingArcSeconds"];
const ofAngle = { what: "an angle in arc-seconds", least: 0, most: 648_000 } as const;
const ofError = { least: 0, most: lengthBounds.most, unit: "length" } as const;
const mostPins = 2;

/**
 * Checks what may put a work out.
 *
 * @throws {@link InputError} that lists every fault.
 */
export function readSources(value: unknown): ReadSources {
  const faults = faultList();
  const given = faults.object(value, "", keys) ?? {};
  const angle = (key: "wormErrorArcSeconds" | "readingArcSeconds") => readIfGiven(given[key], key, ofAngle, faults) ?? null;
  const radius = readMeasured(given.radius, "radius", { what: "a radius", ...lengthBounds }, faults);
  const read = {
    radius,
    divisions: given.divisions === undefined ? null : faults.wholeNumber(given.divisions, "divisions", 1, 10_000_000),
    setting: given.setting === undefined ? null : readSetting(given.setting, faults),
    // Further off centre than its radius no work is.
    runOut: readIfGiven(given.runOut, "runOut", { what: "a run-out", ...ofError, most: 2 * radius }, faults) ?? null,
    holes: given.holes === undefined ? null : readHoles(given.holes, faults),
    wormErrorArcSeconds: angle("wormErrorArcSeconds"),
    readingArcSeconds: angle("readingArcSeconds"),
  };
  faults.throwIfAny();
  return read;
}

/** A setting has much else to say of itself, which is passed over. */
function readSetting(value: unknown, faults: FaultList): SettingErrors {
  const isObject = typeof value === "object" && value !== null && !Array.isArray(value);
  const { worstArcSeconds, pitchArcSeconds, moves } = (isObject ? value : {}) as Readonly<Record<string, unknown>>;
  if (moves !== undefined && moves !== "equal" && moves !== "from-zero")
    faults.add("unknown-word", "setting.moves", 'is neither "equal" nor "from-zero"; give one of the two, or leave it out');
  return {
    worstArcSeconds: readMeasured(worstArcSeconds, "setting.worstArcSeconds", ofAngle, faults),
    pitchArcSeconds: readIfGiven(pitchArcSeconds, "setting.pitchArcSeconds", ofAngle, faults),
    moves: moves as SettingErrors["moves"],
  };
}

function readHoles(value: unknown, faults: FaultList): NonNullable<ReadSources["holes"]> {
  const given = faults.object(value, "holes", ["error", "circleDiameters", "wormRatio"]) ?? {};
  const none = "there is none; give the diameter of the circle that the pin is in";
  return {
    error: readMeasured(given.error, "holes.error", { what: "an error of holes", ...ofError }, faults),
    circleDiameters: faults
      .list(given.circleDiameters, "holes.circleDiameters", mostPins, none)
      .map((diameter, index) =>
        readMeasured(diameter, `holes.circleDiameters[${index}]`, { what: "a diameter", ...lengthBounds }, faults),
      ),
    wormRatio: faults.positive(given.wormRatio, "holes.wormRatio")?.valueOf() ?? 1,
  };
}
