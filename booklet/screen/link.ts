import { checkHead, type Head, parseAngle, type Revolutions, type Target } from "../../src/index.ts";
import { fingerprint } from "./heads.ts";
import type { GearTyped, Job, Work } from "./job.ts";
import { numbersTyped, numberTyped, refuseTyped, wholeTyped } from "./numbers-typed.ts";

/** Everything that a link of a job may say; the compiler holds what is written to it. */
const names = [
  "job",
  "head",
  "spec",
  "divisions",
  "angle",
  "repair",
  "module",
  "dp",
  "pressure-angle",
  "damaged",
  "backlash",
  "teeth",
  "way",
  "hole",
  "at",
  "side",
  "done",
] as const;
type Name = (typeof names)[number];
type Said = readonly (readonly [Name, string | number])[];

/**
 * A job as the end of a link. Heads that every copy of the page knows are named; another is written out.
 *
 * @param known - The heads that the page has of itself.
 */
export function linkOf(job: Job, known: readonly Head[]): string {
  const { head, way, startHole, startAngle, side, done } = job;
  const mark = fingerprint(head);
  const isKnown = known.some((each) => fingerprint(each) === mark);
  const said: Said = [
    ["job", ""],
    isKnown ? ["head", `${head.id}~${mark}`] : ["spec", JSON.stringify(head)],
    ...workSaid(job.work),
    ...(way === null ? [] : ([["way", way]] as const)),
    ...(startHole === 0 ? [] : ([["hole", startHole]] as const)),
    ...(startAngle === "0" ? [] : ([["at", startAngle]] as const)),
    ...(side === "plus" ? [] : ([["side", side]] as const)),
    ["done", done],
  ];
  return `#${new URLSearchParams(said.map(([name, value]): [string, string] => [name, String(value)]))}`;
}

function workSaid(work: Work): Said {
  switch (work.kind) {
    case "divide": {
      const { target, teeth } = work;
      return [
        "divisions" in target ? ["divisions", target.divisions] : ["angle", target.angle],
        ...(teeth === null ? [] : ([["teeth", teeth.join(",")]] as const)),
      ];
    }
    case "repair": {
      const { teeth, pitch, system, pressureAngle, damaged, backlash } = work.gear;
      return [
        ["repair", teeth],
        [system, pitch],
        ["pressure-angle", pressureAngle],
        ["damaged", damaged.join(",")],
        ...(backlash === null ? [] : ([["backlash", backlash]] as const)),
      ];
    }
  }
}

/**
 * Reads the job of a link. What a part says is held to the job where that is planned.
 *
 * @throws {@link InputError} in a sentence where the link is none of a job, or its head is not here.
 */
export function jobOf(said: URLSearchParams, known: readonly Head[]): Job {
  const stray = [...said.keys()].find((name, index, all) => !names.some((each) => each === name) || all.indexOf(name) < index);
  if (stray !== undefined) refuseTyped("link", `has "${stray.slice(0, 30)}" where no job has it; copy the whole link again`);
  const side = said.get("side") ?? "plus";
  if (side !== "plus" && side !== "minus") refuseTyped("side", `"${side.slice(0, 30)}" is no side; it is plus or minus`);
  return {
    head: headOf(said, known),
    work: workOf(said),
    way: said.get("way"),
    startHole: wholeTyped(said.get("hole") ?? "0", "hole"),
    startAngle: said.has("at") ? parseAngle(`${said.get("at")} rev`) : ("0" as Revolutions),
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
  const teeth = said.get("teeth");
  return { kind: "divide", target, teeth: teeth === null ? null : numbersTyped(teeth, "teeth") };
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
