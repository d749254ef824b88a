import { describe, expect, it } from "vitest";
import { repairBookOf } from "../../booklet/content/repair-sheet.ts";
import { paperNames } from "../../booklet/index.ts";
import { paperNamed, wallPaperNamed } from "../../booklet/layout/papers.ts";
import { type Head, readyHeads, repairOnHead, spurGear, type UnprovedSetting, wormRatioOf } from "../../src/index.ts";
import { add, holes, plateTurns, type Turns, times, turnsOf, turnsText } from "../support/bench.ts";
import { eachWithEach, everyOf, farthest } from "../support/sweep.ts";
import { followed, geared, jobs, ungeared } from "./followed-job.ts";
import { dialThird, halfTurn, secondHand } from "./heads.ts";
import { printedRows } from "./printed-rows.ts";
import { edition, linesIn, pagesOn, piecesIn, wallBook, wholeBook } from "./set-pages.ts";

/** The pin over the plate in one move. */
function pinOf({ turns, spaces, circle }: UnprovedSetting): Turns {
  return holes(turns, spaces, circle ?? 1);
}

/** What a rule says comes to so many turns for so much work. */
type Claim = (setting: UnprovedSetting, worm: Turns, work: Turns) => readonly [said: Turns, is: Turns];

const product = (a: Turns, b: Turns): Turns => ({ n: a.n * b.n, d: a.d * b.d });

/** Every rule that a foot may have, and what it claims of a setting. */
const claims: readonly (readonly [RegExp, readonly UnprovedSetting["method"][], Claim])[] = [
  [
    /^(?:Crank|Handwheel) turns of (?:one division|the angle) = (\S+) (?:÷ count|× angle ÷ 360°)$/,
    ["simple", "dial"],
    (setting, worm, work) => [product(worm, times(1n, work)), pinOf(setting)],
  ],
  [
    /^(?:Crank|Handwheel) turns of a move = (\S+) × teeth a move (?:÷ count|× angle ÷ 360°)$/,
    ["simple", "dial"],
    (setting, worm, work) => [product(worm, times(BigInt(setting.teethPerMove), work)), pinOf(setting)],
  ],
  [/^Spaces of a move = holes ÷ (c)ount$/, ["direct"], (setting, _, work) => [work, pinOf(setting)]],
  [
    /^Pin ± plate turns = (\S+) for each round of the work$/,
    ["differential"],
    (setting, worm, work) => {
      // So much of a round is made in one move.
      const round = times(BigInt(setting.teethPerMove), work);
      return [product(worm, round), add(pinOf(setting), product(plateTurns(setting), round))];
    },
  ],
  [
    /^Crank ± both = (\S+) turns for each round of the work$/,
    ["compound"],
    (setting, worm, work) => {
      if (setting.method !== "compound") return [turnsOf("0"), turnsOf("1")];
      const { direction, spaces, circle } = setting.second;
      const both = times(direction === "with" ? 1n : -1n, holes(0, spaces, circle));
      return [product(worm, times(BigInt(setting.teethPerMove), work)), add(pinOf(setting), both)];
    },
  ],
];

/** What is near to a rule, not made by it. */
const trueTurns =
  /^True (?:crank|handwheel) turns of (?:a move|one division|the angle) = (\S+) (?:× teeth a move )?(?:÷ count|× angle ÷ 360°)$/;

/** The rule at the foot of a page, before its edition. */
function ruleOn(lines: readonly string[]): string {
  const foot = lines.find((line) => /\|(?:Turns & Holes )?\d+\.\d+\.\d+ · [0-9a-f]{12}\|page \d+ of \d+$/.test(line)) ?? "";
  return foot.split("|")[0] ?? "";
}

/** What is wrong with a rule over settings, each for so much of the work. */
function wrongRule(rule: string, head: Head, made: readonly { setting: UnprovedSetting; work: Turns }[]): readonly string[] {
  const worm = turnsOf(wormRatioOf(head));
  const [form, methods, claim] = claims.find(([each]) => each.test(rule)) ?? [];
  const named = (form ?? trueTurns).exec(rule)?.[1];
  if (named === undefined || (named !== "c" && named !== head.wormRatio)) return [`"${rule}" is no rule of this head`];
  return made.flatMap(({ setting, work }) => {
    if (!methods?.includes(setting.method) || claim === undefined) return [`"${rule}" over ${setting.method}`];
    const [said, is] = claim(setting, worm, work).map((turns) => turnsText(times(1n, turns)));
    return said === is ? [] : [`"${rule}" says ${said}, the row ${is}: ${JSON.stringify(setting)}`];
  });
}

const all = { from: 2, to: farthest };
const heads = [...readyHeads, secondHand, halfTurn, dialThird];

describe("the rule at the foot of a page", () => {
  it.each(everyOf(4, heads).map((head) => [head.id, head] as const))(
    "%s: is true of every row above it, in the book and on the wall",
    (_, head) => {
      for (const pages of [pagesOn(paperNamed("a4"), wholeBook(head, all)), pagesOn(wallPaperNamed("a3"), wallBook(head, all))]) {
        for (const page of pages) {
          const rows = printedRows([piecesIn(page)], wormRatioOf(head), head);
          const made = rows.flatMap(({ setting, divisions }) => (setting ? [{ setting, work: turnsOf(`1/${divisions}`) }] : []));
          expect(wrongRule(ruleOn(linesIn(page)), head, made)).toEqual([]);
        }
      }
    },
  );

  it.each(eachWithEach(paperNames, [...readyHeads, secondHand]))(
    "leaves room for edition and number of the page: %s",
    (_, paper, head) => {
      for (const page of pagesOn(paperNamed(paper), wholeBook(head, { from: 2, to: 60 }))) {
        expect(ruleOn(linesIn(page)), linesIn(page).slice(-2).join("\n")).not.toBe("");
      }
    },
  );

  it.each(everyOf(4, jobs))("is true on a job sheet: %s", async (_, head, options) => {
    const { way, bench, sheet } = await followed(head, options);
    for (const page of sheet.pages) {
      const isExact = !page[0]?.includes("NOT EXACT");
      const made = way.by === "moves" && isExact ? [{ setting: way.setting, work: bench.step }] : [];
      expect(wrongRule(ruleOn(page), head, made)).toEqual([]);
      if (!isExact) expect(ruleOn(page)).toMatch(/^(?:True |.* for each round of the work$)/);
    }
  });

  it.each([
    ["with gears", geared, /^Pin ± plate turns = 40 for each round/],
    ["by two moves, nearly", ungeared, /^Crank ± both = 40 turns for each round/],
  ] as const)("is that of the way of a repair: %s", (_, head, rule) => {
    const gear = spurGear({ teeth: 127, module: 1 });
    const sheet = { job: repairOnHead(head, gear, { damaged: [3] }), head, inches: false, sawGiven: false };
    const pages = pagesOn(paperNamed("a4"), repairBookOf(sheet, edition));
    for (const page of pages) expect(ruleOn(linesIn(page))).toMatch(rule);
  });
});
