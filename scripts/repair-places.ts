import type {
  Head,
  MoveBetween,
  NearRecut,
  Position,
  RecutPlan,
  RecutPurpose,
  RepairOnHead,
  Setting,
  UnprovedSetting,
} from "../src/index.ts";
import { errorWords, moveWords, scaleColumns } from "./position-words.ts";
import { type Column, table } from "./table.ts";
import { degrees, paragraph } from "./words.ts";

/** A place of the repair, however it is reached. */
interface Row {
  readonly toothSpace: number;
  readonly purpose: RecutPurpose;
  readonly dial: Position["dial"];
  readonly ring: Position["ring"];
}

const purposes: Readonly<Record<RecutPurpose, string>> = { "set the cutter": "START", recut: "cut", "prove the count": "prove" };

/** The moves from the sound space to every space to be recut, and on to the one that proves the count. */
export function placeLines(job: RepairOnHead, head: Head): string[] {
  const { setting, moves, repair } = job;
  const [near] = job.near;
  const rows = setting === null ? nearTable(near, repair.plan, head) : exactTable(setting, moves, repair.plan, head);
  const made = setting ?? (near?.by === "moves" ? near.setting : null);
  const crank =
    made === null || made.method === "dial"
      ? ""
      : ` Go on by ${made.method === "direct" ? "spaces" : "turns + spaces"} from the line before.`;
  return [
    paragraph(
      `START: a sound space. Set the cutter in it, then the scales to its line.${crank} * marks a built-up tooth; a flank without it is sound: it guides, do not cut it.`,
    ),
    "",
    ...rows,
    "",
    paragraph(
      "PROVE: a sound space past the last cut. Before any metal is cut go there with the cutter stopped and see that it drops in; if not, the count or the setting is wrong. Then go back past START and come up to it again, not on round: the holes would be others, and a near setting further off.",
    ),
  ];
}

function exactTable(setting: Setting, moves: RepairOnHead["moves"], plan: RecutPlan, head: Head): string[] {
  const rows = moves.map(({ position, ...place }) => ({ ...place, ...position }));
  return table([...placeColumns(rows, plan), ...crankColumns(rows, setting), ...checkColumns(rows, setting, head)]);
}

function nearTable(near: NearRecut | undefined, plan: RecutPlan, head: Head): string[] {
  if (near === undefined) return [];
  const error: Column = { head: "off by", cells: near.places.map(errorWords) };
  if (near.by === "moves") {
    const rows = near.places.map(({ position, ...place }) => ({ ...place, ...position }));
    return table([...placeColumns(rows, plan), ...crankColumns(rows, near.setting), error, ...ringColumn(rows, head)]);
  }
  const { places, circle } = near;
  if (circle === null)
    return table([...placeColumns(places, plan), ...scaleColumns(places, head), ...(near.by === "ring" ? [error] : [])]);
  const holes = places.map(({ hole }) => `${hole?.turns} t + ${hole?.hole}`);
  return table([
    ...placeColumns(places, plan),
    { head: `hole of ${circle.holes}`, cells: holes },
    error,
    ...ringColumn(places, head),
  ]);
}

/** Where ring and dial then stand; by the dial they are what is set, else only a check. */
function checkColumns(rows: RepairOnHead["moves"][number]["position"][], setting: Setting, head: Head): Column[] {
  const scales = scaleColumns(rows, head);
  if (setting.method === "dial") return scales;
  const wide = setting.second !== undefined || head.dial !== null;
  return [
    ...scales.filter((column) => column.head !== "off by"),
    ...(wide ? [] : [{ head: "angle", cells: rows.map(({ angle }) => degrees(angle)) }]),
  ];
}

function ringColumn(rows: readonly Row[], head: Head): Column[] {
  return scaleColumns(rows, { ...head, dial: null });
}

function placeColumns(rows: readonly Pick<Row, "toothSpace" | "purpose">[], plan: RecutPlan): Column[] {
  const built = new Set(plan.damaged);
  const tooth = (number: number) => `${number}${built.has(number) ? "*" : ""}`;
  return [
    { head: "space", cells: rows.map(({ toothSpace }) => String(toothSpace)) },
    { head: "do", cells: rows.map(({ purpose }) => purposes[purpose]) },
    { head: "between", cells: rows.map(({ toothSpace }) => `${tooth(toothSpace)} | ${tooth((toothSpace % plan.teeth) + 1)}`) },
  ];
}

interface CrankRow {
  readonly from: MoveBetween;
  readonly turns: number;
  readonly hole: number | null;
  readonly rearHole?: number;
}

/** How the crank gets there, and where the pin then stands. */
function crankColumns(rows: readonly CrankRow[], setting: UnprovedSetting): Column[] {
  if (setting.method === "dial") return [];
  const { circle, second, method } = setting;
  return [
    { head: "go on by", cells: rows.map(({ from }, index) => (index === 0 ? "start" : moveWords(from, setting))) },
    ...(circle === null || method === "direct" ? [] : [{ head: "turns", cells: rows.map(({ turns }) => String(turns)) }]),
    ...(circle === null ? [] : [{ head: "hole", cells: rows.map(({ hole }) => String(hole)) }]),
    ...(second ? [{ head: "rear", cells: rows.map(({ rearHole }) => String(rearHole)) }] : []),
  ];
}
