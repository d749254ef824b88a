import type { Move } from "../setting/move.ts";
import type { UnprovedSetting } from "../setting/setting.ts";
import { type Bench, crankTurns, settingOf } from "./layout.ts";

/**
 * Indexing by the handwheel's dial alone, where every position falls on one of its marks.
 *
 * The law: t = R·k/N turns = whole turns + s/C, as in simple indexing, with C the places that the
 * dial shows in a turn: its marks, times the lines of its vernier.
 *
 * @returns One setting, or none; `spaces` and `circle` count the places of the dial.
 */
export function byDial(bench: Bench, move: Move): UnprovedSetting[] {
  const { dial } = bench.head;
  if (dial === null) return [];
  const places = dial.marksPerTurn * dial.vernierLines;
  const { turns, part, parts } = crankTurns(bench, move);
  if (places % parts !== 0) return [];
  return [
    {
      ...settingOf("dial", bench, move),
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
