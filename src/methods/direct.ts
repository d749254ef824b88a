import { type DirectPlate, placesOf } from "../head/direct-plate.ts";
import type { Head } from "../head/head.ts";
import { groupDigits } from "../number/ratio.ts";
import type { DirectWay, SettingBy } from "../setting/setting.ts";
import { firstMove } from "../setting/target.ts";
import type { Law } from "./law.ts";
import { ofMove } from "./layout.ts";

/**
 * Direct indexing: the worm is out of mesh and the spindle is moved by its own plate.
 *
 * The law: a plate of D holes serves N divisions when N divides D; a move is k·D/N spaces. With a row of
 * V holes that are each a V-th of a space further along, it has D·V places. A setting for each direct plate
 * that serves, those without the row before those with it, fewest spaces first.
 *
 * @see *Practical Treatise on Milling and Milling Machines*, on direct indexing.
 */
export const direct: Law<"direct"> = {
  places: { direct: 1 },
  plain: true,
  find: (_, layout, { first }) =>
    layout.head.directPlates
      .filter((plate) => placesOf(plate) % first.divisions === 0)
      .map((plate): SettingBy<"direct"> => {
        const needsRow = plate.holes % first.divisions !== 0;
        const places = needsRow ? placesOf(plate) : plate.holes;
        return {
          method: "direct",
          ...ofMove(layout, first),
          turns: 0,
          spaces: (places / first.divisions) * first.teeth,
          ...placesOn(plate, needsRow),
          armsEnclose: null,
          plateStopPin: null,
        };
      })
      .sort((a, b) => (a.vernierHoles ?? 1) - (b.vernierHoles ?? 1) || a.spaces - b.spaces),
  lacks: lacksDirect,
  whyNot({ head: { directPlates } }, target) {
    if (directPlates.length === 0) return { code: "without", part: "direct-plate" };
    const owned = directPlates.map(placesOf);
    return { code: "no-multiple", of: "direct-plate", multiplesOf: [firstMove(target).divisions], owned };
  },
};

/** What a head lacks of the plate of a direct setting; null where it has it. */
export function lacksDirect(
  { plate, circle, vernierHoles = 1 }: Pick<DirectWay, "plate" | "circle" | "vernierHoles">,
  { directPlates }: Pick<Head, "directPlates">,
): string | null {
  const owned = directPlates.find(({ name }) => name === plate);
  const hasRow = vernierHoles === 1 || vernierHoles === owned?.vernierHoles;
  return hasRow && circle === (owned?.holes ?? 0) * vernierHoles
    ? null
    : `needs a direct plate ${JSON.stringify(plate)} of ${groupDigits(circle)} ${vernierHoles === 1 ? "holes" : "places"}`;
}

/** The places of a direct plate as a setting names them, with its row of holes or without. */
export function placesOn(
  plate: DirectPlate,
  withRow: boolean,
): Pick<DirectWay, "circle" | "plate" | "face" | "vernierHoles" | "form"> {
  const { name, holes, vernierHoles, form } = plate;
  return {
    circle: withRow ? placesOf(plate) : holes,
    plate: name,
    face: null,
    ...(withRow && vernierHoles !== undefined ? { vernierHoles } : {}),
    ...(form === undefined ? {} : { form }),
  };
}
