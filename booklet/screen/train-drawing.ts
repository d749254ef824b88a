import type { SettingGears } from "../../src/index.ts";
import { trainShort } from "../../src/words/index.ts";
import { svg } from "./el.ts";
import { shown } from "./points.ts";

/** Teeth that an idler is drawn with; any size serves. */
const idlerTeeth = 24;

interface Shaft {
  readonly name: string;
  /** Teeth of the gears on it: the first meshes with the shaft before, the last with the one after. */
  readonly gears: readonly number[];
}

/** A train as circles that touch where gears mesh, from the spindle to the worm, with the way that each shaft turns. */
export function trainDrawing(gears: SettingGears): SVGSVGElement {
  const shafts = shaftsOf(gears);
  let edge = 0;
  const placed = shafts.map((shaft, index) => {
    const before = shafts[index - 1];
    edge += before === undefined ? Math.max(...shaft.gears) / 2 : ((before.gears.at(-1) ?? 0) + (shaft.gears[0] ?? 0)) / 2;
    return { ...shaft, at: edge, isWith: index % 2 === 0 };
  });
  const largest = Math.max(...shafts.flatMap((shaft) => shaft.gears));
  const [left, right] = [
    Math.min(...placed.map(({ at, gears: on }) => at - Math.max(...on) / 2)),
    Math.max(...placed.map(({ at, gears: on }) => at + Math.max(...on) / 2)),
  ];
  const scale = 300 / (right - left);
  const high = Math.max(largest * scale, 40);
  return svg(
    "svg",
    {
      viewBox: `0 0 320 ${shown(high + 78)}`,
      class: "train",
      role: "img",
      "aria-label": `${trainShort(gears)}: from left to right ${shafts.map(({ name, gears: on }) => `${name} ${name === "idler" ? "" : on.join(" and ")}`).join(", ")}`,
    },
    placed.map((shaft, index) => {
      const x = (shaft.at - left) * scale + 10;
      const low = index % 2 === 1 && shafts.length > 3;
      return svg(
        "g",
        { transform: `translate(${shown(x)} ${shown(high / 2 + 4)})` },
        shaft.gears.map((teeth) =>
          svg("circle", { r: shown((teeth / 2) * scale), class: shaft.name === "idler" ? "idler" : "rim" }),
        ),
        svg("circle", { r: 3, class: "solid" }),
        turning(Math.max(8, Math.min(...shaft.gears) * scale * 0.3), shaft.isWith),
        svg(
          "text",
          { y: shown(high / 2 + (low ? 56 : 20)), class: "last" },
          shaft.name === "idler" ? "idler" : shaft.gears.join(" + "),
        ),
        svg("text", { y: shown(high / 2 + (low ? 71 : 35)), class: "small" }, shaft.name === "idler" ? "any size" : shaft.name),
      );
    }),
  );
}

function shaftsOf({ drivers, driven, idlers }: SettingGears): readonly Shaft[] {
  const [spindle = 0, ...stud] = drivers;
  return [
    { name: "spindle", gears: [spindle] },
    ...(stud.length === 0 ? [] : [{ name: "stud", gears: [driven[0] ?? 0, ...stud] }]),
    ...Array.from({ length: idlers }, () => ({ name: "idler", gears: [idlerTeeth] })),
    { name: "worm", gears: [driven.at(-1) ?? 0] },
  ];
}

/** An arc over the shaft with a head that shows which way it turns. */
function turning(radius: number, isWith: boolean): SVGElement {
  const [x, y] = [shown(radius * 0.8), shown(-radius * 0.6)];
  return svg(
    "g",
    { transform: isWith ? "" : "scale(-1 1)" },
    svg("path", { class: "line", d: `M-${x} ${y}A${shown(radius)} ${shown(radius)} 0 0 1 ${x} ${y}` }),
    svg("path", { class: "solid", d: "M-3.4 -3L3.4 -3L0 4Z", transform: `translate(${x} ${y}) rotate(-36)` }),
  );
}
