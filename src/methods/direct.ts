import { groupDigits } from "../number/ratio.ts";
import type { SettingBy } from "../setting/setting.ts";
import { firstMove } from "../setting/target.ts";
import type { Law } from "./law.ts";
import { ofMove } from "./layout.ts";

/**
 * Direct indexing: the worm is out of mesh and the spindle is moved by its own plate.
 *
 * The law: a plate of D holes serves N divisions when N divides D; a move is k·D/N spaces. A setting
 * for each direct plate that serves, fewest spaces first.
 *
 * @see *Practical Treatise on Milling and Milling Machines*, on direct indexing.
 */
export const direct: Law<"direct"> = {
  places: { direct: 1 },
  plain: true,
  find: (_, layout, { first }) =>
    layout.head.directPlates
      .filter(({ holes }) => holes % first.divisions === 0)
      .map(
        ({ name, holes }): SettingBy<"direct"> => ({
          method: "direct",
          ...ofMove(layout, first),
          turns: 0,
          spaces: (holes / first.divisions) * first.teeth,
          circle: holes,
          plate: name,
          face: null,
          armsEnclose: null,
          plateStopPin: null,
        }),
      )
      .sort((a, b) => a.spaces - b.spaces),
  lacks({ plate, circle }, { directPlates }) {
    const owned = directPlates.find(({ name }) => name === plate);
    return owned?.holes === circle ? null : `needs a direct plate ${JSON.stringify(plate)} of ${groupDigits(circle)} holes`;
  },
  whyNot({ head: { directPlates } }, target) {
    if (directPlates.length === 0) return { code: "without", part: "direct-plate" };
    const owned = directPlates.map(({ holes }) => holes);
    return { code: "no-multiple", of: "direct-plate", multiplesOf: [firstMove(target).divisions], owned };
  },
};
