import { describe, expect, it } from "vitest";
import { defineHead, type Head, type PlanOptions, revolutions } from "../../src/index.ts";
import { orderItems } from "../../src/words/index.ts";
import { oddDial } from "../support/known-jobs.ts";
import { ready, threePlates } from "../support/ready.ts";
import { secondHand } from "../support/settings.ts";
import { planOf } from "../support/told-jobs.ts";

describe("an order of its own", () => {
  const said = (head: Head, divisions: number, teeth: readonly number[], options: PlanOptions = {}) =>
    orderItems(planOf(head, divisions, { ...options, teeth, order: "given" }), head).map(({ term, text }) => `${term}: ${text}`);
  const everyOther = (count: number) => [
    ...Array.from({ length: count / 2 }, (_, index) => 2 * index + 1),
    ...Array.from({ length: count / 2 }, (_, index) => 2 * index + 2),
  ];
  const cooled = "What was cut first has cooled and settled by then.";

  it("says how often the work goes round, and how many turns that is", () => {
    expect(said(threePlates, 8, everyOther(8))).toEqual([
      `In this order: the work goes round 2 times: 80 turns of the crank, not 40. Go on by what each line says, not by the move of one place above. ${cooled}`,
    ]);
    expect(said(ready("ratio-90-dial"), 97, [97, 96, ...Array.from({ length: 95 }, (_, index) => index + 1)])).toEqual([
      `In this order: the work goes round 2 times: 180 turns of the handwheel, not 90. ${cooled}`,
    ]);
  });

  it("tells turns to a tenth: of 100/3 to one, two rounds are 66.67", () => {
    const thirds = defineHead({ wormRatio: "100/3", plates: [{ name: "1", circles: [12, 15, 18] }] });
    expect(said(thirds, 4, everyOther(4))[0]).toContain("66.7 turns of the crank, not 33.3.");
  });

  it("does not count the rounds that a move over several teeth makes anyway", () => {
    const two = planOf(oddDial, 17);
    expect([two.way.setting.teethPerMove, orderItems(two, oddDial)]).toEqual([2, []]);
  });

  it("counts no turns of a spindle that is turned by hand", () => {
    expect(said(secondHand, 8, everyOther(8))).toEqual([
      `In this order: the work goes round 2 times. Go on by what each line says, not by the move of one place above. ${cooled}`,
    ]);
  });

  it("says nothing of the usual order, of a part, of an angle, or where it goes back", () => {
    expect(said(threePlates, 8, [1, 2, 3, 4, 5, 6, 7, 8])).toEqual([]);
    expect(said(threePlates, 8, [1, 3, 2])).toEqual([]);
    expect(said(threePlates, 8, [1, 2, 3, 8, 4, 5, 6, 7], { direction: "nearer" })).toEqual([]);
    const angle = { ...planOf(threePlates, 8, { teeth: everyOther(8), order: "given" }), target: { angle: revolutions("1/8") } };
    expect(orderItems(angle, threePlates)).toEqual([]);
  });
});
