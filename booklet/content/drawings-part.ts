import type { Crank, Face, Head, OnHoles, Plate } from "../../src/index.ts";
import { circlesOf, counted } from "../../src/words/index.ts";
import { armsInWords } from "./arms.ts";
import type { Block, Part } from "./blocks.ts";
import type { Desk } from "./parts.ts";
import { plateHeading } from "./plate-keys.ts";
import { trainBlocks } from "./train-blocks.ts";
import { anchorOf, circlesAndDiameters, plateOf } from "./words.ts";

/** The plates, each face with its circles numbered, and the gear trains. */
export function drawingsPart(desk: Desk): Part | null {
  const { head } = desk;
  const drawn = [...fromTheCrank(head), ...head.plates.flatMap((plate) => faces(desk, plate)), ...trainBlocks(desk)];
  if (drawn.length === 0) return null;
  // Each heading has a name, by which the layout sees that a drawing that grows moves none of them.
  const blocks = drawn.map((block, at) => (block.kind === "heading" ? { ...block, anchor: anchorOf("drawing", at) } : block));
  return { id: "drawings", title: "Plates and gear trains", joins: true, blocks };
}

/** What is what, with seven spaces set on a circle of 24. */
function fromTheCrank({ plates }: Head): Block[] {
  if (plates.length === 0) return [];
  return [
    { kind: "heading", text: "The head from the crank" },
    {
      kind: "figure",
      grows: true,
      figure: { type: "head", circle: 24, spaces: 7 },
      alt: "The head seen from the crank: plate, crank with its pin in hole 0, near and far arm with 7 spaces between them, stop pin behind the plate; forward is clockwise",
      caption: `Stop pin IN for simple settings, OUT for geared and compound ones. If your head is built the other way round, forward is the way you have chosen; keep to it. Plates are drawn from the crank side too, hole 0 at the top${plates.every((plate) => plate.faces.every(({ diameters }) => diameters !== undefined)) ? "" : "; where a circle’s diameter is not known, its distance from the next is the drawing’s own"}.`,
    },
  ];
}

function faces(desk: Desk, plate: Plate): Block[] {
  return plate.faces.flatMap((face): Block[] => {
    const name = plateOf(desk.head, { plate: plate.name, face: face.name });
    const example = exampleOn(desk, plate.name, face.name);
    const chosen = example && { circle: example.setting.circle, spaces: example.setting.spaces };
    const shown =
      example && chosen
        ? ` Set for ${example.divisions} divisions: ${counted(example.setting.turns, "turn")} and ${counted(chosen.spaces, "space")} on the ${chosen.circle} circle, ${armsInWords(chosen)}.`
        : "";
    return [
      { kind: "heading", text: plateHeading(desk.keys, { plate: plate.name, face: face.name }) },
      {
        kind: "figure",
        share: 0.95,
        grows: true,
        figure: { type: "plate", ...circlesAndDiameters(face), chosen },
        alt: `Plate ${name} with circles of ${circlesOf(face)} holes.${shown}`,
        caption: `Circles from the inside: ${fromTheInside(face)}.${shown}`,
      },
    ];
  });
}

function fromTheInside({ circles, diameters }: Face): string {
  const at = (index: number) => diameters?.[index] ?? index;
  const order = circles.map((_, index) => index).sort((a, b) => at(a) - at(b));
  return order.map((index) => circles[index]).join(" ");
}

/** A count on this face with spaces enough to show and few enough to count. */
function exampleOn(
  { counts }: Desk,
  plate: string,
  face: string | null,
): { divisions: number; setting: Crank & OnHoles & { circle: number } } | null {
  for (const { divisions, simple } of counts) {
    const setting = simple.find((each) => each.plate === plate && each.face === face);
    if (setting && setting.circle !== null && setting.spaces >= 5 && setting.spaces <= 20) return { divisions, setting };
  }
  return null;
}
