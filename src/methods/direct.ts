import type { Move } from "../setting/move.ts";
import type { UnprovedSetting } from "../setting/setting.ts";
import { type Bench, settingOf } from "./layout.ts";

/**
 * Direct indexing: the worm is out of mesh and the spindle is moved by its own plate.
 *
 * The law: a plate of D holes serves N divisions when N divides D; a move is k·D/N spaces.
 *
 * @returns A setting for each direct plate that serves, fewest spaces first.
 * @see *Practical Treatise on Milling and Milling Machines*, on direct indexing.
 */
export function direct(bench: Bench, move: Move): UnprovedSetting[] {
  return bench.head.directPlates
    .filter(({ holes }) => holes % move.divisions === 0)
    .map(({ name, holes }) => ({
      ...settingOf("direct", bench, move),
      turns: 0,
      spaces: (holes / move.divisions) * move.teeth,
      circle: holes,
      plate: name,
      face: null,
      armsEnclose: null,
      plateStopPin: null,
    }))
    .sort((a, b) => a.spaces - b.spaces);
}
