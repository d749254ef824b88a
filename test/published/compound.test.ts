import { describe, expect, it } from "vitest";
import { exactSettings, fromExact, type Head, indexAngle, indexDivisions, ratio, spindleTurnsPerMove } from "../../src/index.ts";
import { rational, toRevolutions } from "../../src/number/ratio.ts";
import { threePlates, twoFaces } from "../support/ready.ts";
import { settings, stepsFor69 } from "./compound.ts";
import { type PartOfTurn, partsOfTurn, source } from "./handbook-parts-of-turn.ts";

describe("counts by two circles of one face, 40:1", () => {
  const named = settings.map((row) => {
    const sign = row.direction === "with" ? "+" : "−";
    return [`40/${row.divisions} = ${row.spaces}/${row.circle} ${sign} ${row.second.spaces}/${row.second.circle}`, row] as const;
  });

  it.each(named)("%s", (_, { divisions, spaces, circle, direction, second }) => {
    const found = indexDivisions(threePlates, divisions, { methods: ["compound"], all: true }).settings;
    expect(found).toContainEqual(
      expect.objectContaining({ method: "compound", turns: 0, spaces, circle, second: { ...second, direction } }),
    );
    const turned = spindleTurnsPerMove({ wormRatio: ratio("40"), turns: 0, spaces, circle, second: { ...second, direction } });
    expect(turned).toBe(`1/${divisions}`);
  });

  it("69: 44/23 − 44/33 is 21/23 − 11/33 is 40/69", () => {
    const [first = "", second = ""] = stepsFor69.unreduced;
    expect(toRevolutions(fromExact(first).sub(fromExact(second)))).toBe(stepsFor69.turns);
    expect(toRevolutions(rational(21, 23).sub(rational(11, 33)))).toBe(stepsFor69.turns);
  });
});

describe(`${source.title}, ${source.place}`, () => {
  const headOf = ({ column }: PartOfTurn): Head => (column === "A" ? threePlates : twoFaces);
  const turnsOf = ({ first, second }: PartOfTurn) => {
    const turns = rational(...first);
    if (!second) return turns;
    const [sign, ...move] = second;
    return sign === "+" ? turns.add(rational(...move)) : turns.sub(rational(...move));
  };
  const named = (rows: readonly PartOfTurn[]) => rows.map((row) => [equationOf(row), row] as const);
  const oneTerm = named(partsOfTurn.filter(({ second }) => second === undefined));
  const twoTerms = named(partsOfTurn.filter(({ second }) => second !== undefined));

  it("has rows of both kinds", () => {
    expect([oneTerm.length, twoTerms.length]).toEqual([24, 32]);
  });

  it.each(oneTerm)("%s, exact and printed to four places", (_, row) => {
    const error = turnsOf(row).sub(fromDecimal(row.part)).abs();
    expect(error.compare(rational(1, 20_000))).toBeLessThanOrEqual(0);
    const [spaces, circle] = row.first;
    const { settings: found } = indexAngle(headOf(row), toRevolutions(turnsOf(row).div(40)), { methods: ["simple"] });
    expect(found).toContainEqual(expect.objectContaining({ method: "simple", turns: 0, spaces, circle }));
  });

  it.each(twoTerms)("%s to 1.2″, on one face", (_, row) => {
    // 1.2″ to the tenth at the spindle of a 40:1 head, where a turn is 32,400″.
    const error = turnsOf(row).sub(fromDecimal(row.part)).abs();
    expect(error.mul(32_400).compare(rational(125, 100))).toBeLessThanOrEqual(0);
    const [spaces, circle] = row.first;
    const [sign, otherSpaces, otherCircle] = row.second ?? ["+", 0, 0];
    const second = { spaces: otherSpaces, circle: otherCircle, direction: sign === "+" ? "with" : "against" };
    const target = { angle: toRevolutions(turnsOf(row).div(40)) };
    const found = [...exactSettings(headOf(row), target, { methods: ["simple", "compound"] })];
    expect(found.map(({ method }) => method)).not.toContain("simple");
    expect(found).toContainEqual(expect.objectContaining({ method: "compound", turns: 0, spaces, circle, second }));
  });
});

function equationOf({ part, column, first, second }: PartOfTurn): string {
  const other = second ? ` ${second[0]} ${second[1]}/${second[2]}` : "";
  return `${column}: ${part} is ${first[0]}/${first[1]}${other}`;
}

function fromDecimal(text: string) {
  const [whole = "", places = ""] = text.split(".");
  return rational(BigInt(whole + places), 10n ** BigInt(places.length));
}
