import { placesOf } from "../../src/head/direct-plate.ts";
import { wormRatioOf } from "../../src/head/head.ts";
import {
  type Crank,
  type DialPosition,
  dialReadings,
  exactSettings,
  fromExact,
  type Head,
  type OnHoles,
  type PreparedHead,
} from "../../src/index.ts";
import { toRatio } from "../../src/number/ratio.ts";
import { counted, directNouns, mixed, readingShort } from "../../src/words/index.ts";
import { armsInWords } from "./arms.ts";
import type { Block } from "./blocks.ts";
import type { PlateFigure } from "./figure-blocks.ts";
import type { Desk } from "./parts.ts";
import { isReadHead } from "./readings.ts";
import { circlesAndDiameters, degreesPerTurn, plateOf } from "./words.ts";

/** One example, worked on this head's own ratio, or where no crank turns it on what it is set by. */
export function workedExample({ head, on }: Pick<Desk, "head" | "on">): Block[] {
  const example = exampleFor(on);
  if (example !== null) return worked(head, example);
  return head.wormRatio === null ? bySpindle(head) : byReadings(head);
}

interface Example {
  readonly divisions: number;
  readonly setting: Crank & OnHoles;
}

/** A count with a few whole turns and a few spaces on it; where there is none, the first of the fewest turns. */
function exampleFor(on: PreparedHead): Example | null {
  let second: Example | null = null;
  for (let divisions = 7; divisions <= 400; divisions += 1) {
    // Not by its answer: of the many counts that have none, it would look for all that comes near.
    const [setting] = exactSettings(on, { divisions }, { methods: ["simple"] });
    if (setting?.method !== "simple" || setting.circle === null || setting.teethPerMove > 1) continue;
    if (setting.spaces < 3 || setting.spaces > 12) continue;
    if (setting.turns > 0 && setting.turns < 9) return { divisions, setting };
    if (second === null || setting.turns < second.setting.turns) second = { divisions, setting };
  }
  return second;
}

function worked(head: Head, { divisions, setting }: Example): Block[] {
  const move = turnsOfOne(head, divisions);
  const { turns, spaces, circle } = setting;
  const plate = plateOf(head, setting);
  return [
    {
      kind: "paragraph",
      style: "strong",
      text: `Example: ${divisions} divisions. ${head.wormRatio} ÷ ${divisions} = ${move} turns of the crank. On the ${circle} circle of plate ${plate} that is ${counted(turns, "turn")} and ${counted(spaces, "space")}; the ${armsInWords({ circle, spaces })}.`,
    },
    {
      kind: "figure",
      share: 0.46,
      grows: true,
      figure: { type: "plate", ...faceWith(head, setting), chosen: { circle, spaces } },
      alt: `Plate ${plate} from the crank side: the arms on the ${circle} circle enclose ${spaces + 1} holes, which are ${spaces} spaces`,
      caption: "The arrow is forward. The pin’s own hole is 0: counting it as 1 is the commonest way to spoil a job.",
    },
    {
      kind: "list",
      items: [
        {
          term: "1",
          text: `Pin in hole 0, near arm against it. Set the far arm so that ${spaces + 1} holes lie between the arms, the pin’s own among them.`,
        },
        {
          term: "2",
          text: `Unlock the spindle. Draw the pin, ${turns === 0 ? "" : `turn ${counted(turns, "whole turn")}, then `}on to the hole at the far arm. Let the pin drop.`,
        },
        { term: "3", text: "Swing both arms round until the near arm touches the pin. Lock the spindle. Cut." },
        { term: "4", text: "The same again for each division. 0 turns is printed as 0: move the spaces alone." },
      ],
    },
  ];
}

/** Turns of the crank for one division: the rule. */
function turnsOfOne(head: Head, divisions: number): string {
  return mixed(toRatio(fromExact(wormRatioOf(head)).div(divisions)));
}

function faceWith({ plates }: Head, { plate, face }: OnHoles): Pick<PlateFigure, "circles" | "diameters"> {
  const on = plates.find(({ name }) => name === plate)?.faces.find(({ name }) => name === face);
  return on === undefined ? { circles: [] } : circlesAndDiameters(on);
}

/** Readings in place of holes: an example on this head's own scales. */
function byReadings(head: Head): Block[] {
  const divisions = 7;
  const move = turnsOfOne(head, divisions);
  const scale = head.dial ?? head.ring;
  const [, second, third] = scale === null ? [] : dialReadings(head, divisions).positions;
  const at = (position: DialPosition | undefined) => {
    const reading = position?.dial ?? position?.ring;
    if (!reading || !scale) return "";
    return head.dial === null
      ? `ring ${readingShort(reading, scale)}`
      : `${counted(reading.turns, "turn")}, dial ${readingShort(reading, scale)}`;
  };
  const example = `From zero, position 2 is at ${at(second)}; position 3 at ${at(third)}. Every position is read from the one zero. Never add one rounded step to the last: the errors would add up.`;
  return [
    {
      kind: "paragraph",
      style: "strong",
      text: `${head.plates.length === 0 ? "This head has no index plate" : "The plates of this head do few counts"}: positions are set by ${scale === null ? "whole turns" : head.dial === null ? "the ring" : "the dial"}. One turn is ${degreesPerTurn(head)}.`,
    },
    {
      kind: "paragraph",
      text: `Example: ${divisions} divisions. ${head.wormRatio} ÷ ${divisions} = ${move} turns for one division. ${scale === null ? "" : example}`,
    },
    ...(isReadHead(head) ? [{ kind: "list", items: stepsOf(head) } as const] : []),
  ];
}

/** Where no crank turns the spindle: an example on one of its own plates, or on its ring. */
function bySpindle(head: Head): Block[] {
  const [plate] = head.directPlates;
  if (plate === undefined) return ringAlone(head);
  const divisions = [6, 8, 5, 4, 3, 2, 7].find((count) => plate.holes % count === 0) ?? plate.holes;
  const { what, places, place } = directNouns(plate);
  const { vernierHoles: row } = plate;
  const byRow: Block = {
    kind: "paragraph",
    text: `Beside it the pin has a row of ${row} holes, each 1/${row} of a space further on: ${placesOf(plate)} places in all. A place such as 5 + 3 is: turn to ${place} 5, then on until the pin drops through hole 3 of the row. 0 of the row is the hole that the work began with.`,
  };
  return [
    {
      kind: "paragraph",
      style: "strong",
      text: `Example: ${divisions} divisions. ${plate.holes} ${places} ÷ ${divisions} = ${counted(plate.holes / divisions, "space")} of the ${what} ${plate.name}, from each to the next.`,
    },
    ...(row === undefined ? [] : [byRow]),
    {
      kind: "list",
      items: [
        { term: "1", text: `Mark the ${place} that the work begins with: it is 0, and the next one on is 1.` },
        { term: "2", text: "Unlock the spindle. Draw the pin, turn on by the spaces, and let it drop. Lock the spindle. Cut." },
        { term: "3", text: `The ${places} to stop at are printed for every count: the wrong one is the usual mistake.` },
      ],
    },
    ...(head.ring === null ? [] : ringAlone(head)),
  ];
}

function ringAlone(head: Head): Block[] {
  return [
    {
      kind: "paragraph",
      text: "By the ring every position is read by itself from the one zero. Never add one rounded step to the last: the errors would add up.",
    },
    { kind: "list", items: stepsOf(head) },
  ];
}

/** A job by readings, from the zero to where it was broken off. */
function stepsOf({ dial, ring }: Head): readonly { readonly term: string; readonly text: string }[] {
  const scales = [...(dial ? ["dial"] : []), ...(ring ? ["ring"] : [])].join(" and ");
  const [read, resume] =
    dial === null
      ? ["Turn on to the ring’s reading of the next position.", "The ring says where you stand"]
      : [
          "Turn on to the dial’s reading of the next position. Its turns say how often the zero of the dial has come round.",
          ring === null
            ? "The dial says where in its turn you stand"
            : "The ring says in which turn you stand, the dial where in it",
        ];
  return [
    {
      term: "1",
      text: `Bring the work to its first position, coming to it the way you will turn. Set ${scales} to 0 there, and leave ${dial && ring ? "them" : "it"} so until the last cut.`,
    },
    { term: "2", text: `Unlock the spindle. ${read} Lock the spindle. Cut.` },
    { term: "3", text: "The same again for each position, every reading from the one zero." },
    { term: "4", text: `Broken off? ${resume}: look that up among the positions of the count.` },
  ];
}
