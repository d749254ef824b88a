import { describe, expect, it } from "vitest";
import { said } from "../../scripts/command.ts";
import type { OptionName } from "../../scripts/look-up-options.ts";
import { InputError } from "../../src/index.ts";

/** Every option with a value that is not the one taken where it is left out. */
const given = {
  head: ["--head", "ratio-60-table-15-49"],
  mounted: ["--mounted", "2"],
  method: ["--method", "compound"],
  "teeth-per-move": ["--teeth-per-move", "2"],
  all: ["--all"],
  limit: ["--limit", "1"],
  near: ["--near"],
  radius: ["--radius", "3in"],
  budget: ["--budget"],
  "run-out": ["--run-out", "0.04"],
  "hole-error": ["--hole-error", "0.1"],
  "circle-diameter": ["--circle-diameter", "90"],
  "worm-error": ["--worm-error", "0°0'20\""],
  "read-within": ["--read-within", "0°1'"],
  proof: ["--proof"],
  teeth: ["--teeth", "3,2"],
  every: ["--every", "7"],
  after: ["--after", "2"],
  by: ["--by", "nearest-hole"],
  ring: ["--ring", "20"],
  "start-hole": ["--start-hole", "4"],
  "start-angle": ["--start-angle", "50"],
  minus: ["--minus"],
  nearer: ["--nearer"],
  coordinates: ["--coordinates"],
  clockwise: ["--clockwise"],
  tangents: ["--tangents"],
  gears: ["--gears", "56/24"],
  plate: ["--plate", "with"],
  propose: ["--propose", "6"],
  uneven: ["--uneven", "3°"],
  unpaired: ["--unpaired"],
  json: ["--json"],
  csv: ["--csv"],
  markdown: ["--markdown"],
  help: ["--help"],
  version: ["--version"],
} as const satisfies Record<OptionName, readonly string[]>;

/** Questions of every kind, chosen so that every option could change something. */
const questions: Readonly<Record<string, readonly string[]>> = {
  "a count": ["509"],
  "an angle": ["1/127 rev"],
  "an angle read by eye": ["2.9° ± 0.05°"],
  "a move": ["gives", "0 + 22/33"],
  "unequal spaces": ["spacing", "58,62,59,61,60,60"],
  "unequal spaces, proposed": ["spacing", "--propose", "8"],
  "a table": ["table", "508-510"],
  "the heads": ["heads"],
};

/** What may stand beside an option. */
const companions: readonly (readonly string[])[] = [
  [],
  ["--teeth", "2,5,2"],
  ["--teeth", "all"],
  ["--every", "200"],
  ["--after", "3"],
  ["--ring", "10"],
  ["--radius", "40"],
  ["--radius", "40", "--budget"],
  ["--radius", "40", "--budget", "--teeth", "2,5", "--by", "ring"],
  ["--json", "--radius", "40", "--budget"],
  ["--coordinates", "--radius", "40"],
  ["--gears", "24/56", "--plate", "against"],
  ["--json"],
  ["--json", "--teeth", "2,5,2"],
  ["--json", "--ring", "10"],
  ["--json", "--coordinates", "--radius", "40"],
  ["--csv"],
  ["--csv", "--teeth", "2,5,2"],
  ["--csv", "--coordinates", "--radius", "40"],
  ["--markdown", "--after", "3"],
];

/** What is printed, or what is refused. */
async function outcome(words: readonly string[]): Promise<{ readonly text: string | null; readonly refused: string }> {
  try {
    return { text: (await said(words)).text, refused: "" };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { text: null, refused: error.message };
  }
}

describe("an option changes what is printed, or is refused by its name", () => {
  it.each(Object.entries(questions))("%s", async (_, question) => {
    for (const beside of companions) {
      const without = await outcome([...question, ...beside]);
      if (without.text === null) continue;
      for (const [name, words] of Object.entries(given)) {
        if (beside.includes(words[0])) continue;
        const asked = [...question, ...beside, ...words];
        const { text, refused } = await outcome(asked);
        if (text === null) expect(refused, asked.join(" ")).toContain(`--${name}`);
        else expect(text, asked.join(" ")).not.toBe(without.text);
      }
    }
  });

  it("each can change something, beside what it goes with", async () => {
    // It stands in the place of the angles, without which nothing is asked.
    const changes = new Set<string>(["propose"]);
    for (const question of Object.values(questions)) {
      for (const beside of companions) {
        const without = await outcome([...question, ...beside]);
        if (without.text === null) continue;
        for (const [name, words] of Object.entries(given)) {
          if (changes.has(name) || beside.includes(words[0])) continue;
          const withPlate = name === "plate" || name === "gears" ? [...given.gears, ...given.plate] : words;
          const isOfHoles = name === "hole-error" || name === "circle-diameter";
          const more = isOfHoles ? [...given["hole-error"], ...given["circle-diameter"]] : withPlate;
          const { text } = await outcome([...question, ...beside, ...more]);
          if (text !== null && text !== without.text) changes.add(name);
        }
      }
    }
    expect([...changes].sort()).toEqual(Object.keys(given).sort());
  });

  it("none may be given twice", async () => {
    for (const [name, words] of Object.entries(given)) {
      expect((await outcome(["127", ...words, ...words])).refused, name).toBe(`--${name}: is given twice; give it once`);
    }
  });
});

describe("what an option is refused for", () => {
  it.each([
    [["127", "--gears", "24/40"], '--gears: goes with "gives" and has no effect on a count; leave it out'],
    [["86", "--after", "31", "--teeth", "40"], "--teeth: is given beside --after; give one of the two"],
    [["12", "--tangents"], "--tangents: has no effect without --coordinates; add it, or leave --tangents out"],
    [["97", "--minus"], "--minus: has no effect without --teeth, --every, --after or --ring; add it, or leave --minus out"],
    [["heads", "foo"], '"heads" lists all the ready heads; leave out "foo"'],
    [
      ["127", "--nearer", "--teeth", "all"],
      "--nearer: has no effect on all teeth in their order; name the teeth, or leave it out",
    ],
    [
      ["97", "--nearer", "--teeth", "3,2", "--head", "ratio-90-dial", "--by", "ring"],
      "--nearer: has no effect where each position is set by the ring; leave it out",
    ],
    [
      ["97", "--start-hole", "3", "--teeth", "2", "--head", "ratio-90-dial"],
      "--start-hole: has no effect on a way that goes by no circle of holes; leave it out",
    ],
    [
      ["127", "--near", "--radius", "50", "--json"],
      "--radius: has no effect on --json, whose errors are in arc-seconds; leave it out",
    ],
    [["127", "--csv"], "--csv: has no effect without --teeth, --every, --after or --coordinates; add it, or leave --csv out"],
    [["127", "--csv", "--teeth", "2", "--near"], "--near: has no effect on the table of --csv; leave it out"],
    [
      ["12", "--markdown", "--teeth", "2", "--coordinates", "--radius", "9"],
      "--coordinates: is a table of its own beside that of --teeth; ask for one of the two",
    ],
    [["table"], '"" is no range of counts; give one such as table 2-100'],
    [["table", "2-3-4"], '"2-3-4" is no range of counts; give one such as table 2-100'],
    [["table", "9-2"], "2 is below 9; give the smaller count first"],
    [["127", "--by", "moves"], "--by: has no effect without --teeth, --every or --after; add it, or leave --by out"],
    [
      ["127", "--teeth", "2", "--by", "eye"],
      '--by: there is no way "eye"; the ways are moves, nearest-hole, dial, ring, both-cranks, nearest-direct',
    ],
    [
      ["127", "--teeth", "2", "--by", "dial"],
      '--by: this head has no setting by "dial" that comes near; leave it out for the best there is',
    ],
  ])("%j", async (words, refusal) => {
    expect((await outcome(words)).refused).toBe(refusal);
  });
});
