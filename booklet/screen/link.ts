import { checkHead, type Head, parseAngle, type Target } from "../../src/index.ts";
import { fingerprint } from "./heads.ts";
import type { GearTyped, Job, Work } from "./job.ts";
import { angleTyped, numbersTyped, numberTyped, refuseTyped, teethText, teethTyped, wholeTyped } from "./numbers-typed.ts";

/** Everything that a link of a job may say, in its order; null where it says nothing of it. */
const none = {
  job: null,
  head: null,
  spec: null,
  divisions: null,
  angle: null,
  teeth: null,
  repair: null,
  module: null,
  dp: null,
  "pressure-angle": null,
  damaged: null,
  backlash: null,
  way: null,
  hole: null,
  at: null,
  side: null,
  done: null,
} as const;
type Said = Readonly<Record<keyof typeof none, string | number | null>>;

/**
 * A job as the end of a link. Heads that every copy of the page knows are named; another is written out.
 *
 * @param known - The heads that the page has of itself.
 */
export function linkOf(job: Job, known: readonly Head[]): string {
  const said = Object.entries(saidOf(job, known)).flatMap(([name, value]): [string, string][] =>
    value === null ? [] : [[name, String(value)]],
  );
  return `#${new URLSearchParams(said)}`;
}

function saidOf({ head, work, way, startHole, startAngle, side, done }: Job, known: readonly Head[]): Said {
  const mark = fingerprint(head);
  const isKnown = known.some((each) => fingerprint(each) === mark);
  return {
    ...none,
    job: "",
    ...(isKnown ? { head: `${head.id}~${mark}` } : { spec: JSON.stringify(head) }),
    ...workSaid(work),
    way,
    hole: startHole,
    at: startAngle,
    side,
    done,
  };
}

function workSaid(work: Work): Partial<Said> {
  if (work.kind === "divide") return { ...work.target, teeth: work.teeth && teethText(work.teeth) };
  const { teeth, system, pitch, pressureAngle, damaged, backlash } = work.gear;
  return { repair: teeth, [system]: pitch, "pressure-angle": pressureAngle, damaged: damaged.join(","), backlash };
}

/**
 * Reads the job of a link. What a part says is held to the job where that is planned.
 *
 * @throws {@link InputError} in a sentence where the link is none of a job, or its head is not here.
 */
export function jobOf(said: URLSearchParams, known: readonly Head[]): Job {
  const stray = [...said.keys()].find((name, index, all) => !Object.hasOwn(none, name) || all.indexOf(name) < index);
  if (stray !== undefined) refuseTyped("link", `has "${stray.slice(0, 30)}" where no job has it; copy the whole link again`);
  const side = said.get("side") ?? "plus";
  if (side !== "plus" && side !== "minus") refuseTyped("side", `"${side.slice(0, 30)}" is no side; it is plus or minus`);
  return {
    head: headOf(said, known),
    work: workOf(said),
    way: said.get("way"),
    startHole: wholeTyped(said.get("hole") ?? "0", "hole"),
    startAngle: angleTyped(said.get("at") ?? "0", "at", " rev"),
    side,
    done: wholeTyped(said.get("done") ?? "0", "done"),
  };
}

function headOf(said: URLSearchParams, known: readonly Head[]): Head {
  const spec = said.get("spec");
  if (spec !== null) return headWritten(spec);
  const [id = "", mark = ""] = (said.get("head") ?? "").split("~");
  const head = known.find((each) => each.id === id && fingerprint(each) === mark);
  return (
    head ??
    refuseTyped("head", `the link is for a head "${id.slice(0, 60)}" that is not in this page; open it in the page it is from`)
  );
}

function headWritten(spec: string): Head {
  try {
    const checked = checkHead(JSON.parse(spec));
    if (checked.ok) return checked.head;
  } catch {
    // No JSON: no head either.
  }
  return refuseTyped("head", "the link describes no head; copy the whole link again");
}

function workOf(said: URLSearchParams): Work {
  const [divisions, angle, repair] = [said.get("divisions"), said.get("angle"), said.get("repair")];
  if ([divisions, angle, repair].filter((each) => each !== null).length !== 1)
    refuseTyped("link", "names no job, or more than one; copy the whole link again");
  if (repair !== null) return { kind: "repair", gear: gearOf(said, wholeTyped(repair, "repair")) };
  const target: Target =
    divisions === null ? { angle: parseAngle(`${angle} rev`) } : { divisions: wholeTyped(divisions, "divisions") };
  return { kind: "divide", target, teeth: teethTyped(said.get("teeth") ?? "") };
}

function gearOf(said: URLSearchParams, teeth: number): GearTyped {
  const system = said.has("dp") ? "dp" : "module";
  const backlash = said.get("backlash");
  return {
    teeth,
    system,
    pitch: numberTyped(said.get(system) ?? "", system),
    pressureAngle: numberTyped(said.get("pressure-angle") ?? "20", "pressure-angle"),
    damaged: numbersTyped(said.get("damaged") ?? "", "damaged"),
    backlash: backlash === null ? null : numberTyped(backlash, "backlash"),
  };
}
