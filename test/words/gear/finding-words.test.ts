import { describe, expect, it } from "vitest";
import type { GearMeasures } from "../../../src/gear/identify/gear-measures.ts";
import { identifyGear } from "../../../src/gear/identify/identify-gear.ts";
import { spurGear } from "../../../src/gear/spur-gear.ts";
import { findingWords, measuresNoteWords } from "../../../src/words/gear/finding-words.ts";
import { measureWords } from "../../../src/words/gear/measure-words.ts";
import { lengthsIn } from "../../../src/words/lengths.ts";

const mm = lengthsIn("mm");
const inches = lengthsIn("in");
const found = (measures: GearMeasures, name: string, length = mm) =>
  identifyGear(measures, { limit: 100 })
    .candidates.filter((candidate) => candidate.name === name)
    .flatMap(({ findings }) => findings.map((finding) => findingWords(finding, length)));

describe("what is said of a candidate", () => {
  it("a tip that is off, each account of it", () => {
    expect(found({ teeth: 86, tipDiameter: 176.28 }, "2 module")).toEqual([
      "The tip reads 0.280 mm large: measure it again; if it is this pitch, it has a profile shift of about 0.07.",
    ]);
    expect(found({ teeth: 40, tipDiameter: 125 }, "3 module")).toContain(
      "The tip reads 1.000 mm small: worn or turned down, if it is this pitch.",
    );
    expect(found({ teeth: 40, tipDiameter: 123.6 }, "3 module")).toContain(
      "The tip reads 2.400 mm small: reduced by a profile shift of about −0.40, as the mate of an enlarged pinion is, if it is this pitch.",
    );
    const { tipDiameter, wholeDepth } = spurGear({ teeth: 12, diametralPitch: 16, profileShift: 0.5 });
    expect(found({ teeth: 12, tipDiameter, wholeDepth }, "16 DP", inches)).toContain(
      "The tip reads 0.0625 in large: an enlarged pinion with a profile shift of about 0.50, if it is this pitch.",
    );
  });

  it("what does not fit, a stub's depth, thin teeth", () => {
    expect(found({ teeth: 40, tipDiameter: 84, wholeDepth: 6 }, "2 module")).toContain(
      "The whole depth does not fit: it is 1.200 mm too large.",
    );
    expect(findingWords({ code: "misfit", measure: { code: "whole-depth" }, difference: 0.6 }, mm)).toMatch(
      /0\.600 mm too large\.$/,
    );
    expect(findingWords({ code: "misfit", measure: { code: "whole-depth" }, difference: -0.6 }, mm)).toBe(
      "The whole depth does not fit: it is 0.600 mm too small.",
    );
    expect(found({ teeth: 40, tipDiameter: 52.6 }, "20 DP")).toContain(
      "Stub teeth, if they are 2.286 mm deep: measure the depth.",
    );
    const spans = [{ teeth: 5, length: (spurGear({ teeth: 40, module: 2 }).span?.length ?? 0) - 0.094 }];
    expect(found({ teeth: 40, tipDiameter: 84, spans }, "2 module")).toContain(
      "The spans show teeth 0.100 mm thinner than drawn, along the reference circle: backlash and wear.",
    );
  });

  it("names every measure", () => {
    expect(measureWords({ code: "span", teeth: 3 })).toBe("span over 3 teeth");
    expect(measureWords({ code: "base-pitch", from: 3, to: 4 })).toBe("base pitch from the spans over 3 and 4 teeth");
    expect(measureWords({ code: "mate-tip-diameter" })).toBe("mate's tip diameter");
    expect(measureWords({ code: "centre-distance" })).toBe("centre distance");
  });
});

it("what is said of the measures as a whole", () => {
  const said = (measures: GearMeasures) => identifyGear(measures).warnings.map((note) => measuresNoteWords(note, mm));
  expect(said({ teeth: 15, tipDiameter: 34 })).toEqual([
    "An odd count has no tooth opposite a tooth: flat jaws across this gear read up to 0.372 mm small. Measure from the bore to a tip, and double.",
  ]);
  expect(said({ teeth: 40, tipDiameter: 84, spans: [{ teeth: 5, length: 27.6 }] }).join(" ")).toMatch(
    /^One span hardly tells the pressure angle/,
  );
  expect(said({ teeth: 86, tipDiameter: 9000 }).join(" ")).toMatch(/^No standard pitch fits all the measures/);
});
