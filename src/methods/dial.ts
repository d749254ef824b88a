import type { Move } from "../setting/move.ts";
import type { SettingBy } from "../setting/setting.ts";
import { firstThatServes } from "./first-that-serves.ts";
import type { Law } from "./law.ts";
import { crankTurns, type HeadLayout, ofMove } from "./layout.ts";
import { neededDivisors } from "./needed-divisors.ts";

/** Indexing by the handwheel's dial alone, where every position falls on one of its marks. */
export const dial: Law<"dial"> = {
  places: { dial: 8 },
  plain: false,
  find: (_, layout, trial) => firstThatServes(dialSettings, layout, trial),
  lacks({ circle }, head) {
    const places = (head.dial?.marksPerTurn ?? 0) * (head.dial?.vernierLines ?? 0);
    return places === circle ? null : `needs a dial with ${circle} places in a turn`;
  },
  whyNot(layout, target, teethPerMove) {
    if (layout.head.dial === null) return { code: "without", part: "dial" };
    return { code: "no-multiple", of: "dial", multiplesOf: neededDivisors(layout, target, teethPerMove), owned: [] };
  },
};

/**
 * The law: t = R·k/N turns = whole turns + s/C, as in simple indexing, with C the places that the
 * dial shows in a turn: its marks, times the lines of its vernier.
 *
 * @returns One setting, or none; `spaces` and `circle` count the places of the dial.
 */
function dialSettings(layout: HeadLayout, move: Move): SettingBy<"dial">[] {
  const { dial } = layout.head;
  if (dial === null) return [];
  const places = dial.marksPerTurn * dial.vernierLines;
  const { turns, part, parts } = crankTurns(layout, move);
  if (places % parts !== 0) return [];
  return [
    {
      method: "dial",
      ...ofMove(layout, move),
      wormRatio: layout.wormRatio,
      turns,
      spaces: (places / parts) * part,
      circle: places,
      plate: null,
      face: null,
      armsEnclose: null,
      plateStopPin: null,
    },
  ];
}
