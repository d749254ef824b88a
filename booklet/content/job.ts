import {
  checkPositions,
  dialReadings,
  formatAngle,
  type Head,
  InputError,
  indexDivisions,
  type Position,
  positions,
  prove,
  type Setting,
  type UnprovedSetting,
} from "../../src/index.ts";
import type { Edition } from "../edition.ts";
import type { Block, Book, Cell, Column, Part, Row } from "./blocks.ts";
import { runningOf } from "./book.ts";
import { degreeTable } from "./degrees-part.ts";
import { withoutGears } from "./geared-part.ts";
import { counted, mixed, plateOf, ratioInWords, readingOf } from "./words.ts";

/** One job: a count, and the teeth that are to be cut where not all are. */
export interface Job {
  readonly divisions: number;
  /** In the order they are to be cut; left out, all in the order the moves reach them. */
  readonly teeth?: readonly number[];
}

const mostPositions = 1000;

/** Writes the sheet of one job: the setting, every position with a box to tick, checks on the way, cautions. */
export function jobOf(head: Head, edition: Edition, job: Job): Book {
  const [setting] = indexDivisions(head, job.divisions, { limit: 1 }).settings;
  if ((job.teeth?.length ?? job.divisions) > mostPositions) {
    throw new InputError([
      {
        place: "job",
        problem: `${job.divisions} positions are too many for a job sheet; give at most ${mostPositions}, or name the teeth`,
      },
    ]);
  }
  if (setting && !prove(setting, { walk: true }).closes) {
    throw new Error(`turns-and-holes is at fault, please report it: ${JSON.stringify(setting)} does not close when walked`);
  }
  const part = setting ? withSetting(head, job, setting) : byReading(head, job);
  return {
    title: head.name,
    subject: `Job sheet: ${job.divisions} divisions on a worm ratio of ${ratioInWords(head.wormRatio)}`,
    digest: edition.digest,
    running: runningOf(head, edition),
    parts: [part],
    sheetsStandAlone: false,
  };
}

function withSetting(head: Head, job: Job, setting: Setting): Part {
  return {
    id: "job",
    title: `${job.divisions} divisions`,
    ...(settingMarks[setting.method] === undefined ? {} : { mark: settingMarks[setting.method] ?? "" }),
    blocks: [
      { kind: "panel", items: panel(head, setting) },
      ...inWords(setting),
      ...drawing(head, setting),
      {
        kind: "list",
        items: [
          {
            term: "Before cutting",
            text: "Stop pin, gears, lock: as above. Once round with a light mark; the last mark must fall on the first.",
          },
          {
            term: "Each move",
            text: "Unlock, move, pin home, arms round to the pin, lock, cut, tick. Past the hole: back half a turn and come forward again.",
          },
          ...checks(head, setting),
        ],
      },
      positionsTable(head, job, setting),
      {
        kind: "paragraph",
        style: "caution",
        text: "Stop the cutter before reaching near it. Lock before each cut. The machine’s manual, local rules and qualified practice come first.",
      },
      { kind: "ruled", text: "Notes: part, material, cutter, depth, date", lines: 5 },
    ],
  };
}

/** What is set large on every page of a job, by its method. */
export const settingMarks: Readonly<Partial<Record<Setting["method"], string>>> = {
  differential: "GEARS",
  compound: "TWO MOVES",
  direct: "DIRECT",
  dial: "DIAL",
};

/** A large figure with what it is. */
export interface PanelItem {
  readonly head: string;
  readonly figure: string;
  readonly under: string;
}

/** The figures that the hand sets, to be read from the machine. */
export function panel(head: Head, setting: UnprovedSetting): readonly PanelItem[] {
  const { turns, spaces, circle, armsEnclose, method, second, teethPerMove } = setting;
  const several =
    teethPerMove > 1 ? [{ head: "TEETH A MOVE", figure: String(teethPerMove), under: `${teethPerMove} times round` }] : [];
  const whole = { head: "TURNS", figure: String(turns), under: "whole turns" };
  if (method === "dial") return [whole, ...dialItems(head, spaces), ...several];
  const items = [
    { head: "CIRCLE", figure: circle === null ? "any" : String(circle), under: `plate ${plateOf(head, setting)}` },
    ...(method === "direct" ? [] : [whole]),
    { head: "SPACES", figure: String(spaces), under: method === "direct" ? "worm out of mesh" : "then on" },
    ...(armsEnclose === null ? [] : [{ head: "ARMS ENCLOSE", figure: String(armsEnclose), under: "holes" }]),
  ];
  if (!second) return [...items, ...several];
  return [
    ...items,
    { head: "REAR CIRCLE", figure: String(second.circle), under: "second move" },
    { head: "SPACES", figure: String(second.spaces), under: `${second.direction} the first` },
    ...several,
  ];
}

function dialItems({ dial }: Head, places: number): readonly PanelItem[] {
  const lines = dial?.vernierLines ?? 1;
  const marks = { head: "MARKS", figure: String(Math.floor(places / lines)), under: `of ${dial?.marksPerTurn}` };
  return lines === 1 ? [marks] : [marks, { head: "VERNIER", figure: String(places % lines), under: `lines of ${lines}` }];
}

/** Stop pin, gears and second move in a sentence. */
export function inWords(setting: UnprovedSetting): Block[] {
  const { gears, second, plateStopPin, method } = setting;
  const pin = plateStopPin === null ? "Worm out of mesh." : `Plate stop pin ${plateStopPin.toUpperCase()}.`;
  if (second) {
    return [
      {
        kind: "paragraph",
        style: "strong",
        text: `${pin} Two moves for each division. First the crank as above, the rear pin holding the plate. Then crank and plate together, ${second.direction} the first move, ${counted(second.spaces, "space")} on the ${second.circle} circle at the rear pin.`,
      },
    ];
  }
  if (!gears)
    return [
      {
        kind: "paragraph",
        style: "strong",
        text: method === "dial" ? "By the dial: read on from the mark you stand on." : `${pin} No gears.`,
      },
    ];
  const [spindle, studDriver] = gears.drivers;
  const stud = studDriver === undefined ? "no stud gears" : `stud ${gears.driven[0]} (driven) and ${studDriver} (driver)`;
  return [
    {
      kind: "paragraph",
      style: "strong",
      text: `${pin} Gears: spindle ${spindle}, ${stud}, worm shaft ${gears.driven.at(-1)}, ${counted(gears.idlers, "idler")}. In one turn of the spindle the plate makes ${mixed(gears.platePerSpindle).replace("−", "")} turns ${gears.direction} the crank. Without the gears this move gives ${withoutGears(setting)}.`,
    },
    ...(gears.mayFoul === null
      ? []
      : [
          {
            kind: "paragraph",
            style: "caution",
            text: `May foul: ${gears.mayFoul}. Try the train before you rely on it.`,
          } as const,
        ]),
  ];
}

function drawing(head: Head, { circle, spaces, plate, face, method, gears }: Setting): Block[] {
  const circles = head.plates.find(({ name }) => name === plate)?.faces.find(({ name }) => name === face)?.circles;
  const plates: Block[] =
    circles === undefined || circle === null || method === "direct"
      ? []
      : [
          {
            kind: "figure",
            share: 0.5,
            figure: { type: "plate", circles, chosen: { circle, spaces } },
            alt: `Plate ${plate} with the arms on the ${circle} circle, ${counted(spaces, "space")}`,
            caption: `The ${circle} circle with the arms set: ${counted(spaces, "space")}, ${spaces + 1} holes.`,
          },
        ];
  if (!gears) return plates;
  return [
    ...plates,
    {
      kind: "figure",
      figure: { type: "train", drivers: gears.drivers, driven: gears.driven, idlers: gears.idlers },
      alt: `Gear train: spindle ${gears.drivers[0]}, worm shaft ${gears.driven.at(-1)}`,
      caption: "The train. Idlers of any size that reach; arrows when the spindle gear turns clockwise as drawn.",
    },
  ];
}

/** Where to look on the way: after a quarter, a half and three quarters of the moves. */
function checks(head: Head, setting: Setting): { term: string; text: string }[] {
  return checkPositions(setting, { head }).map((position) => ({
    term: `After ${position.move}`,
    text: [
      `tooth ${position.tooth}`,
      ...(position.hole === null ? [] : [`hole ${position.hole}`]),
      ...(position.ring && head.ring ? [`ring ${readingOf(position.ring, head.ring)}`] : []),
      `the work stands at ${formatAngle(position.angle)}`,
    ].join(", "),
  }));
}

function positionsTable(head: Head, { teeth }: Job, setting: Setting): Block {
  const all = positions(setting, { head, ...(teeth === undefined ? {} : { teeth }) });
  const chosen = teeth !== undefined;
  return {
    kind: "table",
    title: { text: "Positions", anchor: "positions" },
    folds: true,
    summary: "Positions of the job",
    columns: [
      { head: "", align: "center" },
      { head: "tooth", align: "right", strong: true },
      ...(chosen
        ? ([
            { head: "moves\nfrom last", align: "right" },
            { head: "turns", align: "right", strong: true },
            { head: "spaces", align: "right", strong: true },
          ] as const)
        : ([{ head: "turns\nin all", align: "right" }] as const)),
      ...(setting.circle === null ? [] : [{ head: "hole", align: "right", strong: true } as const]),
      ...(setting.second ? [{ head: "rear\nhole", align: "right", strong: true } as const] : []),
      { head: "angle", align: "right" },
      ...scaleColumns(head),
    ],
    rows: all.map((position) => positionRow(head, position, chosen, setting)),
  };
}

function scaleColumns({ ring, dial }: Head): Column[] {
  return [
    ...(ring ? [{ head: "ring", align: "right" } as const] : []),
    ...(dial ? [{ head: "dial", align: "right" } as const] : []),
  ];
}

function positionRow(
  head: Head,
  { tooth, from, turns, hole, rearHole, angle, ring, dial }: Position,
  chosen: boolean,
  setting: Setting,
): Row {
  const cells: Cell[] = [
    { text: "", box: true },
    { text: String(tooth) },
    ...(chosen
      ? [{ text: String(from.moves) }, { text: String(from.turns) }, { text: String(from.spaces) }]
      : [{ text: String(turns) }]),
    ...(setting.circle === null ? [] : [{ text: String(hole) }]),
    ...(rearHole === undefined ? [] : [{ text: String(rearHole) }]),
    { text: formatAngle(angle) },
    ...(ring && head.ring ? [{ text: readingOf(ring, head.ring) }] : []),
    ...(dial && head.dial ? [{ text: `${dial.turns} + ${readingOf(dial, head.dial)}` }] : []),
  ];
  return { cells };
}

/** A count that nothing closes: every position from one zero, with its error, where there is a scale. */
function byReading(head: Head, { divisions }: Job): Part {
  const scale = head.dial !== null || head.ring !== null;
  if (!scale) {
    throw new InputError([
      {
        place: "job",
        problem: `${divisions} divisions cannot be done exactly on this head, and it has neither ring nor dial to read; look the count up for the routes that remain`,
      },
    ]);
  }
  const { worstDial, worstRing } = dialReadings(head, divisions);
  const worst = Math.abs((worstDial ?? worstRing)?.arcSeconds ?? 0);
  return {
    id: "job",
    title: `${divisions} divisions, not exact`,
    mark: "NOT EXACT",
    warning: `No exact setting closes on this head. By readings from one zero no position is more than ${Math.round(worst * 10) / 10}″ from its place.`,
    blocks: [
      ...degreeTable(head, divisions, true),
      { kind: "ruled", text: "Notes: part, material, cutter, depth, date", lines: 5 },
    ],
  };
}
