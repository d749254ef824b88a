import { InputError } from "../../src/index.ts";
import { put, type Question } from "./question.ts";

/** What one question took, of this process alone. */
export interface Taken {
  readonly cpuSeconds: number;
  /** The most memory that the process ever held, in megabytes. */
  readonly peakMegabytes: number;
  /** The first words of the refusal, where it was refused. */
  readonly refused: string | null;
}

// Each question comes as a message and is answered with what it took.
process.on("message", (question: Question) => {
  const before = process.cpuUsage();
  let refused: string | null = null;
  try {
    put(question);
  } catch (error) {
    // A refusal is an answer; anything else ends the process, which is found out.
    if (!(error instanceof InputError)) throw error;
    refused = error.message.slice(0, 100);
  }
  const { user, system } = process.cpuUsage(before);
  const taken: Taken = { cpuSeconds: (user + system) / 1e6, peakMegabytes: process.resourceUsage().maxRSS / 1e3, refused };
  process.send?.(taken);
});
