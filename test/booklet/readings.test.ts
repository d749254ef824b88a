import { describe, expect, it } from "vitest";
import { defineHead, type Head, readyHeads, wormRatioOf } from "../../src/index.ts";
import { turnsOf } from "../support/bench.ts";
import { everyOf } from "../support/sweep.ts";
import { dialThird } from "./heads.ts";
import { printedFile } from "./printed-file.ts";
import { printedSeries } from "./printed-series.ts";
import type { PrintedPlace } from "./printed-sheet.ts";
import { readBack } from "./read-back.ts";
import { linesOf, piecesOf } from "./read-pdf.ts";
import { arcIn, lastDecimalOf, nearNothing, placesOn, setTo, worstOff, wrongPositions } from "./reading-on-scale.ts";
import { arcSeconds } from "./sheet-scales.ts";

const bare = readyHeads.filter(({ plates }) => plates.length === 0);
const named = (heads: readonly Head[]) => heads.map((head) => [head.id, head] as const);

const marksDial = defineHead({ id: "marks", wormRatio: 90, dial: { marksPerTurn: 100, vernierLines: 5 } });
const ringOnly = defineHead({
  id: "ring",
  wormRatio: 40,
  directPlates: [{ name: "nose", holes: 24 }],
  ring: { marksPerTurn: 360, vernierLines: 12, figures: "angle" },
});
const bothMarks = defineHead({ id: "both", wormRatio: "81/2", dial: { marksPerTurn: 80 }, ring: { marksPerTurn: 360 } });
const madeUp = [marksDial, ringOnly, bothMarks, dialThird];

describe("the book of a table without plates", () => {
  it.each(everyOf(3, named(bare)))("%s: speaks of nothing that it has not, on 30 pages at most", async (_, head) => {
    const pages = await piecesOf(printedFile(head));
    const text = pages.flatMap(linesOf).join("\n");
    expect(text).not.toMatch(
      /NOT POSSIBLE|cannot be done|none\|none|\|none\b|index pin|sector arms|stop pin|change gears|compound|crank turns|the crank,/i,
    );
    expect(pages.length).toBeLessThanOrEqual(30);
  });

  it.each(everyOf(3, named([...madeUp, ...bare])))("%s: has a row for every count, each right by hand", async (_, head) => {
    const [table] = printedSeries(await readBack(head, { parts: ["readings"] }), "Count");
    const rows = table?.rows ?? [];
    expect(rows.flatMap((row) => wrongRow(row, head))).toEqual([]);
    const there = rows.map((row) => Number(row.Count));
    expect(there).toEqual([...new Set(there)].sort((one, other) => one - other));
    // Where the scale is too coarse for a count, two of its places could be taken for each other.
    const scales = (["dial", "ring"] as const).filter((scale) => head[scale] !== null);
    const settable = upTo400.filter((count) => scales.some((by) => worstOff(count, placesOn(head, by)) < 648_000 / count));
    expect(settable.filter((count) => !there.includes(count))).toEqual([]);
  });

  it.each(everyOf(3, named([...bare, ...madeUp])))(
    "%s: sets every position on a mark, none further off than it says",
    async (_, head) => {
      const tables = printedSeries(await readBack(head, { parts: ["degrees"] }), "no.");
      expect(tables.length).toBeGreaterThan(0);
      if (bare.some((each) => each === head)) expect(tables.map(({ title }) => Number.parseInt(title, 10))).toEqual(upTo60);
      expect(tables.flatMap((each) => wrongPositions(each, head))).toEqual([]);
    },
  );
});

describe("the hand that sets the readings is not led by them", () => {
  const alter = (text: string) => text.replace(/\d(?=\D*$)/, (figure) => String((Number(figure) + 1) % 10));

  it("any one figure altered is found, of a row and of what is said of the count", async () => {
    const [head] = bare as [Head, ...Head[]];
    const pages = await readBack(head, { parts: ["degrees"], degreeTables: [53] });
    const [table] = printedSeries(pages, "no.");
    if (table === undefined) throw new Error("no table of 53 is printed");
    const row = table.rows[20] as PrintedPlace;
    expect(Object.keys(row)).toEqual(["no.", "turns", "dial", "ring"]);
    for (const name of Object.keys(row)) {
      const rows = table.rows.map((each) => (each === row ? { ...row, [name]: alter(row[name] ?? "") } : each));
      expect(wrongPositions({ ...table, rows }, head), name).not.toEqual([]);
    }
    const others = ["4.8″, 0.0012", "5.1″, 0.0012", "5.0″, 0.0011", "5.0″, 0.0013"].map((bound) => `within ${bound} mm at 50 mm`);
    for (const notes of ["exact", ...others]) expect(wrongPositions({ ...table, notes }, head), notes).not.toEqual([]);
  });

  it("any one figure altered is found, of the row of a count", async () => {
    const [head] = bare as [Head, ...Head[]];
    const [table] = printedSeries(await readBack(head, { parts: ["readings"], to: 60 }), "Count");
    const row = table?.rows.find(({ Count }) => Count === "53") as PrintedPlace;
    expect(wrongRow(row, head)).toEqual([]);
    for (const name of ["Count", "turns", "off by", "added up"])
      expect(wrongRow({ ...row, [name]: alter(row[name] ?? "") }, head), name).not.toEqual([]);
    expect(wrongRow({ ...row, dial: "0° 47′ 31″" }, head)).not.toEqual([]);
    expect(wrongRow({ ...row, "off by": "exact" }, head)).not.toEqual([]);
  });
});

const upTo400 = Array.from({ length: 399 }, (_, index) => index + 2);
const upTo60 = Array.from({ length: 59 }, (_, index) => index + 2);

/** What is wrong with the row of a count: where its first reading sets the work, the bound, what is left of steps added up. */
function wrongRow(row: PrintedPlace, head: Head): readonly string[] {
  const divisions = Number(row.Count);
  const off = row["off by"] ?? "";
  const by = off.startsWith("ring ") || head.dial === null ? "ring" : "dial";
  const fault = (text: string) => [`${divisions}: ${text}, printed ${JSON.stringify(row)}`];
  const set = setTo(row, by, head);
  if (set === null && /^\d+$/.test(row["whole turns"] ?? "")) return wrongWholeTurns(row, head) ? fault("is not reached so") : [];
  if (set === null) return fault("lies on no mark");
  const teeth = BigInt(row["teeth a move"] ?? "1");
  const miss = nearNothing({ n: set.n * BigInt(divisions) - teeth * set.d, d: set.d * BigInt(divisions) });
  const text = off.replace("ring ", "");
  if (text === "exact") return miss.n === 0n ? [] : fault("is not exact");
  const worst = worstOff(divisions, placesOn(head, by));
  const left = arcSeconds({ n: set.n * BigInt(divisions) - set.d, d: set.d });
  const added = row["added up"] ?? "";
  return [
    ...(Math.abs(arcSeconds(miss)) <= worst + 1e-9 ? [] : fault(`the first is ${arcSeconds(miss)}″ off`)),
    ...(isBound(text, worst) ? [] : fault(`the worst is ${worst}″ off`)),
    ...(isBound(added.replace(/^[+−]/, ""), Math.abs(left)) && Math.sign(arcIn(added)) === Math.sign(left)
      ? []
      : fault(`${left}″ are left`)),
  ];
}

/** Not under what it bounds, and over it by less than its last decimal. */
function isBound(printed: string, size: number): boolean {
  return arcIn(printed) >= size - 1e-6 && arcIn(printed) < size + lastDecimalOf(printed) - 1e-6;
}

function wrongWholeTurns(row: PrintedPlace, { wormRatio }: Head): boolean {
  const worm = turnsOf(wormRatioOf({ wormRatio }));
  const teeth = BigInt(row["teeth a move"] ?? "1");
  return BigInt(row["whole turns"] ?? "0") * BigInt(row.Count ?? "1") * worm.d !== teeth * worm.n;
}
