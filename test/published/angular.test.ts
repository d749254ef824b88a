import { describe, expect, it } from "vitest";
import { defineHead, indexAngle, indexDivisions, parseAngle, prove, ratio, spindleTurnsPerMove } from "../../src/index.ts";
import { parseRational } from "../../src/number/parse-rational.ts";
import { toRevolutions } from "../../src/number/ratio.ts";
import { threePlates } from "../support/ready.ts";
import { directHole, eightFifty, angles as others } from "./angles.ts";
import { quarterDegree, angles as treatise } from "./practical-treatise.ts";

const revolutions = (degrees: string) => toRevolutions(parseRational(degrees, "degrees").div(360));
const angles = [...treatise, ...others];

describe("angles of publications, 40:1", () => {
  const circles = [...new Set(angles.flatMap(({ circle }) => circle ?? []))];
  const head = defineHead({ wormRatio: 40, plates: [{ name: "of the examples", circles }] });

  it.each(angles)("$degrees° = $turns + $spaces/$circle, $source.title", ({ degrees, turns, spaces, circle }) => {
    const { settings } = indexAngle(head, revolutions(degrees));
    expect(settings).toContainEqual(expect.objectContaining({ method: "simple", turns, spaces, circle }));
    // The other way: the move printed, made on the mechanism, gives the angle printed.
    const turned = spindleTurnsPerMove({ wormRatio: ratio(40), turns, spaces, circle });
    expect(turned).toBe(revolutions(degrees));
  });

  it("8° 50′ is 53/54 of a turn", () => {
    const { settings } = indexAngle(head, parseAngle(eightFifty.angle));
    expect(settings).toEqual([expect.objectContaining({ turns: 0, spaces: 53, circle: eightFifty.denominator })]);
  });

  it("one hole of a direct plate of 24 is 15°", () => {
    const { holes, degrees } = directHole;
    const direct = defineHead({ wormRatio: 40, directPlates: [{ name: "nose", holes }] });
    expect(indexAngle(direct, revolutions(degrees)).settings).toEqual([
      expect.objectContaining({ method: "direct", spaces: 1, circle: holes }),
    ]);
  });
});

describe("Practical Treatise, a quarter of a degree", () => {
  const angle = revolutions(quarterDegree.degrees);

  it("p. 54: cannot be had by simple indexing with the three plates", () => {
    const answer = indexAngle(threePlates, angle, { methods: ["simple"] });
    expect(answer.exact).toBe(false);
    expect(answer.impossible?.reasons).toEqual([
      { method: "simple", code: "no-multiple", of: "circle", multiplesOf: [36], owned: [] },
    ]);
  });

  it("p. 57: can be had by gearing, as an angle and as 1440 divisions alike", () => {
    const [asAngle] = indexAngle(threePlates, angle).settings;
    const [asCount] = indexDivisions(threePlates, 1440).settings;
    expect(asAngle?.method).toBe("differential");
    expect(asAngle).toEqual(asCount);
    expect(asAngle && prove(asAngle, { walkOn: threePlates }).closes).toBe(true);
  });
});
