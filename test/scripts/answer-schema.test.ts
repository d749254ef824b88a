import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { schemaOf } from "../../scripts/answer-schema/schema.ts";
import { readyHeads } from "../../src/index.ts";
import { runHere } from "../support/command.ts";
import { runs } from "../support/sweep.ts";

const schema = JSON.parse(readFileSync("booklet/answer.schema.json", "utf8"));
const ajv = new Ajv2020({ strict: false, allErrors: false });
ajv.addSchema(schema, "answer");

/** What the command prints with `--json`. */
async function printed(words: readonly string[]): Promise<unknown> {
  return JSON.parse((await runHere([...words, "--json"])).stdout);
}

async function expectIs(name: string, words: readonly string[]): Promise<void> {
  const is = ajv.getSchema(`answer#/$defs/${name}`) ?? expect.fail(`there is no ${name} in the schema`);
  const data = await printed(words);
  expect(is(data) || is.errors, words.join(" ")).toBe(true);
}

describe("what is printed with --json is by its schema", () => {
  it("the schema is what the types say", () => {
    expect(schemaOf("scripts/answer-schema/printed.ts")).toEqual(schema);
  });

  it.each([
    ["Refused", ["abc"]],
    ["Refused", ["12", "--head", "/"]],
    ["LookedUp", ["127", "--all", "--near"]],
    ["LookedUp", ["2°54'"]],
    ["LookedUp", ["86", "--teeth", "3,4"]],
    ["LookedUp", ["97", "--after", "90", "--head", "ratio-90-dial"]],
    ["LookedUp", ["86", "--ring", "46.5"]],
    ["LookedUp", ["12", "--coordinates", "--radius", "40"]],
    ["LookedUp", ["97", "--radius", "50", "--budget", "--run-out", "0.04"]],
    ["LookedUp", ["97", "--radius", "50", "--budget", "--teeth", "3,4", "--by", "dial", "--head", "ratio-90-dial"]],
    ["Tabled", ["table", "2-60", "--head", "ratio-40-plates-15-49-ungeared"]],
    ["Spaced", ["spacing", "58,62,60"]],
    ["Spaced", ["spacing", "--propose", "6"]],
    ["Gives", ["gives", "0 + 22/33"]],
    ["Gives", ["gives", "0 + 5/15", "--gears", "56/24", "--plate", "with"]],
    ["ByEye", ["2.9° ± 0.05°"]],
    ["Heads", ["heads"]],
    ["Ratioed", ["ratio", "--turns", "10", "--turned", "90°", "--within", "5°"]],
    ["IdlersTold", ["ratio", "--pairs", "2", "--idlers", "1", "--plate", "with"]],
    ["Drilled", ["plate", "97", "--diameter", "120", "--drill", "3", "--within", "0.02"]],
    ["Drilled", ["plate", "97", "--diameter", "120", "--head", "ratio-90-dial", "--serves", "81/2"]],
    ["Drilled", ["plate", "12", "--diameter", "4in", "--by", "coordinates"]],
    ["PlateChecked", ["plate", "97", "--chords", "3.89 over 1, 119.98 over 48"]],
    ["PlateFound", ["plate", "--chords", "60.2 over 10", "--diameter", "150"]],
    ["KitTold", ["kit", "50-70", "--head", "ratio-40-plates-15-49-ungeared", "--want", "61,127"]],
    ["KitTold", ["kit", "2-40"]],
    ["FlatsTold", ["flats", "6", "--across", "17"]],
    ["FlatsTold", ["flats", "7", "--blank", "40", "--head", "ratio-90-dial"]],
    ["BoltCircle", ["bolt-circle", "5", "--diameter", "80", "--centre", "60,60"]],
    ["Scaled", ["graduate", "100"]],
    ["Scaled", ["graduate", "360", "--vernier", "12", "--over", "23", "--two-sided", "--head", "ratio-90-dial"]],
    ["Scaled", ["graduate", "--space", "1/40in", "--vernier", "25", "--lead", "1/4in", "--geared", "1"]],
    ["Scaled", ["graduate", "--space", "1", "--spaces", "20", "--lead", "5", "--marks", "100"]],
    ["Measured", ["gear", "86", "--module", "2"]],
    ["Measured", ["gear", "9", "--dp", "12", "--pins", "4", "--thinning", "0.1", "--shift", "0.3"]],
    ["Identified", ["gear", "43", "--outside", "112.5", "--depth", "5.6", "--mate", "20", "--centres", "78.75"]],
    ["Identified", ["gear", "43", "--outside", "113.1", "--span", "33.2 over 5, 40.6 over 6"]],
    ["Identified", ["gear", "86", "--mate", "43", "--centres", "129", "--span", "58.4 over 10, 64.3 over 11"]],
    ["Identified", ["gear", "--chord", "80.39 over 8", "--height", "12.71"]],
    ["ByMarks", ["gear", "--mate", "43", "--turns", "43"]],
    ["Repaired", ["repair", "86", "--module", "2", "--damaged", "31-33"]],
    ["Repaired", ["repair", "97", "--module", "2", "--damaged", "3", "--head", "ratio-40-plates-15-49-ungeared"]],
    [
      "Repaired",
      ["repair", "53", "--dp", "12", "--damaged", "1,30", "--head", "ratio-90-dial", "--saw", "1.5", "--backlash", "0.1"],
    ],
    ["Repaired", ["repair", "7", "--module", "3", "--damaged", "1", "--head", "ratio-72-table-15-49"]],
  ])("%s: %j", expectIs);

  it("whatever is asked of whichever head", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...readyHeads),
        fc.oneof(fc.integer({ min: 2, max: 500 }), fc.integer({ min: 2, max: 10_000_000 })),
        fc.constantFrom<readonly string[]>([], ["--near", "--all"], ["--teeth", "1,2"], ["--after", "1", "--by", "ring"]),
        async (head, count, more) => {
          const words = [String(count), "--head", head.id, ...more];
          const data = await printed(words);
          // A way that the head has not is refused.
          await expectIs(typeof data === "object" && data !== null && "error" in data ? "Refused" : "LookedUp", words);
        },
      ),
      runs(60),
    );
  });

  it("and nothing else is", () => {
    const is = ajv.compile({ $ref: "answer#" });
    for (const wrong of [
      {},
      [],
      null,
      { exact: true },
      { heads: [{ id: 1 }] },
      { error: { status: 9, message: "", faults: [] } },
    ])
      expect(is(wrong)).toBe(false);
  });
});
