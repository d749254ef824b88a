import type { Crank, Face, Head, OnHoles, Plate } from "../../src/index.ts";
import { circlesOf, counted, mixed } from "../../src/words/index.ts";
import { armsInWords } from "./arms.ts";
import type { Block, Part } from "./blocks.ts";
import { type Desk, doneBy } from "./parts.ts";
import { anchorOf, circlesAndDiameters, plateOf } from "./words.ts";

/** The plates, each face with its circles numbered, and the gear trains. */
export function drawingsPart(desk: Desk): Part | null {
  const { head } = desk;
  const drawn = [...fromTheCrank(head), ...head.plates.flatMap((plate) => faces(desk, plate)), ...trains(desk)];
  if (drawn.length === 0) return null;
  // Each heading has a name, by which the layout sees that a drawing that grows moves none of them.
  const blocks = drawn.map((block, at) => (block.kind === "heading" ? { ...block, anchor: anchorOf("drawing", at) } : block));
  return { id: "drawings", title: "Plates and gear trains", blocks };
}

/** What is what, with eight spaces set on a circle of thirty. */
function fromTheCrank({ plates }: Head): Block[] {
  if (plates.length === 0) return [];
  return [
    { kind: "heading", text: "The head from the crank" },
    {
      kind: "figure",
      grows: true,
      figure: { type: "head", circle: 30, spaces: 8 },
      alt: "The head seen from the crank: plate, crank with its pin in hole 0, near and far arm with 8 spaces between them, stop pin behind the plate; forward is clockwise",
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
      { kind: "heading", text: `Plate ${name}` },
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

/** One drawing for each make-up of train that this head's counts use. */
function trains(desk: Desk): Block[] {
  const shown = new Map<string, Block[]>();
  for (const { divisions, setting } of doneBy(desk, "differential")) {
    if (setting.gears.mayFoul !== null) continue;
    const { drivers, driven, idlers, direction } = setting.gears;
    const makeUp = `${drivers.length}/${idlers}`;
    if (shown.has(makeUp)) continue;
    const name = `${drivers.length === 1 ? "One pair" : "Two pairs"}, ${counted(idlers, "idler")}: the plate turns ${direction} the crank`;
    shown.set(makeUp, [
      { kind: "heading", text: name },
      {
        kind: "figure",
        grows: true,
        figure: { type: "train", drivers, driven, idlers },
        alt: `${name}: spindle ${drivers[0]}${drivers.length > 1 ? `, stud ${driven[0]} and ${drivers[1]}` : ""}, ${counted(idlers, "idler")}, worm shaft ${driven.at(-1)}`,
        caption: `As for ${divisions} divisions: the plate makes ${mixed(setting.gears.platePerSpindle)} turns ${direction} the crank in one turn of the spindle. Stop pin out.`,
      },
    ]);
  }
  const blocks = [...shown.keys()].sort().flatMap((key) => shown.get(key) ?? []);
  return blocks.length === 0 ? [] : [...trainWords(desk.head), ...blocks];
}

function trainWords({ gearing }: Head): Block[] {
  const { onePair = 1, twoPairs = 0 } = gearing?.idlersWithCrank ?? {};
  return [
    { kind: "heading", text: "Gear trains" },
    {
      kind: "paragraph",
      text: `On this head the plate turns with the crank with ${counted(onePair, "idler")} in one pair and ${counted(twoPairs, "idler")} in two pairs; one idler more turns it against. Idlers change the direction and never the ratio: any that reach will do. Two pairs are drawn from the side as well: wheels that mesh stand in one plane, and the stud carries one in each. Arrows show the gears when the spindle gear turns clockwise as drawn. Stop the machine before hands go near the gears, and put the guard back.`,
    },
  ];
}
