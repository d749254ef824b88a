import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readyHeads } from "../../src/index.ts";
import { type Outlet, run } from "../run.ts";
import { type Chance, chanceFrom } from "../worst/random.ts";
import { gearCalls, libraryCalls } from "./calls.ts";
import { junkText, spoilt } from "./junk.ts";
import { noCrank, twoCranks } from "./other-heads.ts";
import { wordsTyped } from "./words-typed.ts";

/** What is thrown at. */
export const targets = ["command", "head-file", "library", "gear"] as const;

/** What became of one input. */
export interface Tried {
  readonly target: (typeof targets)[number];
  readonly ended: "answered" | "refused" | "at-fault";
  /** What was at fault; else nothing. */
  readonly fault: string;
  readonly milliseconds: number;
}

const folder = mkdtempSync(join(tmpdir(), "hostile-"));
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));

/** Makes the input of a seed, gives it to what it is for, and judges what comes back. */
export async function tried(seed: number): Promise<Tried> {
  const chance = chanceFrom(seed);
  const target = targets[seed % targets.length] as Tried["target"];
  const start = performance.now();
  const { ended, fault } = await thrownAt[target](chance);
  return { target, ended, fault, milliseconds: performance.now() - start };
}

type Outcome = Pick<Tried, "ended" | "fault">;

const thrownAt: Readonly<Record<Tried["target"], (chance: Chance) => Promise<Outcome>>> = {
  command: (chance) => commanded(wordsTyped(chance)),
  "head-file": (chance) => {
    const path = join(folder, "head.json");
    writeFileSync(path, headText(chance));
    const questions = [
      ["97"],
      ["2°54'"],
      ["97", "--teeth", "2,3"],
      ["table", "2-20", "--csv"],
      ["126", "--by", "moves", "--teeth", "all"],
      ["127", "--by", "both-cranks"],
      ["kit", "2-30"],
      ["booklet", "--as", "screen", "--out", "-"],
      ["booklet", "--job", "12", "--out", "-"],
    ];
    return commanded([...chance.one(questions), "--head", path]);
  },
  library: async (chance) => called(chance, libraryCalls),
  gear: async (chance) => called(chance, gearCalls),
};

/** The text of a head file with something wrong with it. */
function headText(chance: Chance): string | Uint8Array {
  const { id: _, ...head } = chance.one([...readyHeads, twoCranks, noCrank]);
  if (chance.happens(0.15)) return Uint8Array.from({ length: chance.spread(1, 5000) }, () => chance.below(256));
  const text =
    JSON.stringify(spoilt(head, chance), (_key, value: unknown) => (typeof value === "bigint" ? `${value}` : value)) ?? "";
  if (chance.happens(0.2)) return text.slice(0, chance.below(text.length + 1));
  if (chance.happens(0.2)) return text.replace(/"[^"]*"/, () => JSON.stringify(junkText(chance)));
  return chance.happens(0.1) ? `\uFEFF${text}` : text;
}

/** What a terminal would act on, and what is no sentence. */
const raw = /(?!\n|\t|\r\n)\p{Cc}|[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/u;
const trace = /\n\s+at |node:internal|\[object /;

async function commanded(words: readonly string[]): Promise<Outcome> {
  const out: Uint8Array[] = [];
  let complaint = "";
  const outlet: Outlet = {
    isTerminal: false,
    write: async (what) => void out.push(Buffer.from(what)),
    complain: (text) => {
      complaint += text;
    },
  };
  const status = await run(words, outlet);
  const bytes = Buffer.concat(out);
  const text = bytes.subarray(0, 5).toString() === "%PDF-" ? "" : bytes.toString();
  const shown = words.map((word) => word.slice(0, 80)).join(" ");
  if (status > 3) return { ended: "at-fault", fault: `${shown}: ${complaint || text}` };
  if (raw.test(text + complaint)) return { ended: "at-fault", fault: `${shown}: steers the terminal` };
  if (complaint !== "" && (complaint.trimEnd().includes("\n") || trace.test(complaint)))
    return { ended: "at-fault", fault: `${shown}: ${complaint}` };
  return { ended: status > 1 ? "refused" : "answered", fault: "" };
}

function called(chance: Chance, calls: typeof libraryCalls): Outcome {
  const [what, call, given] = chance.one(calls);
  try {
    const at = chance.below(given.length);
    const found = call(...(given.map((each, index) => (index === at ? spoilt(each, chance) : each)) as never[]));
    // What is worked out one by one is worked out here.
    if (typeof found === "object" && found !== null && Symbol.iterator in found) for (const _ of found as Iterable<unknown>);
    return { ended: "answered", fault: "" };
  } catch (error) {
    if (error instanceof Error && error.name === "InputError") return { ended: "refused", fault: "" };
    return { ended: "at-fault", fault: `${what}: ${error instanceof Error ? (error.stack ?? "").slice(0, 300) : String(error)}` };
  }
}
