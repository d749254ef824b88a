import { mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { run, runProcess } from "../support/command.ts";
import { everyOf } from "../support/sweep.ts";

const plates = '"plates":[{"name":"1","circles":[15,16]}]';
const files = {
  "no-plates.json": '{"wormRatio":40}',
  "empty-plates.json": '{"wormRatio":40,"plates":[]}',
  "circle-twice.json": '{"wormRatio":40,"plates":[{"name":"1","circles":[15,15]}]}',
  "circle-zero.json": '{"wormRatio":40,"plates":[{"name":"1","circles":[0]}]}',
  "ratio-zero.json": `{"wormRatio":0,${plates}}`,
  "ratio-negative.json": `{"wormRatio":-40,${plates}}`,
  "ratio-over-zero.json": `{"wormRatio":"1/0",${plates}}`,
  "ratio-nan.json": `{"wormRatio":NaN,${plates}}`,
  "ratio-nan-text.json": `{"wormRatio":"NaN",${plates}}`,
  "ratio-endless.json": `{"wormRatio":1e999,${plates}}`,
  "broken.json": '{"wormRatio":40,',
  "empty.json": "",
  "text.json": "a head",
  "null.json": "null",
  "list.json": "[40]",
  "brackets.json": "[".repeat(3_000_000),
  "fewer-brackets.json": "[".repeat(900_000),
  "good.json": `{"wormRatio":40,${plates}}`,
} as const;

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "bad-input-"));
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
  mkdirSync(join(folder, "folder.json"));
  symlinkSync("circle.json", join(folder, "circle.json"));
});
afterAll(() => {
  // Nothing that was refused has written anything.
  const left = readdirSync(folder).sort();
  rmSync(folder, { recursive: true });
  expect(left).toEqual([...Object.keys(files), "folder.json", "circle.json"].sort());
});

/** One sentence on stderr, nothing on stdout, exit 2; 3 where it is the file that cannot be read. */
async function refused(words: readonly string[], node: readonly string[] = [], status = 2): Promise<string> {
  const { code, stdout, stderr } = await (node.length > 0 ? runProcess(words, folder, node) : run(words, folder));
  expect([code, stdout]).toEqual([status, ""]);
  expect(stderr).toMatch(/^turns-and-holes: [^\n]+\n$/);
  expect(stderr.length).toBeLessThan(500);
  expect(stderr).not.toMatch(/undefined|\[object|node:|\bat [\w.]+ \(/);
  return stderr.slice("turns-and-holes: ".length, -1);
}

describe.concurrent("a question that cannot be read", () => {
  it.each([
    ["nothing", [], "nothing was asked; give a count such as 127"],
    ["an empty string", [""], '"" is neither a count nor an angle'],
    ["a space", [" "], "is neither a count nor an angle"],
    ["0", ["0"], "0 is not a count of divisions; give a whole number from 1 to 10,000,000"],
    ["a count below 0", ["-5"], '"-5" is below 0'],
    [
      "a fraction",
      ["1.5"],
      "1.5 is not a whole number of divisions; give one such as 127, or write an angle with its unit, such as 1.5°",
    ],
    ["a count with a comma", ["1,000"], "1,000 is not a whole number of divisions"],
    ["one over the greatest", ["10000001"], "is not a count of divisions; give a whole number from 1 to 10,000,000"],
    ["thirty digits", ["9".repeat(30)], "is too great a count; give a whole number from 1 to 10,000,000"],
    ["a hundred thousand digits", ["9".repeat(100_000)], "is too great a count"],
    ["a word", ["abc"], '"abc" is neither a count nor an angle'],
    ["NaN", ["NaN"], '"NaN" is neither a count nor an angle'],
    ["Infinity", ["Infinity"], '"Infinity" is neither a count nor an angle'],
    ["1/0", ["1/0"], "1/0 is not a whole number of divisions"],
    ["1/0 of a turn", ["1/0 rev"], '"1/0" divides by zero'],
    ["digits of another script", ["٣"], "is neither a count nor an angle"],
    ["a number of another notation", ["1e5"], '"1e5" is not an angle'],
    ["a line break", ["a\nb"], "is neither a count nor an angle"],
    ["an angle of 0", ["0°"], "is no angle to move by; give one above 0"],
    ["an angle of over 1,000 turns", ["2000 rev"], "is over 1,000 revolutions"],
    ["two counts", ["12", "13"], "one count or angle at a time, but 2 were given"],
    ["an uncertainty that is none", ["2.9° ±"], "after ±"],
    ["an uncertainty as large as the angle", ["2.9° ± 2.9°"], "it is as large as the angle itself"],
    ["an angle over no teeth", ["2.9° ± 0.05° over 0"], "over: 0 is not a count of divisions"],
    ["two uncertainties", ["2.9° ± 0.05° ± 0.05°"], "has more than one ±"],
  ] as const)("%s", async (_, words, told) => {
    expect(await refused(words)).toContain(told);
  });
});

describe.concurrent("a head that cannot be read", () => {
  it.each([
    ["no-plates.json", "no-plates.json, plates: there are none, nor a direct plate or a dial"],
    ["empty-plates.json", "empty-plates.json, plates: there are none"],
    ["circle-twice.json", "circle-twice.json, plates[0].circles: the circle 15 is there twice; give each once"],
    ["circle-zero.json", "circle-zero.json, plates[0].circles[0]: 0 is not a whole number from 2 to 10,000"],
    ["ratio-zero.json", "ratio-zero.json, wormRatio: 0 is not above 0"],
    ["ratio-negative.json", "ratio-negative.json, wormRatio: -40 is not above 0"],
    ["ratio-over-zero.json", 'ratio-over-zero.json, wormRatio: "1/0" divides by zero'],
    ["ratio-nan.json", "ratio-nan.json: is not JSON"],
    ["ratio-nan-text.json", 'ratio-nan-text.json, wormRatio: "NaN" is not an exact number'],
    ["ratio-endless.json", "ratio-endless.json, wormRatio: Infinity is not an exact number"],
    ["broken.json", "broken.json: is not JSON"],
    ["empty.json", "empty.json: is not JSON"],
    ["text.json", "text.json: is not JSON"],
    ["null.json", "null.json: null is not an object"],
    ["list.json", "list.json: a list is not an object"],
    ["brackets.json", "brackets.json: has 3,000,000 bytes, too many for a head file"],
    ["fewer-brackets.json", "fewer-brackets.json: is not JSON"],
    ["missing.json", "missing.json: there is no such ready head and no such file; the ready heads are ratio-40-plates-15-49"],
    ["", "head: no name or file was given"],
    ["on two\nlines.json", "on two lines.json: there is no such ready head and no such file"],
  ])("%s", async (head, told) => {
    expect(await refused(["12", "--head", head])).toContain(told);
  });

  it.each([
    ["folder.json", "folder.json: is a directory; name the JSON file in it"],
    ["circle.json", "circle.json: cannot be read: its links lead in a circle"],
    ["ü".repeat(250), "cannot be read: the name is too long"],
  ])("%s cannot be read", async (head, told) => {
    expect(await refused(["12", "--head", head], [], 3)).toContain(told);
  });
});

describe.concurrent("an option that cannot be read", () => {
  it.each([
    ["one that is not there", ["127", "--bogus"], "Unknown option '--bogus'; --help lists the options"],
    ["one without its value", ["127", "--teeth"], "--help lists the options"],
    ["a tooth of 0", ["127", "--teeth", "0"], "0 is not a tooth of 127; give 1 to 127"],
    ["a tooth too many", ["127", "--teeth", "1,128"], "128 is not a tooth of 127; give 1 to 127"],
    [
      "a tooth of a count that is impossible",
      ["787", "--teeth", "788", "--head", "good.json"],
      "788 is not a tooth of 787; give 1 to 787",
    ],
    ["no tooth", ["127", "--teeth", ""], "--teeth"],
    ["half a tooth", ["127", "--after", "1.5"], '--after: "1.5" is not a whole number'],
    ["a tooth after the last", ["127", "--after", "128"], "128 is not a tooth of 127"],
    [
      "a tooth after the last of what is impossible",
      ["787", "--after", "788", "--head", "good.json"],
      "788 is not a tooth of 787; give 1 to 787",
    ],
    ["a ring reading that is none", ["127", "--ring", "abc"], "--ring"],
    [
      "a hole that is not there",
      ["127", "--start-hole", "15", "--teeth", "1"],
      "--start-hole: 15 is not a hole of the circle; give 0 to 14",
    ],
    ["a start that is no angle", ["127", "--start-angle", "x", "--teeth", "1"], "--start-angle"],
    ["a method that is not there", ["127", "--method", "magic"], '--method: there is no method "magic"'],
    ["no teeth per move", ["127", "--teeth-per-move", "0"], "--teeth-per-move: 0 is not a number of teeth per move"],
    ["too many teeth per move", ["127", "--teeth-per-move", "1001"], "1001 is not a number of teeth per move"],
    ["a limit of 0", ["127", "--limit", "0"], "--limit: 0 is not a number of settings"],
    ["a plate that is not there", ["127", "--mounted", "9"], '--mounted: this head has no plate "9"; its plates are 1, 2, 3'],
    ["a radius of 0", ["127", "--near", "--radius", "0"], '--radius: "0" is not a length above 0'],
    ["coordinates without a radius", ["12", "--coordinates"], "--radius"],
    ["coordinates of an angle", ["2.9°", "--coordinates", "--radius", "40"], "--coordinates"],
    ["a value for a flag", ["127", "--json=1"], "--help lists the options"],
    ["no move", ["gives"], '"" is not a move'],
    ["a move of nothing", ["gives", "0 + 0/33"], "turns and spaces of 0 are no move"],
    ["a circle of 0", ["gives", "1/0"], "1 of 0 is not a move in whole holes"],
    ["a move that goes nowhere", ["gives", "5/15 - 7/21"], "this move brings the work back or not on at all"],
    [
      "gears that go no known way",
      ["gives", "5/15", "--gears", "56/24"],
      "--plate: say which way the gears of --gears turn the plate",
    ],
    ["gears of no teeth", ["gives", "5/15", "--gears", "0/24", "--plate", "with"], "--gears"],
    ["gears that jam", ["gives", "5/15", "--gears", "800/20", "--plate", "with"], "--gears: turn the plate as fast as the crank"],
  ] as const)("%s", async (_, words, told) => {
    expect(await refused(words)).toContain(told);
  });

  const tooMany = [
    ["more teeth than are listed at once", ["129600", "--teeth", "1-129600", "--head", "ratio-90-dial"]],
    ["ranges that overlap", ["97", "--teeth", Array.from({ length: 18_000 }, () => "1-97").join(",")]],
    ["ranges that are long besides", ["129600", "--teeth", Array.from({ length: 9000 }, () => "1-99999").join(",")]],
    ["the longest that can be written", ["97", "--teeth", "1-999999999"]],
  ] as const;
  it.each(everyOf(2, tooMany))("%s: one bound on the whole list, and no memory for what is over it", async (_, words) => {
    // In as little room as the command starts in: a list that was made before it is measured would not fit.
    expect(await refused(words, ["--max-old-space-size=24"])).toBe(
      "--teeth: names over 50,000 numbers, too many to list; give at most 50,000",
    );
  });

  it("as many teeth as are listed at once are listed, and all of more are refused", async () => {
    const { code, stdout } = await run(["129600", "--teeth", "1-50000", "--head", "ratio-90-dial", "--json"]);
    expect([code, JSON.parse(stdout).positions.length]).toEqual([0, 50_000]);
    expect(await refused(["129600", "--teeth", "all", "--head", "ratio-90-dial"])).toBe(
      "--teeth: 129,600 places are too many to list; give at most 50,000",
    );
    expect(await refused(["129600", "--after", "3", "--head", "ratio-90-dial"])).toContain(
      "--after: 129,597 places are too many",
    );
  });

  it("a good head with the same file is answered", async () => {
    expect((await run(["12", "--head", "good.json"], folder)).code).toBe(0);
  });
});
