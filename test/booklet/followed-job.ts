import { type JobOptions, jobSheetPdf } from "../../booklet/index.ts";
import { cuttingOrder, defineHead, type Head, parseAngle, type Revolutions, revolutions } from "../../src/index.ts";
import { turnsOf } from "../support/bench.ts";
import { ready } from "../support/ready.ts";
import { secondHand } from "./heads.ts";
import { headAsPrinted } from "./plate-keys.ts";
import { type PrintedSheet, readSheet, said } from "./printed-sheet.ts";
import type { OnTheBench } from "./sheet-on-bench.ts";
import { type PrintedWay, wayOn } from "./sheet-setting.ts";

export const geared: Head = ready("ratio-40-plates-15-49");
export const ungeared: Head = ready("ratio-40-plates-15-49-ungeared");
const faces = ready("ratio-40-faces-24-66");
export const bare: Head = ready("ratio-90-dial");
export const withNose: Head = defineHead({ ...secondHand, ring: { marksPerTurn: 360 } });

/** A job with its sheet read back, ready to be followed by hand. */
export interface Followed {
  readonly sheet: PrintedSheet;
  readonly way: PrintedWay;
  readonly bench: OnTheBench;
}

const known = new WeakMap<Head, Map<string, Promise<Followed>>>();

/** A job printed and read back, once for all that follow it. */
export function followed(head: Head, options: JobOptions): Promise<Followed> {
  const jobsOn = known.get(head) ?? new Map<string, Promise<Followed>>();
  known.set(head, jobsOn);
  const name = JSON.stringify(options);
  const job = jobsOn.get(name) ?? printedAndRead(head, options);
  jobsOn.set(name, job);
  return job;
}

async function printedAndRead(head: Head, options: JobOptions): Promise<Followed> {
  const sheet = await readSheet(await jobSheetPdf(head, options));
  const step: Revolutions = "divisions" in options ? revolutions(1, options.divisions) : options.angle;
  const [, tooth = "", hole = "0"] = /^At tooth (\d+)(?:: pin in hole (\d+))?/.exec(said(sheet, "Start")) ?? [];
  const named = headAsPrinted(sheet.lines, head);
  const bench: OnTheBench = {
    head: named,
    step: turnsOf(step),
    startTooth: Number(tooth),
    startHole: Number(hole),
    startAngle: turnsOf(options.startAngle ?? "0"),
    side: /FALL/.test(said(sheet, "Start")) ? "minus" : "plus",
    made: options.after === undefined ? 0 : options.after - Number(tooth),
    key: "tooth",
  };
  return { sheet, way: wayOn(sheet, named, { spindlePerMove: step }), bench };
}

/** One of each way, and of what can be asked of it. */
export const jobs: readonly (readonly [string, Head, JobOptions])[] = [
  ["13, simple", geared, { divisions: 13 }],
  ["8, whole turns", geared, { divisions: 8 }],
  ["127, one pair of gears", geared, { divisions: 127 }],
  [
    "127 on a plate that is on, from hole 5, the ring falling",
    geared,
    { divisions: 127, mounted: "2", startHole: 5, startAngle: parseAngle("124°"), side: "minus" },
  ],
  ["383, several teeth a move", geared, { divisions: 383 }],
  ["53, faces and two pairs of gears", faces, { divisions: 53, mounted: "1" }],
  ["51, compound, both parts on", ungeared, { divisions: 51 }],
  ["69, compound, a part back", ungeared, { divisions: 69 }],
  ["97, near by a compound move", ungeared, { divisions: 97 }],
  ["97, near by the nearest holes, from hole 7", ungeared, { divisions: 97, by: "nearest-hole", startHole: 7 }],
  ["97 by the ring", ungeared, { divisions: 97, by: "ring", startAngle: parseAngle("10°") }],
  ["8, direct", withNose, { divisions: 8 }],
  ["64 by the dial, every place on a mark", bare, { divisions: 64 }],
  ["97 by the dial, from 12°", bare, { divisions: 97, startAngle: parseAngle("12°") }],
  ["9 by whole turns of the handwheel", bare, { divisions: 9 }],
  ["62, teeth 40, 1 and 17 alone", geared, { divisions: 62, teeth: [40, 1, 17], startTooth: 40 }],
  ["97, near, teeth 2 to 4 alone", ungeared, { divisions: 97, teeth: [2, 3, 4] }],
  ["86, what is left after tooth 80", geared, { divisions: 86, after: 80 }],
  ["2°54′", geared, { angle: parseAngle("2°54'") }],
  ["7° 12′", geared, { angle: parseAngle("7°12'") }],
  ["2°54′07″, near", ungeared, { angle: parseAngle("2°54'07\"") }],
  ["2°54′07.31″, finer than any list", ungeared, { angle: parseAngle("2°54'07.31\"") }],
  ["60 by sevens", geared, { divisions: 60, teeth: cuttingOrder(60, 7) }],
  [
    "97 by sevens, near by a move that is made for more than a round",
    ungeared,
    { divisions: 97, by: "moves", teeth: cuttingOrder(97, 7) },
  ],
];
