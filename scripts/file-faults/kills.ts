import { spawn } from "node:child_process";
import { readdirSync, readFileSync, watch } from "node:fs";
import { join } from "node:path";
import { chanceFrom } from "../worst/random.ts";
import { command, newFolder, shell } from "./folder.ts";

/** What became of the runs that were ended by force. */
export interface Kills {
  readonly kills: number;
  /** Runs that had ended by themselves before. */
  readonly tooLate: number;
  /** Files of the old edition, whole; of the new, whole; and places that were and stayed empty. */
  readonly old: number;
  readonly made: number;
  readonly empty: number;
  /** Under a name of its own, beside the file: what was being written. */
  readonly beside: number;
  /** Files that were lost, or there by half. */
  readonly faults: readonly string[];
}

const words = (teeth: string) => ["booklet", "--job", "97", "--teeth", teeth, "--out", "sheet.pdf"];

/** The sheet that a run left, and how long that took. */
function whole(teeth: string): { readonly bytes: Buffer; readonly milliseconds: number } {
  const { path, remove } = newFolder();
  const start = performance.now();
  shell(`$T ${words(teeth).join(" ")}`, path);
  const milliseconds = performance.now() - start;
  const bytes = readFileSync(join(path, "sheet.pdf"));
  remove();
  return { bytes, milliseconds };
}

/** Ends so many runs by force, each at another moment, half of them over an older file of the same job. */
export async function killAll(count: number, seed: number): Promise<Kills> {
  const chance = chanceFrom(seed);
  const [old, made] = [whole("1-40"), whole("1-97")];
  const tally = { kills: 0, tooLate: 0, old: 0, made: 0, empty: 0, beside: 0 };
  const faults: string[] = [];
  let shortest = made.milliseconds;
  while (tally.kills < count) {
    const { path, remove } = newFolder();
    const isOver = chance.happens(0.5);
    if (isOver) shell(`$T ${words("1-40").join(" ")}`, path);
    // Most of them just as something is written, the others at any moment.
    const isAtWriting = chance.happens(0.7);
    const after = isAtWriting ? chance.below(4) : (chance.below(100) / 100) * shortest;
    const { isKilled, milliseconds } = await ended(path, after, isAtWriting);
    if (isKilled) tally.kills += 1;
    else {
      tally.tooLate += 1;
      shortest = Math.min(shortest, milliseconds);
    }
    const names = readdirSync(path);
    tally.beside += names.filter((name) => /^\.turns-and-holes-[0-9a-f]+\.tmp$/.test(name)).length;
    const found = names.includes("sheet.pdf") ? readFileSync(join(path, "sheet.pdf")) : null;
    if (found === null && !isOver) tally.empty += 1;
    else if (found?.equals(made.bytes)) tally.made += 1;
    else if (isOver && found?.equals(old.bytes)) tally.old += 1;
    else faults.push(found === null ? "the old file is lost" : `a file of ${found.length} bytes is neither the old nor the new`);
    remove();
  }
  return { ...tally, faults };
}

/** Ends a run by force so long after its start, or after the first change in its folder; whether it was still going, and how long it went. */
function ended(
  cwd: string,
  after: number,
  isAtWriting: boolean,
): Promise<{ readonly isKilled: boolean; readonly milliseconds: number }> {
  return new Promise((done) => {
    const start = performance.now();
    const child = spawn(process.execPath, [command, ...words("1-97")], { cwd, stdio: "ignore" });
    let timer: NodeJS.Timeout | undefined;
    const endLater = () => {
      timer ??= setTimeout(() => child.kill("SIGKILL"), after);
    };
    const watcher = isAtWriting ? watch(cwd, endLater) : null;
    if (!isAtWriting) endLater();
    child.once("exit", (_, signal) => {
      clearTimeout(timer);
      watcher?.close();
      done({ isKilled: signal === "SIGKILL", milliseconds: performance.now() - start });
    });
  });
}
