import type { Crank, Face, Head, OnHoles, Plate } from "../../src/index.ts";
import { circlesOf, counted } from "../../src/words/index.ts";
import { armsInWords } from "./arms.ts";
import type { Block, Part } from "./blocks.ts";
import type { Desk } from "./parts.ts";
import { plateHeading } from "./plate-keys.ts";
import { trainBlocks } from "./train-blocks.ts";
import { has } from "./what-it-has.ts";
import { anchorOf, circlesAndDiameters, plateOf } from "./words.ts";

/** The plates, each face with its circles numbered, and the gear trains. */
export function drawingsPart(desk: Desk): Part | null {
  const { head } = desk;
  const trains = trainBlocks(desk);
  const drawn = [...fromTheCrank(head), ...head.plates.flatMap((plate) => faces(desk, plate)), ...trains];
  if (drawn.length === 0) return null;
  // Each heading has a name, by which the layout sees that a drawing that grows moves none of them.
  const blocks = drawn.map((block, at) => (block.kind === "heading" ? { ...block, anchor: anchorOf("drawing", at) } : block));
  return { id: "drawings", title: trains.length > 0 ? "Plates and gear trains" : "Plates", joins: true, blocks };
}

/** What is what, with seven spaces set on a circle of 24. */
function fromTheCrank(head: Head): Block[] {
  const { plates } = head;
  if (plates.length === 0) return [];
  return [
    { kind: "heading", text: "The head from the crank" },
    {
      kind: "figure",
      grows: true,
      figure: { type: "head", circle: 24, spaces: 7, plateTurns: turnedBy(head) !== null },
      alt: "The head seen from the crank: plate, crank with its pin in hole 0, near and far arm with 7 spaces between them, stop pin behind the plate; forward is clockwise",
      caption: `${stopPin(head)} If your head is built the other way round, forward is the way you have chosen; keep to it. Plates are drawn from the crank side too, hole 0 at the top${plates.every((plate) => plate.faces.every(({ diameters }) => diameters !== undefined)) ? "" : "; where a circle’s diameter is not known, its distance from the next is the drawing’s own"}.`,
    },
  ];
}

function stopPin(head: Head): string {
  const settings = turnedBy(head);
  return settings === null ? "Stop pin IN." : `Stop pin IN for simple settings, OUT for ${settings} ones.`;
}

/** The settings of a head that turn its plate; null where it always stands still. */
function turnedBy(head: Head): string | null {
  const settings = [...(has(head, "gears") ? ["geared"] : []), ...(has(head, "second-circle") ? ["compound"] : [])];
  return settings.length === 0 ? null : settings.join(" and ");
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
