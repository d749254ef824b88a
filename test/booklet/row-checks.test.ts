import { describe, expect, it } from "vitest";
import { paperNamed } from "../../booklet/layout/papers.ts";
import { type Head, readyHeads, type UnprovedSetting, wormRatioOf } from "../../src/index.ts";
import { add, holes, plateTurns, type Turns, times, turnsOf, turnsText } from "../support/bench.ts";
import { closesOnBench } from "../support/mechanism.ts";
import { farthest } from "../support/sweep.ts";
import { halfTurn, secondHand } from "./heads.ts";
import { closes, type PrintedRow, printedRows } from "./printed-rows.ts";
import { pagesOn, piecesIn, wholeBook } from "./set-pages.ts";
import { arcSeconds } from "./sheet-scales.ts";

const heads = [...readyHeads.filter(({ plates }) => plates.length > 0), secondHand, halfTurn];

/** `39  1/9`, `8/9`, `40`. */
function mixedIn(text: string): Turns {
  const [, whole = "0", n = "0", d = "1"] = /^(?:(\d+)(?:\s+|$))?(?:(\d+)\/(\d+))?$/.exec(text.trim()) ?? [];
  return add(turnsOf(whole), turnsOf(`${n}/${d}`));
}

function crankOf({ turns, spaces, circle }: UnprovedSetting): Turns {
  return holes(turns, spaces, circle ?? 1);
}

/** The second of the two that a check adds: the plate's turns, or those of crank and plate together. */
function secondOf(setting: UnprovedSetting, divisions: number): Turns {
  if (setting.method === "differential") return times(BigInt(setting.teethPerMove), plateTurns(setting));
  if (setting.method !== "compound") return turnsOf("0");
  const { spaces, circle, direction } = setting.second;
  return times(BigInt(divisions) * (direction === "with" ? 1n : -1n), holes(0, spaces, circle));
}

/** What is wrong with the check of a geared or compound row: over all its moves, both add up to what is seen from the bench. */
function wrongSum({ setting, divisions, rest }: PrintedRow): readonly string[] {
  if (setting?.method !== "differential" && setting?.method !== "compound") return [];
  const [, pin = "", sign, plate = "", crank = ""] = /(?:check |\|)([\d/\s]+) ([+−]) ([\d/\s]+) = ([\d/\s]+)$/.exec(rest) ?? [];
  const printed = [mixedIn(pin), times(sign === "−" ? -1n : 1n, mixedIn(plate)), mixedIn(crank)].map(turnsText);
  const first = times(BigInt(divisions), crankOf(setting));
  const second = secondOf(setting, divisions);
  const made = [first, second, add(first, second)].map(turnsText);
  return printed.join() === made.join() ? [] : [`${divisions}: "${rest}" should be ${made}`];
}

/** What is wrong with the angle of one division. */
function wrongStep({ setting, divisions, rest }: PrintedRow): readonly string[] {
  if (setting === null) return [];
  const [, about, degrees, minutes, seconds] = /(≈ )?(\d+)° (\d\d)′ (\d\d)″/.exec(rest) ?? [];
  const printed = (Number(degrees) * 60 + Number(minutes)) * 60 + Number(seconds);
  const off = Math.abs(printed - arcSeconds(turnsOf(`1/${divisions}`)));
  return off <= (about === undefined ? 0 : 0.5) ? [] : [`${divisions}: one division is off by ${off}″ in "${rest}"`];
}

/** What is wrong with when the pin is back in its start hole: so many moves, whole turns, and the ring there. */
function wrongStart({ setting, divisions, rest }: PrintedRow, head: Head): readonly string[] {
  const check =
    /\|(\d+)\|(\d+)(?:\|(?:≈ )?([^|]*°[^|]*))?$/.exec(rest) ??
    /start hole after (\d+) moves\s+(?:· )?turns (\d+)(?:\s+(?:· )?ring (?:≈ )?(.*°.*))?$/.exec(rest);
  if (setting?.method !== "simple") return [];
  if (check === null) return [`${divisions}: no start hole in "${rest}"`];
  const [moves, turns] = [BigInt(check[1] ?? 0), check[2] ?? ""];
  const gone = times(moves, crankOf(setting));
  const before = Array.from({ length: Number(moves) - 1 }, (_, move) => times(BigInt(move + 1), crankOf(setting)).d);
  const worm = turnsOf(wormRatioOf(head));
  const work = { n: gone.n * worm.d, d: gone.d * worm.n };
  const [, degrees = 0, minutes = 0, seconds = 0] = /^(\d+)°(?: (\d+)′)?(?: (\d+)″)?/.exec(check[3] ?? "") ?? [];
  const ring = (Number(degrees) * 60 + Number(minutes)) * 60 + Number(seconds);
  const off = (arcSeconds(work) - ring) % 1_296_000;
  return [
    ...(turnsText(gone) === turns ? [] : [`${divisions}: ${moves} moves are ${turnsText(gone)} turns, printed ${turns}`]),
    ...(before.includes(1n) ? [`${divisions}: the pin was back before ${moves} moves`] : []),
    ...((check[3] === undefined) === (head.ring === null)
      ? []
      : [`${divisions}: a ring is read where there is none, or none where there is`]),
    ...(head.ring === null || Math.abs(off) <= 0.5 ? [] : [`${divisions}: the ring is off by ${off}″`]),
  ];
}

describe.each(heads.map((head) => [head.id, head] as const))("the rows of %s", (_, head) => {
  const book = wholeBook(head, { from: 2, to: farthest });
  it.each(["a4", "a5"] as const)("%s: close with what the head has, and their checks come out by hand", (paper) => {
    const rows = printedRows(pagesOn(paperNamed(paper), book).map(piecesIn), wormRatioOf(head), head);
    const made = rows.filter(({ setting }) => setting !== null);
    expect(made.length).toBeGreaterThan(farthest / 7);
    expect(made.filter((row) => !closes(row, head))).toEqual([]);
    expect(made.filter(({ setting }) => setting !== null && !closesOnBench(setting, head))).toEqual([]);
    expect(made.filter(({ setting }) => setting?.armsEnclose && setting.armsEnclose !== setting.spaces + 1)).toEqual([]);
    // The other circles of a count share the check of its first.
    const firsts = rows.filter((row, index) => rows[index - 1]?.divisions !== row.divisions);
    expect(firsts.flatMap(wrongSum)).toEqual([]);
    expect(firsts.flatMap(wrongStep)).toEqual([]);
    expect(firsts.flatMap((row) => wrongStart(row, head))).toEqual([]);
  });
});
