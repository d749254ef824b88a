import { describe, expect, it } from "vitest";
import { defineHead, indexDivisions, indexTable, planJob, readyHeads } from "../../src/index.ts";
import { answerWithWhys, planWithWhys, tableWithWhys } from "../../src/words/index.ts";
import { ready } from "../support/ready.ts";

/** Gears that only go together with the stud's second one close to the spindle: 90 + 9 are less than 90 + 15. */
const cramped = defineHead({
  wormRatio: 40,
  plates: [{ name: "1", circles: [15, 20] }],
  gears: [90, 90, 9, 100],
  gearing: { greatestPlateRatio: 100 },
});

describe("JSON has the sentence beside every code", () => {
  it("of a train that may foul, wherever its setting stands; null where none may", () => {
    const why =
      "the stud's 90 may reach the spindle: 90 + 9 is less than 90 + 15 (a shop rule for the room of a shaft, 15 teeth; common practice, no source)";
    const mayFoul = { code: "stud-driver-at-spindle", gear: 90, meshing: [90, 9], room: 15, why };
    const answer = indexDivisions(cramped, 28, { methods: ["differential"], teethPerMove: 1 });
    expect(answerWithWhys(answer)).toMatchObject({ settings: [{ gears: { mayFoul } }] });
    const plan = planJob(cramped, { divisions: 28 }, { methods: ["differential"], teethPerMove: 1 });
    expect(planWithWhys(plan)).toMatchObject({ way: { setting: { gears: { mayFoul } } } });
    expect(answerWithWhys(indexDivisions(ready("ratio-40-plates-15-49"), 127))).toMatchObject({
      settings: [{ gears: { mayFoul: null } }, {}, {}, {}, {}, {}],
    });
  });

  it("of the rows of a table, of which one may have no setting", () => {
    const rows = indexTable(cramped, { from: 28, to: 29, methods: ["differential"], teethPerMove: 1 });
    const told = tableWithWhys(rows);
    expect(told[0]).toMatchObject({
      divisions: 28,
      setting: { gears: { mayFoul: { why: expect.stringMatching(/^the stud's 90 may reach/) } } },
    });
    expect(told[1]).toEqual(rows[1]);
    expect(rows[1]?.setting).toBeNull();
  });

  it("takes nothing away and changes nothing else", () => {
    const withoutWhys = (value: unknown) =>
      JSON.parse(JSON.stringify(value, (key, each: unknown) => (key === "why" ? undefined : each)));
    for (const head of [...readyHeads, cramped]) {
      for (const divisions of [7, 28, 97, 127, 787]) {
        const answer = indexDivisions(head, divisions, { near: true });
        expect(withoutWhys(answerWithWhys(answer))).toEqual(JSON.parse(JSON.stringify(answer)));
        expect(Object.keys(answerWithWhys(answer))).toEqual(Object.keys(answer));
      }
    }
  });

  it("of a plan leaves out the places alone, which stand beside it", () => {
    const plan = planJob(ready("ratio-40-plates-15-49-ungeared"), { divisions: 97 }, { teeth: [2, 3] });
    const told = planWithWhys(plan);
    expect(Object.keys(plan).filter((key) => !(key in told))).toEqual(["places"]);
    expect(told).toMatchObject({
      cautions: expect.arrayContaining([
        expect.objectContaining({ code: "error-grows", why: expect.stringContaining("A near move") }),
      ]),
    });
  });

  it("of a job that cannot be done says why not", () => {
    const onlyDirect = defineHead({ wormRatio: 40, directPlates: [{ name: "nose", holes: 24 }] });
    expect(planWithWhys(planJob(onlyDirect, { divisions: 7 }))).toMatchObject({
      planned: false,
      impossible: {
        reasons: expect.arrayContaining([
          expect.objectContaining({ why: "needs a direct plate whose holes are a multiple of 7; yours: 24" }),
        ]),
      },
    });
  });
});
