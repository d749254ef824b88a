import fc from "fast-check";
import { expect, it } from "vitest";
import { defineHead, indexDivisions, nearSettings, planJob, revolutions, unequalSpacing } from "../../src/index.ts";
import { counts, headSpecs, teethPerMove } from "../support/arbitraries.ts";

/** A head with each of its plates twice: whatever is done on the one can be done on the other. */
const twins = headSpecs().map((spec) => {
  const plates = spec.plates ?? [];
  const copies = plates.map((plate) => ({ ...plate, name: `${plate.name}, the other` }));
  return { once: plates.map(({ name }) => name), head: defineHead({ ...spec, plates: [...plates, ...copies] }) };
});

/** The plates that settings stand on. */
const platesOf = (settings: readonly object[]) =>
  settings.flatMap((setting) => ("plate" in setting && typeof setting.plate === "string" ? [setting.plate] : []));

it("of two plates that are alike that on the head is taken, whichever it is, for every near setting of its circles", () => {
  let seen = 0;
  fc.assert(
    fc.property(twins, counts, teethPerMove, fc.nat(), ({ head, once }, divisions, teeth, pick) => {
      const name = once[pick % once.length] ?? "";
      for (const [on, off] of [
        [name, `${name}, the other`],
        [`${name}, the other`, name],
      ] as const) {
        const near = platesOf(nearSettings(head, { divisions }, { teethPerMove: teeth, mounted: on }));
        const exact = platesOf(indexDivisions(head, divisions, { teethPerMove: teeth, mounted: on, limit: 1 }).settings);
        const { circle } = unequalSpacing(head, [revolutions(1, divisions + 1), revolutions(1, 7)], { mounted: on });
        const job = planJob(head, { divisions }, { teeth: [1, divisions], mounted: on });
        const planned = job.planned ? platesOf([job.way.setting, ...job.others.map(({ setting }) => setting)]) : [];
        const all = [...near, ...exact, ...planned, ...(circle === null ? [] : [circle.plate])];
        expect(all).not.toContain(off);
        seen += all.filter((plate) => plate === on).length;
      }
    }),
  );
  expect(seen).toBeGreaterThan(200);
});
