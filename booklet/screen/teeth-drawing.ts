import type { RecutPlan } from "../../src/index.ts";
import { purposeWords, teethInRuns } from "../../src/words/index.ts";
import { svg } from "./el.ts";

/** The most teeth that are drawn: more would be too small to tell apart. */
const mostDrawn = 14;
/** From tooth to tooth. */
const pitch = 44;

/**
 * The teeth from the start space to the one that proves the count, laid out straight: built-up ones
 * dark, the number of each below it, what is done at each space above it.
 */
export function teethDrawing({ teeth, damaged, startSpace, spaces, proofSpace }: RecutPlan): SVGSVGElement {
  const drawn = Math.min(mostDrawn, proofSpace.teethFromStart + 2);
  const doneAt = new Map([
    ...spaces.map(({ teethFromStart }) => [teethFromStart, purposeWords.recut] as const),
    [0, purposeWords["set the cutter"]],
    [proofSpace.teethFromStart, purposeWords["prove the count"]],
  ]);
  return svg(
    "svg",
    {
      viewBox: `-30 -62 ${drawn * pitch + 16} 84`,
      role: "img",
      "aria-label": `${teethInRuns(damaged)} built up, the start space ${startSpace}, the space ${proofSpace.toothSpace} that proves the count`,
    },
    Array.from({ length: drawn }, (_, index) => {
      const number = ((startSpace + index - 1) % teeth) + 1;
      return svg(
        "g",
        { transform: `translate(${index * pitch})` },
        svg("path", { class: damaged.includes(number) ? "built" : "sound", d: "M-22 0H-15L-7 -36H7L15 0H22" }),
        svg("text", { y: 17, class: "last" }, number),
        index < drawn - 1 && svg("text", { x: pitch / 2, y: -46 }, doneAt.get(index) ?? ""),
      );
    }),
  );
}
