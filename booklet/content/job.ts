import {
  checkPositions,
  dialReadings,
  formatAngle,
  type Head,
  InputError,
  indexDivisions,
  prove,
  type Setting,
} from "../../src/index.ts";
import type { Edition } from "../edition.ts";
import type { Book, Part } from "./blocks.ts";
import { runningOf } from "./book.ts";
import { degreeTable } from "./degrees-part.ts";
import { byHoles, dialInWords, positionsTable } from "./job-positions.ts";
import { drawing, inWords, panel, settingMarks } from "./job-setting.ts";
import { ratioInWords, readingOf } from "./words.ts";

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
        code: "too-many",
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
        kind: "paragraph",
        style: "caution",
        text: "Stop the cutter before reaching near it. Lock before each cut. The machine’s manual, local rules and qualified practice come first.",
      },
      {
        kind: "list",
        items: [...habits(setting), ...checks(head, setting)],
      },
      positionsTable(head, job, setting),
      { kind: "ruled", text: "Notes: part, material, cutter, depth, date", lines: 5, least: 2 },
    ],
  };
}

/** What is done before the first cut and at each move. */
function habits(setting: Setting): { term: string; text: string }[] {
  const [setUp, home, place] = byHoles(setting)
    ? ["Stop pin, gears, lock: as above", "pin home, arms round to the pin, ", "hole"]
    : ["Dial and ring to zero on the first tooth", "", "mark"];
  return [
    {
      term: "Before cutting",
      text: `${setUp}. Once round with a light mark; the last mark must fall on the first.`,
    },
    {
      term: "Each move",
      text: `Unlock, move, ${home}lock, cut, tick. Past the ${place}: back half a turn and come forward again.`,
    },
  ];
}

/** Where to look on the way: after a quarter, a half and three quarters of the moves. */
function checks(head: Head, setting: Setting): { term: string; text: string }[] {
  return checkPositions(setting, { head }).map((position) => ({
    term: `After ${position.move}`,
    text: [
      `tooth ${position.tooth}`,
      ...(position.hole === null || !byHoles(setting) ? [] : [`hole ${position.hole}`]),
      ...(position.dial && head.dial && !byHoles(setting) ? [`dial ${dialInWords(position.dial, head.dial)}`] : []),
      ...(position.ring && head.ring ? [`ring ${readingOf(position.ring, head.ring)}`] : []),
      `the work stands at ${formatAngle(position.angle)}`,
    ].join(", "),
  }));
}

/** A count that nothing closes: every position from one zero, with its error, where there is a scale. */
function byReading(head: Head, { divisions }: Job): Part {
  const scale = head.dial !== null || head.ring !== null;
  if (!scale) {
    throw new InputError([
      {
        code: "not-owned",
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
      { kind: "ruled", text: "Notes: part, material, cutter, depth, date", lines: 5, least: 2 },
    ],
  };
}
