import { describe, expect, it } from "vitest";
import { defineHead, type Head, revolutions, type UnprovedSetting, wormRatioOf } from "../../src/index.ts";
import { add, times, turnsOf } from "../support/bench.ts";
import { canBeSetUp, workPerMove } from "../support/mechanism.ts";
import { ready } from "../support/ready.ts";
import { readBack } from "./read-back.ts";
import { linesOf } from "./read-pdf.ts";
import { arcSeconds } from "./sheet-scales.ts";

const ungeared = ready("ratio-40-plates-15-49-ungeared");
/** No move of its few holes comes near, and its ring does. */
const ringAlone = defineHead({ wormRatio: 1, plates: [{ name: "1", circles: [2] }], ring: { marksPerTurn: 360 } });

async function linesFor(head: Head, options: { readonly from: number; readonly to: number }): Promise<readonly string[]> {
  return (await readBack(head, { parts: ["impossible"], ...options })).flatMap(linesOf);
}

/** A count that cannot be done, as it is printed. */
interface PrintedCount {
  readonly divisions: number;
  /** Bounds on errors in arc-seconds, in the order of their columns. */
  readonly bounds: readonly number[];
  /** The best move, where it is the best of all. */
  readonly move: string | null;
}

function countsIn(lines: readonly string[]): readonly PrintedCount[] {
  return lines.flatMap((line, index) => {
    const [, divisions] = /^(\d+)\|×\|/.exec(line) ?? [];
    if (divisions === undefined) return [];
    const bounds = [...line.matchAll(/\|(\d+(?:\.\d+)?)([″′°])(?=\|)/g)].map(
      ([, size, unit]) => Number(size) * (units[unit ?? ""] ?? 1),
    );
    return [{ divisions: Number(divisions), bounds, move: /^near move (.*)$/.exec(lines[index + 1] ?? "")?.[1] ?? null }];
  });
}

const units: Readonly<Record<string, number>> = { "″": 1, "′": 60, "°": 3600 };

/** The greatest error of any position when each is set to the nearest of so many places in a turn of the work. */
function worstFromZero(divisions: number, placesPerTurn: number): number {
  const misses = Array.from({ length: divisions }, (_, index) => (index * placesPerTurn) % divisions);
  const furthest = Math.max(...misses.map((past) => Math.min(past, divisions - past)));
  return (furthest / divisions / placesPerTurn) * 1_296_000;
}

function expectBound(printed: number, true_: number): void {
  expect(printed).toBeGreaterThanOrEqual(true_ - 1e-6);
  // Rounded up to a tenth of its unit.
  expect(printed).toBeLessThan(true_ + (true_ < 120 ? 0.1 : 6) + 1e-6);
}

describe("counts that cannot be done", () => {
  it("print the best near move first, then hole and ring, none further off than they say", async () => {
    const lines = await linesFor(ungeared, { from: 50, to: 130 });
    const circles = ungeared.plates.flatMap(({ faces }) => faces.flatMap(({ circles }) => circles));
    const counts = countsIn(lines);
    expect(counts.map(({ divisions }) => divisions)).toContain(97);
    for (const { divisions, bounds, move } of counts) {
      const [byMove = 0, byHole = 0, byRing = 0] = bounds;
      expectBound(byHole, Math.min(...circles.map((circle) => worstFromZero(divisions, 40 * circle))));
      expectBound(byRing, worstFromZero(divisions, 360));
      expectBound(byMove, worstByMove(move ?? "", divisions));
      expect(canBeSetUp(nearSetting(move ?? "", divisions), ungeared), move ?? "").toBe(true);
      expect(byMove).toBeLessThanOrEqual(byHole);
    }
  });

  it("say nothing of a near move that there is none of, and never that it spoils the part", async () => {
    const near = (await linesFor(ungeared, { from: 50, to: 130 })).join(" ");
    expect(near).toMatch(/by one near move, counted from the start only, or each set by itself from one zero/);
    expect(near).not.toMatch(/spoils/);
    const bare = (await linesFor(ringAlone, { from: 50, to: 100 })).join(" ");
    expect(bare).not.toMatch(/near move/);
    expect(bare).toMatch(/The errors are those of the worst position: each set by itself from one zero/);
  });
});

const printedMove = /^(\d+) \+ (\d+) of (\d+)(?: ([+−]) (\d+) of (\d+))? \(plate (\d)\)(?:, (\d+) teeth per move)?$/;

/** A near move as the hand sets it on a head: `1 + 4 of 47 + 42 of 43 (plate 3), 5 teeth per move`. */
function nearSetting(move: string, divisions: number): UnprovedSetting {
  const [, turns, spaces, circle, sign, second, rear, plate = "", teeth = "1"] = printedMove.exec(move) ?? [];
  const on = { circle: Number(circle), plate, face: null, spaces: Number(spaces), armsEnclose: Number(spaces) + 1 };
  const teethPerMove = Number(teeth);
  const ofMove = { teethPerMove, wormRatio: wormRatioOf(ungeared), spindlePerMove: revolutions(teethPerMove, divisions) };
  const crank = { ...ofMove, ...on, turns: Number(turns) };
  if (second === undefined) return { ...crank, method: "simple", plateStopPin: "in" };
  const both = { spaces: Number(second), circle: Number(rear), direction: sign === "−" ? "against" : "with" } as const;
  return { ...crank, method: "compound", plateStopPin: "out", second: both };
}

/** Every move misses by the same, so the last place by the most. */
function worstByMove(move: string, divisions: number): number {
  expect(move).toMatch(printedMove);
  const setting = nearSetting(move, divisions);
  const made = workPerMove(setting, ungeared) ?? turnsOf("0");
  const miss = add(made, turnsOf(`-${setting.teethPerMove}/${divisions}`));
  return Math.abs(arcSeconds(times(BigInt(divisions - 1), miss)));
}
