import { checkKeys, keysOf } from "../number/check-options.ts";
import { quoted, refuse, wholeNumberFault } from "../number/errors.ts";
import { floorMod, type Ratio, ratioOf } from "../number/ratio.ts";

/** A vernier by its spaces. */
export interface VernierSpec {
  /** Spaces of the vernier on one side of its zero: 2 to 120. */
  readonly spaces: number;
  /** Spaces of the main scale that these are as long as; left out, one fewer. */
  readonly over?: number | undefined;
  /** Whether it has its spaces on both sides of its zero, for a scale with figures both ways; left out, false. */
  readonly twoSided?: boolean | undefined;
}

/** A vernier, with how it is read. */
export interface Vernier {
  readonly spaces: number;
  readonly over: number;
  readonly twoSided: boolean;
  /** One of its spaces, in spaces of the main scale. */
  readonly space: Ratio;
  /** The finest that it shows, in spaces of the main scale: one over its spaces. */
  readonly leastCount: Ratio;
  /**
   * Which way its figures rise from its zero: as those of the main scale do, or against them, as where its spaces are
   * longer than those of the main scale. On both sides they rise away from the zero.
   */
  readonly runs: "with" | "against";
}

const vernierKeys = keysOf<VernierSpec>({ spaces: true, over: true, twoSided: true });
const mostSpaces = 120;
const mostOver = 1200;

/**
 * A vernier by its spaces, and what it reads to.
 *
 * The law: n of its spaces are as long as m of the main scale's, where m is one below or one above a multiple of n. Each
 * line then comes in line with one of the main scale's 1/n of a space after the line before it: going on where m is one
 * below, going back where it is one above, so that its figures run against those of the main scale.
 *
 * @throws {@link InputError} when the spaces are not allowed, or those of the main scale are not one off a multiple.
 *
 * @example
 * ```ts
 * vernier({ spaces: 12, over: 23 }).space; // "23/12"
 * ```
 */
export function vernier(spec: VernierSpec): Vernier {
  checkKeys(spec, vernierKeys, "vernier");
  const { spaces, twoSided = false } = spec;
  if (!Number.isInteger(spaces) || spaces < 2 || spaces > mostSpaces)
    refuse(
      wholeNumberFault(spaces),
      "vernier.spaces",
      `${quoted(spaces)} is not a number of spaces for a vernier; give 2 to ${mostSpaces}`,
    );
  if (typeof twoSided !== "boolean") refuse("unreadable", "vernier.twoSided", `${quoted(twoSided)} is neither true nor false`);
  const { over = spaces - 1 } = spec;
  const beyond = Number.isInteger(over) && over >= 1 && over <= mostOver ? floorMod(over, spaces) : 0;
  if (beyond !== 1 && beyond !== spaces - 1)
    refuse(
      wholeNumberFault(over),
      "vernier.over",
      `${spaces} spaces over ${quoted(over)} are no vernier; give ${spaces - 1} or ${spaces + 1} of the main scale, or one off a multiple of ${spaces}, such as ${2 * spaces - 1}`,
    );
  return {
    spaces,
    over,
    twoSided,
    space: ratioOf(over, spaces),
    leastCount: ratioOf(1, spaces),
    // Of two spaces it is one off either way.
    runs: beyond === spaces - 1 ? "with" : "against",
  };
}
