import type { Crank, Head, OnHoles, Plate } from "../../src/index.ts";
import { circlesOf, counted, mixed } from "../../src/words/index.ts";
import type { Block, Part } from "./blocks.ts";
import { type Desk, doneBy } from "./parts.ts";
import { plateOf } from "./words.ts";

/** The plates, each face with its circles numbered, and the gear trains. */
export function drawingsPart(desk: Desk): Part | null {
  const { head } = desk;
  const blocks = [...fromTheCrank(head), ...head.plates.flatMap((plate) => faces(desk, plate)), ...trains(desk)];
  return blocks.length === 0 ? null : { id: "drawings", title: "Plates and gear trains", blocks };
}

/** What is what, with eight spaces set on a circle of thirty. */
function fromTheCrank({ plates }: Head): Block[] {
  if (plates.length === 0) return [];
  return [
    { kind: "heading", text: "The head from the crank" },
    {
      kind: "figure",
      figure: { type: "head", circle: 30, spaces: 8 },
      alt: "The head seen from the crank: plate, crank with its pin in hole 0, near and far arm with 8 spaces between them, stop pin behind the plate; forward is clockwise",
      caption:
        "Stop pin IN for simple settings, OUT for geared and compound ones. If your head is built the other way round, forward is the way you have chosen; keep to it.",
    },
  ];
}

function faces(desk: Desk, plate: Plate): Block[] {
  return plate.faces.flatMap((face): Block[] => {
    const name = plateOf(desk.head, { plate: plate.name, face: face.name });
    const example = exampleOn(desk, plate.name, face.name);
    const shown = example
      ? ` Set for ${example.divisions} divisions: ${counted(example.setting.turns, "turn")} and ${counted(example.setting.spaces, "space")} on the ${example.setting.circle} circle, arms enclose ${example.setting.armsEnclose} holes.`
      : "";
    return [
      { kind: "heading", text: `Plate ${name}` },
      {
        kind: "figure",
        share: 0.95,
        figure: {
          type: "plate",
          circles: face.circles,
          chosen: example ? { circle: example.setting.circle, spaces: example.setting.spaces } : null,
        },
        alt: `Plate ${name} with circles of ${circlesOf(face)} holes.${shown}`,
        caption: `Plate ${name}, from the crank side. Circles from the inside: ${circlesOf(face)}. The distances between circles are the drawing’s own; the arrow shows forward.${shown}`,
      },
    ];
  });
}

/** A count on this face with spaces enough to show and few enough to count. */
function exampleOn({ counts }: Desk, plate: string, face: string | null): { divisions: number; setting: Crank & OnHoles } | null {
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
      text: `On this head the plate turns with the crank with ${counted(onePair, "idler")} in one pair and ${counted(twoPairs, "idler")} in two pairs; one idler more turns it against. Idlers change the direction and never the ratio: any that reach will do. Arrows show the gears when the spindle gear turns clockwise as drawn. Stop the machine before hands go near the gears, and put the guard back.`,
    },
  ];
}
