import type { Head, Way } from "../../src/index.ts";
import { plateName } from "../../src/words/index.ts";
import { svg } from "./el.ts";
import { pointAt, shown } from "./points.ts";

/** Radii; the drawing is 240 wide. */
const rim = 100;
const [innermost, outermost] = [42, 92];
const hub = 15;

/** A part of a move on the plate: from hole 0 on by so many spaces of a circle. */
interface Part {
  readonly circle: number;
  readonly spaces: number;
}

/** What of a plate is drawn: the circles of its face, the move, and the rear pin's part of it. */
interface Drawn {
  readonly name: string;
  readonly circles: readonly number[];
  readonly move: Part;
  readonly rear: Part | null;
  readonly byArms: boolean;
}

/** The plate as seen from the crank, hole 0 at the top, forward clockwise; null where the way goes by no circle. */
export function plateDrawing(way: Way, head: Head): SVGSVGElement | null {
  const drawn = drawnOf(way, head);
  if (drawn === null) return null;
  const { circles, move, rear, byArms, name } = drawn;
  const radii = circles.map((_, index) => radiusOf(index, circles.length));
  const radius = radii[circles.indexOf(move.circle)] ?? outermost;
  const pitch = circles.length > 1 ? (outermost - innermost) / (circles.length - 1) : 14;
  const dots = (holes: number, at: number) => Math.min(5.4, pitch * 0.44, ((2 * Math.PI * at) / holes) * 0.5);
  const spaces = way.by === "moves" ? `, ${move.spaces} spaces from the pin's hole to the next` : "";
  return svg(
    "svg",
    {
      viewBox: "-120 -120 240 240",
      class: "plate",
      role: "img",
      "aria-label": `Plate ${name}, circle of ${move.circle} holes${spaces}`,
    },
    byArms && svg("path", { class: "sector", d: sectorPath(move) }),
    svg("circle", { r: rim, class: "rim" }),
    circles.map((holes, index) => {
      const at = radii[index] ?? outermost;
      const isRear = holes === rear?.circle;
      return svg("path", {
        class: holes === move.circle || isRear ? "holes chosen" : "holes",
        "stroke-width": shown(dots(holes, at)),
        d: holesPath(holes, at, 0, holes),
      });
    }),
    svg("path", {
      class: "holes counted",
      "stroke-width": shown(dots(move.circle, radius)),
      d: holesPath(move.circle, radius, 0, move.spaces + 1),
    }),
    rear && pins(rear, radii[circles.indexOf(rear.circle)] ?? outermost, "rear"),
    pins(move, radius, "pin"),
    byArms && [arm(0, -1, radius), arm(move.spaces / move.circle, 1, radius)],
    byArms && ticks(move),
    svg("circle", { r: hub, class: "rim hub" }),
    svg("path", { class: "line", d: "M-7 3A7.6 7.6 0 1 1 7 3" }),
    svg("path", { class: "solid", d: "M7 8.6L3.4 2.2L10.6 2.2Z" }),
  );
}

function drawnOf(way: Way, { plates }: Head): Drawn | null {
  const { setting } = way;
  if (setting.circle === null || setting.plate === null) return null;
  const face = plates.find(({ name }) => name === setting.plate)?.faces.find(({ name }) => name === setting.face);
  const bySpindle = setting.method === "direct";
  return {
    name: plateName(setting),
    circles: bySpindle || face === undefined ? [setting.circle] : face.circles,
    move: { circle: setting.circle, spaces: setting.spaces ?? 0 },
    rear: "second" in setting ? setting.second : null,
    byArms: setting.armsEnclose !== null,
  };
}

function radiusOf(index: number, circles: number): number {
  return circles === 1 ? 84 : innermost + ((outermost - innermost) * index) / (circles - 1);
}

/** Holes as the round ends of lines without length. */
function holesPath(circle: number, radius: number, from: number, to: number): string {
  let path = "";
  for (let hole = from; hole < to; hole += 1) path += `M${pointAt(radius, hole / circle)}h0`;
  return path;
}

/** The hole that a pin is in, and the hole that it goes to. */
function pins({ circle, spaces }: Part, radius: number, kind: "pin" | "rear"): SVGElement {
  return svg("path", {
    class: kind,
    d: [0, spaces].map((hole) => `M${pointAt(radius, hole / circle)}m-5 0a5 5 0 1 0 10 0a5 5 0 1 0 -10 0`).join(""),
  });
}

function sectorPath({ circle, spaces }: Part): string {
  const turns = Math.min(spaces / circle, 0.9999);
  return `M0 0L${pointAt(rim, 0)}A${rim} ${rim} 0 ${turns > 0.5 ? 1 : 0} 1 ${pointAt(rim, turns)}Z`;
}

/** A tapered bar beside its hole: the near one before it, the far one past it. */
function arm(turns: number, side: 1 | -1, radius: number): SVGElement {
  const corner = (sideways: number, along: number) => `${shown(side * sideways)} ${shown(-along)}`;
  const d = `M${corner(6, hub)}L${corner(6, radius + 5)}L${corner(9, radius + 7)}L${corner(14, radius * 0.6)}L${corner(14, hub)}Z`;
  return svg("path", { class: "arm", d, transform: `rotate(${shown(360 * turns)})` });
}

const mostNamed = 12;

/** Figures outside the rim that count the spaces; of many only some, and the last. */
function ticks({ circle, spaces }: Part): readonly SVGElement[] {
  const every = Math.ceil(spaces / mostNamed);
  return Array.from({ length: spaces + 1 }, (_, space) => space)
    .filter((space) => space === spaces || (space % every === 0 && spaces - space >= every))
    .map((space) => {
      const [x, y] = pointAt(rim + 11, space / circle).split(" ");
      return svg("text", { x: x ?? 0, y: y ?? 0, dy: "0.36em", class: space === spaces ? "last" : "" }, space);
    });
}
