import { flattened, type Page } from "../../booklet/layout/marks.ts";

/** The scale that a drawing names on its page: how many mm of the paper a mm of the work takes. */
export function scaleOn({ marks }: Page): number {
  for (const mark of flattened(marks)) {
    const [, paper, work] = (mark.kind === "text" && /^Scale ([\d.]+) : ([\d.]+)$/.exec(mark.text)) || [];
    if (paper !== undefined && work !== undefined) return Number(paper) / Number(work);
  }
  throw new Error("no scale is named");
}
