import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { figures, keep, keptOf } from "../../scripts/mutation/kept.ts";
import { mutated } from "../../scripts/mutation/mutants.ts";
import { ownFolder } from "../support/own-folder.ts";

/** What a piece of code says when it runs with one mutant in it; 0 is none. */
function saidBy(code: string, active: number, given: object): readonly unknown[] {
  const said: unknown[] = [];
  const { text } = mutated("src/x.ts", code, 1);
  runInNewContext(text, { ...given, say: (what: unknown) => said.push(what), $m: (id: number) => id === active });
  return said;
}
const mutantsOf = (code: string) => mutated("src/x.ts", code, 1).mutants.map(({ what, at }) => `${what}: ${at}`);

describe("a source with its mutants in it", () => {
  it.each([
    "if (a) say(1); else say(2);",
    "if (a) say(1); else if (b) say(2); else say(3);",
    "for (let i = 0; i < 3; i += 1) if (a) say(i); else say(-i);",
    "while (list.length > 0) { if (a && b) say(list.pop()); else list.pop(); }",
    "say(a ? (b ? 1 : 2) : 3); say([3, 1, 2].sort().filter((x) => x > 1).some((x) => x === 3));",
    "const f = (x) => x * 2 - 1; say(Math.max(f(2), -f(3)));",
    "say([a && !b, 1 + 2 * 3, 'a' + 'b'].join());",
  ])("means the same as long as none is chosen: %s", (code) => {
    for (const [a, b] of [
      [true, true],
      [true, false],
      [false, true],
      [false, false],
    ]) {
      const said: unknown[] = [];
      runInNewContext(code, { a, b, list: [1, 2], say: (what: unknown) => said.push(what) });
      expect(saidBy(code, 0, { a, b, list: [1, 2] })).toEqual(said);
    }
  });

  it("changes what it says it does, and nothing else", () => {
    const code = "if (a) say(1); else say(2);";
    expect(mutantsOf(code)).toEqual([
      "→ true: a",
      "→ false: a",
      "left out: say(1);",
      "1 → one more: say(1)",
      "left out: say(2);",
      "2 → one more: say(2)",
    ]);
    const said = (active: number) => [true, false].map((a) => saidBy(code, active, { a }));
    expect([1, 2, 3, 4, 5, 6].map(said)).toEqual([
      [[1], [1]],
      [[2], [2]],
      [[], [2]],
      [[2], [2]],
      [[1], []],
      [[1], [3]],
    ]);
  });
});

describe("the figures", () => {
  const project = ownFolder("mutation");
  mkdirSync(join(project, "src"));
  writeFileSync(join(project, "src/x.ts"), "a < b;\n");
  const mutant = (id: number, by: string | null) => ({ id, file: "src/x.ts", line: 1, what: `change ${id}`, at: "a < b", by });
  keep(project, "src/x.ts", [mutant(1, "a test"), mutant(2, null), mutant(3, null), mutant(4, "another")]);

  it("name what no test found, and count apart what is explained", () => {
    const why = { why: "nobody can tell", mutants: ["src/x.ts: change 2: a < b", "src/x.ts: change 4: a < b"] };
    expect([...figures(project, ["src/x.ts"], [why])]).toEqual([
      "src/x.ts:1: change 3: a < b",
      "explained, but does not survive: src/x.ts: change 4: a < b",
      "src: 4 mutants, 2 found out: 50.0 %; 1 explained, 1 open",
    ]);
  });

  it("are forgotten when the source changes", () => {
    expect(keptOf(project, "src/x.ts")).toHaveLength(4);
    writeFileSync(join(project, "src/x.ts"), "a <= b;\n");
    expect(keptOf(project, "src/x.ts")).toBeNull();
  });
});
