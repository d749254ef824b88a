import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Head, indexTable, type Place, type PlanOptions, planJob } from "../../src/index.ts";
import { coordinateColumns, csvOf, markdownOf, positionColumns, tableColumns } from "../../src/words/index.ts";
import { heads, small } from "../support/arbitraries.ts";
import { backwards69, cramped, ungeared } from "../support/known-jobs.ts";
import { ready, threePlates } from "../support/ready.ts";
import { runs } from "../support/sweep.ts";
import { planOf } from "../support/told-jobs.ts";

/** Reads CSV by RFC 4180, apart from the code that writes it. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  const cell = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/y;
  for (let at = 0; at < text.length; at = cell.lastIndex) {
    cell.lastIndex = at;
    const [, inQuotes, plain = "", end] = cell.exec(text) ?? expect.fail(`no cell at ${text.slice(at, at + 20)}`);
    row.push(inQuotes?.replaceAll('""', '"') ?? plain);
    if (end === ",") continue;
    rows.push(row);
    row = [];
  }
  return rows;
}

const columns = fc.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 0, max: 5 })).chain(([wide, high]) =>
  fc.array(
    fc.record({
      head: fc.string({ minLength: 1 }),
      cells: fc.array(fc.string({ unit: "binary" }), { minLength: high, maxLength: high }),
    }),
    { minLength: wide, maxLength: wide },
  ),
);

describe("CSV", () => {
  it("is read back as it was, but for what a spreadsheet would work out", () => {
    fc.assert(
      fc.property(columns, (table) => {
        const shown = (text: string) => (/^[=+\-@\t\r]/.test(text) && !/^-?\d+(?:\.\d+)?$/.test(text) ? `'${text}` : text);
        const [first] = table;
        const rows = [
          table.map(({ head }) => head),
          ...(first?.cells ?? []).map((_, at) => table.map(({ cells }) => cells[at] ?? "")),
        ];
        expect(readCsv(csvOf(table))).toEqual(rows.map((row) => row.map(shown)));
      }),
    );
  });

  it.each(["=1+1", "+1+1", "-1+1", "@SUM(A1)", "\t=1"])("%j is no formula in it", (cell) => {
    expect(csvOf([{ head: "name", cells: [cell] }])).toBe(`name\r\n'${cell}\r\n`);
  });

  it("leaves a number below 0 a number", () => {
    expect(csvOf([{ head: "off", cells: ["-4.5"] }])).toBe("off\r\n-4.5\r\n");
  });
});

describe("Markdown", () => {
  it("has as many cells in every line, whatever stands in them", () => {
    fc.assert(
      fc.property(columns, (table) => {
        const lines = markdownOf(table).trimEnd().split("\n");
        expect(lines.length).toBe(2 + (table[0]?.cells.length ?? 0));
        for (const line of lines) expect(line.replace(/\\./g, "").split("|").length).toBe(table.length + 2);
      }),
    );
  });

  it("stands a column to the left in which one cell is no number", () => {
    expect(markdownOf([{ head: "circle", cells: ["4", "any", ""] }]).split("\n")[1]).toBe("| --- |");
    expect(markdownOf([{ head: "circle", cells: ["4", ""] }]).split("\n")[1]).toBe("| ---: |");
  });

  it("stands numbers to the right, and takes nothing in a name for a mark", () => {
    expect(
      markdownOf([
        { head: "turns", cells: ["4", "-1.5"] },
        { head: "plate", cells: ["a|b", "<i>*x*"] },
      ]),
    ).toBe("| turns | plate |\n| ---: | --- |\n| 4 | a\\|b |\n| -1.5 | \\<i\\>\\*x\\* |\n");
  });
});

function placesOf(head: Head, divisions: number, options: PlanOptions) {
  const plan = planJob(head, { divisions }, options);
  if (!plan.planned) return expect.fail(`${divisions} cannot be planned`);
  return plan.places;
}

describe("the columns of a table", () => {
  it("say in one value a cell what its settings say", () => {
    fc.assert(
      fc.property(heads(small), fc.integer({ min: 2, max: 200 }), (head, from) => {
        const rows = indexTable(head, { from, to: from + 8 });
        const [heads, ...lines] = readCsv(csvOf(tableColumns(rows)));
        const read = lines.map((line) => Object.fromEntries(heads?.map((name, at) => [name, line[at]]) ?? []));
        for (const [at, { divisions, setting }] of rows.entries()) {
          const row = read[at] ?? {};
          const number = (name: string) => (row[name] ? Number(row[name]) : undefined);
          expect([number("divisions"), row.method ?? ""]).toEqual([divisions, setting?.method ?? ""]);
          if (setting === null) continue;
          expect([number("turns"), number("spaces"), number("circle")]).toEqual([
            setting.turns,
            setting.spaces,
            setting.circle ?? undefined,
          ]);
          expect(number("teeth per move")).toBe(setting.teethPerMove);
          if (setting.method === "compound")
            expect([number("second spaces"), number("second circle"), row["second part"]]).toEqual([
              setting.second.spaces,
              setting.second.circle,
              setting.second.direction,
            ]);
          if (setting.method === "differential")
            expect([row.drivers, row.driven, row["plate turns"]]).toEqual([
              setting.gears.drivers.join(" × "),
              setting.gears.driven.join(" × "),
              setting.gears.direction,
            ]);
        }
      }),
      runs(40),
    );
  });

  it("say yes where a train may foul, and where not all was tried", () => {
    const rows = indexTable(cramped, { from: 28, to: 29, methods: ["differential"], teethPerMove: 1 });
    const cellsOf = (wanted: string, of = rows) => tableColumns(of).find(({ head }) => head === wanted)?.cells;
    expect([cellsOf("may foul"), cellsOf("not all tried")]).toEqual([["yes", ""], undefined]);
    expect(cellsOf("may foul", indexTable(threePlates, { from: 127, to: 127 }))).toBeUndefined();
    const cut = rows.map((row, index) => ({ ...row, complete: index === 0 }));
    expect(cellsOf("not all tried", cut)).toEqual(["", "yes"]);
  });

  it("of coordinates are in the unit named, to six decimals", () => {
    const places = [
      { tooth: 1, x: 25.4, y: -50.8 },
      { tooth: 2, x: 1 / 3, y: -1e-9 },
    ];
    expect(coordinateColumns(places, "mm")).toEqual([
      { head: "tooth", cells: ["1", "2"] },
      { head: "x (mm)", cells: ["25.4", "0.333333"] },
      { head: "y (mm)", cells: ["-50.8", "0"] },
    ]);
    expect(coordinateColumns(places, "in")).toEqual([
      { head: "tooth", cells: ["1", "2"] },
      { head: "x (in)", cells: ["1", "0.013123"] },
      { head: "y (in)", cells: ["-2", "0"] },
    ]);
  });

  it("of places by nearest holes and by two pins say where the pins stand", () => {
    const cellsOf = (places: readonly Place[]) =>
      Object.fromEntries(positionColumns(places).map(({ head, cells }) => [head, cells]));
    // 40/97 of a turn is 20.2 of 49 spaces.
    const nearest = planOf(ungeared, 97, { by: "nearest-hole", teeth: [1, 2] });
    const { circle } = nearest.way.setting;
    const hole = String(Math.round((40 * (circle ?? 0)) / 97));
    expect(cellsOf(nearest.places)).toMatchObject({ turns: ["0", "0"], hole: ["0", hole], "go on spaces": ["0", hole] });
    // 69 by 14 of 21 less 2 of 23.
    expect(cellsOf(planOf(threePlates, 69, { setting: backwards69, teeth: [1, 2] }).places)).toMatchObject({
      hole: ["0", "14"],
      "rear hole": ["0", "21"],
      "second turns": ["0", "0"],
      "second spaces": ["0", "2"],
      "second part": ["against", "against"],
    });
    expect(Object.keys(cellsOf(planOf(ungeared, 97, { by: "ring", teeth: [1, 2] }).places))).toEqual([
      "tooth",
      "ring mark",
      "ring line",
      "off by seconds",
      "degrees",
    ]);
  });

  it("of places have the angle in degrees, the error in seconds, and below 0 where it goes back", () => {
    const places = placesOf(ready("ratio-90-dial"), 97, { teeth: [1, 12] });
    const cells = Object.fromEntries(positionColumns(places).map(({ head, cells }) => [head, cells]));
    expect(cells.degrees).toEqual(["0", String(Math.round((11 * 360e10) / 97) / 1e10)]);
    expect(cells["off by seconds"]?.map(Number)).toEqual(places.map((place) => Math.round(place.errorArcSeconds * 1e4) / 1e4));
    // By hand: 36 are 1 turn + 2 spaces of 18 a move; two moves on to tooth 3, and one back to 2.
    const back = placesOf(threePlates, 36, { teeth: [1, 3, 2], direction: "nearer" });
    const moves = Object.fromEntries(positionColumns(back).map(({ head, cells }) => [head, cells]));
    expect([moves["go on turns"], moves["go on spaces"]]).toEqual([
      ["0", "2", "-1"],
      ["0", "4", "-2"],
    ]);
  });

  it("of nothing are heads alone, and of something those that say something", () => {
    expect(csvOf(tableColumns([])).split("\r\n").length).toBe(2);
    expect(tableColumns([]).map(({ head }) => head)).toContain("may foul");
    const rows = indexTable(threePlates, { from: 8, to: 8 });
    expect(tableColumns(rows).map(({ head, cells }) => `${head} ${cells}`)).toEqual([
      "divisions 8",
      "method simple",
      "turns 5",
      "spaces 0",
      "teeth per move 1",
    ]);
  });
});
