import { describe, expect, it } from "vitest";
import { toothRepair } from "../../../src/gear/repair/tooth-repair.ts";
import { spurGear } from "../../../src/gear/spur-gear.ts";
import type { SpurGearSpec } from "../../../src/gear/spur-gear-spec.ts";
import { noteWords } from "../../../src/words/gear/note-words.ts";
import { lengthsIn } from "../../../src/words/lengths.ts";

const mm = lengthsIn("mm");
const inches = lengthsIn("in");
const said = (spec: SpurGearSpec, length = mm) => spurGear(spec).warnings.map((note) => noteWords(note, length));

describe("what is said of a gear", () => {
  it.each([
    [
      { teeth: 17, module: 1 },
      /^A rack or hob undercuts 17 teeth at 20° with a profile shift of 0: from 18 teeth, or from a shift of 0.006, it does not\./,
    ],
    // 1 − 16 sin² 20°/2 is 0.064178, rounded upwards.
    [{ teeth: 16, module: 1 }, /from 18 teeth, or from a shift of 0\.065, it does not\./],
    [{ teeth: 17, module: 1, profileShift: -0.5 }, /with a profile shift of −0.5: from 26 teeth/],
    [{ teeth: 12, module: 1, profileShift: 0.7 }, /^The tooth is only 0\.\d{3} mm thick at the tip, under 0.2 of the module/],
    [{ teeth: 40, module: 1, tipDiameter: 43 }, /^The tip diameter given, 43.000 mm, is far from the rule's 42.000 mm; check/],
    [{ teeth: 40, module: 2, tipDiameter: 79 }, /is below the reference circle, 80.000 mm: there is no chord to measure/],
    [
      { teeth: 4, module: 1, pressureAngle: 10, profileShift: -0.8, depthRule: "1.8-stub" },
      /No span over whole teeth rests on the flanks of 4 teeth of this form\./,
    ],
  ] as [SpurGearSpec, RegExp][])("%j", (spec, sentence) => {
    expect(said(spec).join(" ")).toMatch(sentence);
  });

  it("names a shift that is not undercut when it is taken at its word", () => {
    const shift = /from a shift of ([\d.]+)/.exec(said({ teeth: 13, module: 1 }).join(" "))?.[1];
    expect(said({ teeth: 13, module: 1, profileShift: Number(shift) })).toEqual([]);
  });

  it("stands in inches for who works in inches", () => {
    const text = said({ teeth: 40, diametralPitch: 1, tipDiameter: 43 * 25.4 }, inches).join(" ");
    expect(text).toContain("The tip diameter given, 43.0000 in, is far from the rule's 42.0000 in");
    expect(text).not.toContain("mm");
  });
});

describe("what is said of a repair", () => {
  const gear = spurGear({ teeth: 86, module: 2 });
  const repairSays = (options: object, length = mm) =>
    toothRepair(gear, { damaged: [31], ...options }).warnings.map((note) => noteWords(note, length));

  it("bounds what may be lost downwards and what errors take upwards", () => {
    const options = { backlash: 0.1001, settingError: { arcSeconds: 120.1 } };
    expect(repairSays(options)).toEqual([
      "The errors of setting can take 0.051 mm off one side of a tooth, more than the 0.050 mm it may lose: set closer, or leave the last of the metal for the file.",
    ]);
    expect(repairSays(options, inches).join(" ")).toMatch(/can take 0.0020 in off .* than the 0.0019 in it may lose/);
  });

  it("tells of the saw and of cutters", () => {
    expect(repairSays({ saw: { leave: 0 }, settingError: { offCentre: 0.2 } })).toEqual([
      expect.stringMatching(
        /^The errors of setting, 0.\d{3} mm, are more than the saw leaves on a flank, 0.000 mm: take a thinner/,
      ),
    ]);
    expect(repairSays({ saw: { depth: 4.5 } }).join(" ")).toMatch(/its corners may notch the fillets\.$/);
    const small = toothRepair(spurGear({ teeth: 10, module: 2, profileShift: 0.5 }), { damaged: [3] });
    expect(small.warnings.map((note) => noteWords(note, mm)).join(" ")).toMatch(
      /No form cutter of the usual sets is made for 10 teeth; they begin at 12\. File to a template/,
    );
    const shifted = toothRepair(spurGear({ teeth: 20, module: 2, profileShift: 0.4 }), { damaged: [3] });
    expect(shifted.warnings.map((note) => noteWords(note, mm)).join(" ")).toMatch(/made for teeth without profile shift/);
  });
});
