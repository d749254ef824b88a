import { describe, expect, it } from "vitest";
import { type Head, wormRatioOf } from "../../src/index.ts";
import { add, holeAt, holes, type Turns, times, turnsOf, workTurned } from "../support/bench.ts";
import { ready } from "../support/ready.ts";
import { type PrintedTable, printedSeries } from "./printed-series.ts";
import { readBack } from "./read-back.ts";
import { arcIn, lastDecimalOf, nearNothing, wrongPositions } from "./reading-on-scale.ts";
import { arcSeconds } from "./sheet-scales.ts";

const ungeared = ready("ratio-40-plates-15-49-ungeared");

async function tablesOf(head: Head): Promise<readonly PrintedTable[]> {
  return printedSeries(await readBack(head, { parts: ["degrees"] }), "no.");
}

/** What is wrong with a table by the nearest holes of one circle, its moves made one after the other from the start. */
function wrongByHoles({ title, notes, rows }: PrintedTable, head: Head): readonly string[] {
  const [, circle = 0, plate] =
    /circle of (\d+), plate (\S+)/.exec(notes)?.map((each, at) => (at === 1 ? Number(each) : each)) ?? [];
  const owned = head.plates.filter(({ name }) => name === plate).flatMap(({ faces }) => faces.flatMap((face) => face.circles));
  const divisions = Number.parseInt(title, 10);
  const bound = /within (\S+),/.exec(notes)?.[1] ?? "";
  let pin: Turns = turnsOf("0");
  let worst = 0;
  const faults = rows.flatMap((row, index) => {
    const spaces = row.spaces ?? "";
    if (spaces !== "–") pin = add(pin, holes(Number(row.turns), Number(spaces), Number(circle)));
    const work = workTurned(pin, turnsOf("0"), turnsOf(wormRatioOf(head)));
    const off = Math.abs(arcSeconds(nearNothing(add(work, times(-1n, turnsOf(`${index}/${divisions}`))))));
    worst = Math.max(worst, off);
    const ring = Math.abs(arcSeconds(nearNothing(add(turnsOf(`${Number.parseInt(row.ring ?? "", 10)}/360`), times(-1n, work)))));
    return [
      ...(Number(row["no."]) === index + 1 ? [] : [`${title}: no. ${row["no."]} stands in the place of ${index + 1}`]),
      ...(holeAt(pin, Number(circle)) === Number(row["THEN AT hole"])
        ? []
        : [`${title}: no. ${row["no."]} is not in hole ${row["THEN AT hole"]}`]),
      ...(ring <= 1800 ? [] : [`${title}: no. ${row["no."]}: the ring shows another mark`]),
    ];
  });
  return [
    ...faults,
    ...(rows.length === divisions ? [] : [`${title} has ${rows.length} positions`]),
    ...(owned.includes(Number(circle)) ? [] : [`${title}: there is no circle of ${circle} on plate ${plate}`]),
    ...(worst <= arcIn(bound) + 1e-6 && worst > arcIn(bound) - lastDecimalOf(bound) - 1e-6
      ? []
      : [`${title}: ${worst}″ off, printed ${bound}`]),
  ];
}

describe("counts to 60 that a head with plates cannot do", () => {
  it("without a dial: by the nearest holes of one circle, each move as it is printed", async () => {
    const tables = await tablesOf(ungeared);
    expect(tables.map(({ title }) => title)).toEqual(["53 divisions", "59 divisions"]);
    expect(tables.flatMap((table) => wrongByHoles(table, ungeared))).toEqual([]);
  });

  it.each([
    ["turns", 5],
    ["spaces", 20],
    ["THEN AT hole", 40],
    ["ring", 52],
  ] as const)("any one figure altered under %s is found", async (name, at) => {
    const [table] = (await tablesOf(ungeared)) as [PrintedTable];
    const rows = table.rows.map((row, index) =>
      index === at ? { ...row, [name]: String(Number.parseInt(row[name] ?? "", 10) + 2) } : row,
    );
    expect(wrongByHoles({ ...table, rows }, ungeared)).not.toEqual([]);
  });

  it.each(["ratio-60-table-15-49", "ratio-72-table-15-49", "ratio-90-table-15-49"])(
    "%s: by the dial, which comes nearer than any hole",
    async (id) => {
      const tables = await tablesOf(ready(id));
      expect(tables.length).toBeGreaterThan(1);
      expect(tables.flatMap((table) => wrongPositions(table, ready(id)))).toEqual([]);
    },
  );
});
