import type { RecutPlan, SpurGear } from "../../src/index.ts";
import { teethInRuns } from "../../src/words/index.ts";
import { svg } from "./el.ts";
import { pointAt, shown } from "./points.ts";

/** The most teeth that are drawn: more would be too small to tell apart. */
const mostDrawn = 16;

/** The teeth from the start space to the one that proves the count: built-up ones dark, what is done at each space. */
export function teethDrawing(gear: SpurGear, plan: RecutPlan): SVGSVGElement {
  const { teeth, damaged, startSpace, spaces, proofSpace } = plan;
  const drawn = Math.min(mostDrawn, proofSpace.teethFromStart + 2, teeth);
  const scale = 240 / (drawn * gear.circularPitch);
  const [tip, root] = [(gear.tipDiameter / 2) * scale, (gear.rootDiameter / 2) * scale];
  const at = (index: number) => (index - (drawn - 1) / 2) / teeth;
  const numberOf = (index: number) => ((startSpace + index - 1) % teeth) + 1;
  const cut = new Set(spaces.map(({ toothSpace }) => toothSpace));
  const drop = tip * (1 - Math.cos(Math.PI * Math.min(1, drawn / teeth)));
  const deep = Math.max(tip - root, 14);
  return svg(
    "svg",
    {
      viewBox: `-150 ${shown(-tip - 30)} 300 ${shown(drop + deep + 64)}`,
      class: "teeth",
      role: "img",
      "aria-label": `${teethInRuns(damaged)} built up, the start space ${startSpace}, the space ${proofSpace.toothSpace} that proves the count`,
    },
    svg("path", {
      class: "line",
      d: `M${pointAt(root, at(-0.6))}A${shown(root)} ${shown(root)} 0 0 1 ${pointAt(root, at(drawn - 0.4))}`,
    }),
    Array.from({ length: drawn }, (_, index) => {
      const number = numberOf(index);
      return [
        svg("path", { class: damaged.includes(number) ? "built" : "sound", d: toothPath(gear, scale, at(index)) }),
        label(root - 11, at(index), String(number), "last"),
        index < drawn - 1 && spaceLabel(number, at(index + 0.5), { tip, root, startSpace, proof: proofSpace.toothSpace, cut }),
      ];
    }),
  );
}

interface Spaces {
  readonly tip: number;
  readonly root: number;
  readonly startSpace: number;
  readonly proof: number;
  readonly cut: ReadonlySet<number>;
}

function spaceLabel(number: number, turns: number, { tip, startSpace, proof, cut }: Spaces): SVGElement | null {
  if (number === startSpace) return label(tip + 12, turns, "START", "last");
  if (cut.has(number)) return label(tip + 12, turns, "cut", "");
  return number === proof ? label(tip + 12, turns, "PROVE", "last") : null;
}

function label(radius: number, turns: number, text: string, style: string): SVGElement {
  const [x = 0, y = 0] = pointAt(radius, turns).split(" ");
  return svg("text", { x, y, dy: "0.36em", class: style }, text);
}

/** A tooth by its widths at root, reference circle and tip; the flanks between are drawn straight. */
function toothPath(gear: SpurGear, scale: number, turns: number): string {
  const { rootDiameter, referenceDiameter, tipDiameter, toothThickness, tipThickness, circularPitch } = gear;
  const half = (width: number, diameter: number) => width / (Math.PI * diameter) / 2;
  const sides: readonly (readonly [number, number])[] = [
    [rootDiameter, half(Math.min(toothThickness * 1.45, circularPitch * 0.8), referenceDiameter)],
    [referenceDiameter, half(toothThickness, referenceDiameter)],
    [tipDiameter, half(tipThickness, tipDiameter)],
  ];
  const corner = (side: -1 | 1) => (pair: readonly [number, number]) => pointAt((pair[0] / 2) * scale, turns + side * pair[1]);
  return `M${[...sides.map(corner(-1)), ...[...sides].reverse().map(corner(1))].join("L")}Z`;
}
