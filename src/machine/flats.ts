import { numberFault, quoted, refuse } from "../number/errors.ts";
import { faultList } from "../number/fault-list.ts";

/** Flats to be milled on round stock, all alike. Lengths in mm. */
export interface FlatsSpec {
  /** 2 (for a spanner) to 360; 4 a square, 6 a hexagon. */
  readonly sides: number;
  /** Over two opposite flats; of an odd number, twice what a flat stands from the axis. Left out, the largest that the blank holds with sharp corners. */
  readonly acrossFlats?: number | undefined;
  /** Diameter of the blank; left out, the smallest that gives sharp corners. */
  readonly blank?: number | undefined;
}

/** Flats as they are milled and measured. Lengths in mm. */
export interface Flats {
  readonly sides: number;
  readonly acrossFlats: number;
  /** Over two opposite corners, were they sharp; of an odd number twice what a corner stands from the axis; null of two flats, which have none. */
  readonly acrossCorners: number | null;
  readonly blank: number;
  /** What each flat is cut below the blank. */
  readonly depth: number;
  /** How wide a flat is, across the work. */
  readonly flatWidth: number;
  /** Whether the flats meet; where not, some of the round is left between them. */
  readonly cornersSharp: boolean;
  /** From the first flat to the round opposite: what is measured before the second is cut. */
  readonly flatToRound: number;
  /** From a flat to the corner opposite, of an odd number: what is measured in the end; null of an even one, which has a flat there. */
  readonly flatToCorner: number | null;
}

const most = 100_000;
const mostSides = 360;

/**
 * Flats on round stock: the blank, the depth of cut, how wide a flat comes out, and what is measured on the way.
 *
 * The laws: n flats at f/2 from the axis meet at corners on a diameter f/cos(π/n); a blank of that or more gives sharp
 * ones. Each flat is cut D/2 − f/2 deep and is as wide as the chord of the blank there, 2·√(D²/4 − f²/4), at most
 * f·tan(π/n).
 *
 * @throws {@link InputError} when a number is not allowed, neither length is given, or the blank is no larger than the flats are across.
 *
 * @example
 * ```ts
 * flats({ sides: 6, acrossFlats: 17 }).blank.toFixed(2); // "19.63"
 * ```
 */
export function flats(spec: FlatsSpec): Flats {
  const { sides, ...given } = checkFlats(spec);
  const cosine = sides === 2 ? 0 : Math.cos(Math.PI / sides);
  const acrossFlats = given.acrossFlats ?? (given.blank ?? 0) * cosine;
  const acrossCorners = sides === 2 ? null : acrossFlats / cosine;
  const blank = given.blank ?? acrossCorners ?? 0;
  if (blank <= acrossFlats)
    refuse("cannot-be-made", "blank", "is no larger than the flats are across, so that nothing is cut; give a larger blank");
  const chord = Math.sqrt(blank ** 2 - acrossFlats ** 2);
  // The blank by its own formula may come out a last bit smaller than the corners.
  const cornersSharp = acrossCorners !== null && blank >= acrossCorners * (1 - lastBits);
  const flatWidth = cornersSharp ? acrossFlats * Math.tan(Math.PI / sides) : chord;
  const corner = Math.min(blank, acrossCorners ?? blank);
  return {
    sides,
    acrossFlats,
    acrossCorners,
    blank,
    depth: (blank - acrossFlats) / 2,
    flatWidth,
    cornersSharp,
    flatToRound: (blank + acrossFlats) / 2,
    flatToCorner: sides % 2 === 0 ? null : (corner + acrossFlats) / 2,
  };
}

const lastBits = 1e-12;

function checkFlats(value: unknown): FlatsSpec {
  const faults = faultList();
  const given = faults.object(value, "", ["sides", "acrossFlats", "blank"]) ?? {};
  const sides = faults.wholeNumber(given.sides, "sides", 2, mostSides);
  for (const key of ["acrossFlats", "blank"] as const) {
    const length = given[key];
    if (length !== undefined && !(typeof length === "number" && length > 0 && length <= most))
      faults.add(numberFault(length), key, `${quoted(length)} is not a length above 0, up to 100,000 mm`);
  }
  if (given.acrossFlats === undefined && given.blank === undefined)
    faults.add("missing", "acrossFlats", "neither length is given; give what the flats are to be across, or the blank");
  if (sides === 2 && (given.acrossFlats === undefined || given.blank === undefined))
    faults.add(
      "missing",
      given.blank === undefined ? "blank" : "acrossFlats",
      "is needed: two flats have no corners to reckon it by",
    );
  faults.throwIfAny();
  return given as unknown as FlatsSpec;
}
