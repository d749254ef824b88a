import type { Head, SettingGears } from "../../src/index.ts";
import { counted, mixed } from "../../src/words/index.ts";
import type { Block } from "./blocks.ts";
import type { TrainFigure } from "./figure-blocks.ts";
import { type Desk, doneBy } from "./parts.ts";

/** A train with a count that it is for. */
interface Example {
  readonly divisions: number;
  readonly gears: SettingGears;
}

/** One drawing for each make-up of train that this head's counts use; those of one pair stand side by side. */
export function trainBlocks(desk: Desk): Block[] {
  const shown = new Map<string, Example>();
  for (const { divisions, setting } of doneBy(desk, "differential")) {
    const { gears } = setting;
    const makeUp = `${gears.drivers.length}/${gears.idlers}`;
    if (gears.mayFoul === null && !shown.has(makeUp)) shown.set(makeUp, { divisions, gears });
  }
  const inOrder = [...shown.keys()].sort().flatMap((makeUp) => shown.get(makeUp) ?? []);
  const onePair = inOrder.filter(({ gears }) => gears.drivers.length === 1);
  const twoPairs = inOrder.filter(({ gears }) => gears.drivers.length === 2);
  if (inOrder.length === 0) return [];
  return [
    ...trainWords(desk.head, twoPairs.length > 0),
    ...(onePair.length === 2 ? sideBySide(onePair) : onePair.flatMap(oneAlone)),
    ...twoPairs.flatMap(oneAlone),
  ];
}

/** A train as it is drawn. */
export function trainFigure({ drivers, driven, idlers }: SettingGears): TrainFigure {
  return { type: "train", drivers, driven, idlers };
}

/** A train in words: `spindle 32, stud 48 and 24, 1 idler, worm shaft 72`. */
export function trainInWords({ drivers, driven, idlers }: SettingGears): string {
  const stud = drivers.length > 1 ? `, stud ${driven[0]} and ${drivers[1]}` : "";
  return `spindle ${drivers[0]}${stud}, ${counted(idlers, "idler")}, worm shaft ${driven.at(-1)}`;
}

function oneAlone({ divisions, gears }: Example): Block[] {
  const { drivers, idlers, direction } = gears;
  const name = `${drivers.length === 1 ? "One pair" : "Two pairs"}, ${counted(idlers, "idler")}: the plate turns ${direction} the crank`;
  return [
    { kind: "heading", text: name },
    {
      kind: "figure",
      grows: true,
      figure: trainFigure(gears),
      alt: `${name}: ${trainInWords(gears)}`,
      caption: `As for ${divisions} divisions: the plate makes ${turnsOf(gears)} the crank in one turn of the spindle. Stop pin out.`,
    },
  ];
}

function sideBySide(examples: readonly Example[]): Block[] {
  const name = ({ idlers, direction }: SettingGears) => `${counted(idlers, "idler")}, ${direction} the crank`;
  const both = examples.map(({ gears }) => name(gears)).join("; ");
  const asFor = examples.map(({ divisions, gears }, side) => {
    const where = side === 0 ? "Left, as for" : "right, as for";
    return `${where} ${divisions} divisions: the plate makes ${turnsOf(gears)} the crank in one turn of the spindle`;
  });
  return [
    { kind: "heading", text: `One pair: ${both}` },
    {
      kind: "figure",
      grows: true,
      figure: { type: "trains", trains: examples.map(({ gears }) => trainFigure(gears)) },
      alt: `One pair, side by side: ${examples.map(({ gears }) => `${trainInWords(gears)}, ${gears.direction} the crank`).join("; ")}`,
      caption: `${asFor.join("; ")}. Stop pin out.`,
    },
  ];
}

function turnsOf({ platePerSpindle, direction }: SettingGears): string {
  return `${mixed(platePerSpindle)} ${platePerSpindle === "1" ? "turn" : "turns"} ${direction}`;
}

function trainWords({ gearing }: Head, twoPairsShown: boolean): Block[] {
  const { onePair = 1, twoPairs = 0 } = gearing?.idlersWithCrank ?? {};
  const fromSide = twoPairsShown
    ? " Two pairs are drawn from the side as well: wheels that mesh stand in one plane, and the stud carries one in each."
    : "";
  return [
    { kind: "heading", text: "Gear trains" },
    {
      kind: "paragraph",
      text: `On this head the plate turns with the crank with ${counted(onePair, "idler")} in one pair and ${counted(twoPairs, "idler")} in two pairs; one idler more turns it against. Idlers change the direction and never the ratio: any that reach will do.${fromSide} Arrows show the gears when the spindle gear turns clockwise as drawn. Stop the machine before hands go near the gears, and put the guard back.`,
    },
  ];
}
