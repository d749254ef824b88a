import { type ChildProcess, fork } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { Taken } from "./child.ts";
import type { Question } from "./question.ts";

/** Puts questions to processes that may be given up. */
export interface Asker {
  /** What a question took; null where the process was given up, or fell over. */
  take(question: Question): Promise<Taken | null>;
  end(): void;
}

const program = fileURLToPath(new URL("child.js", import.meta.url));

/**
 * Questions one after the other to one process.
 *
 * @param mostSeconds - After so many the process is given up, and the next question gets a new one.
 * @param fresh - A new process for every question: only so is the memory that of the question.
 */
export function asker(mostSeconds: number, fresh: boolean): Asker {
  let child: ChildProcess | null = null;
  const end = () => {
    child?.kill("SIGKILL");
    child = null;
  };
  return {
    async take(question) {
      const asked = child ?? fork(program, { stdio: "ignore" });
      child = asked;
      const taken = await new Promise<Taken | null>((done) => {
        const timer = setTimeout(() => done(null), 1000 * mostSeconds);
        const finish = (found: Taken | null) => {
          clearTimeout(timer);
          done(found);
        };
        asked.once("message", (found) => finish(found as Taken));
        asked.once("exit", () => finish(null));
        asked.send(question);
      });
      asked.removeAllListeners();
      if (fresh || taken === null) end();
      return taken;
    },
    end,
  };
}
