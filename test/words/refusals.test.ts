import { expect, it } from "vitest";
import { faultOf } from "../../src/number/errors.ts";
import { lengthSentence, said } from "../../src/number/length-sentence.ts";
import { faultIn } from "../../src/words/refusals.ts";

it("a refusal is said in the unit of the person, and what has no length stays as it is", () => {
  const fault = faultOf("out-of-range", "pinDiameter", lengthSentence`give at most ${said.most(25.4)}`);
  expect(fault.problem).toBe("give at most 25.4 mm");
  expect(faultIn("mm", fault)).toEqual(fault);
  expect(faultIn("in", fault)).toEqual({ ...fault, problem: "give at most 1 in" });
  const plain = faultOf("missing", "teeth", "how many?");
  expect(faultIn("in", plain)).toBe(plain);
});
