import type { Taken } from "./child.ts";
import { type Asker, asker } from "./measure.ts";
import { anyQuestion, changed } from "./mutate.ts";
import type { Ask, Question } from "./question.ts";
import { chanceFrom } from "./random.ts";

/** A question and what it took; a process that was given up took more than could be waited for. */
export interface Found {
  readonly question: Question;
  readonly taken: Taken | null;
}

const kinds: readonly Ask["kind"][] = ["count", "angle", "first", "near", "table", "plan", "walk", "readings", "spacing"];
const mostSeconds = 10;
/** So many changes in vain, and the climb starts again elsewhere. */
const patience = 25;

/**
 * Climbs for a while for each kind of question: a head and a question at random, of which parts are
 * changed, and a change is kept where it takes more time or more memory.
 *
 * @param kinds - Those to climb for; the time is shared out among them.
 * @returns For each kind the question that took the most time, and the one that held the most memory.
 */
export async function climb(
  minutes: number,
  seed: number,
  only: string | undefined,
  say: (line: string) => void,
): Promise<Found[]> {
  const found: Found[] = [];
  const wanted = kinds.filter((kind) => only === undefined || only.split(",").includes(kind));
  for (const kind of wanted) {
    const until = Date.now() + (60_000 * minutes) / wanted.length;
    const worst = await climbFor(kind, seed, until);
    for (const each of worst) say(`${kind}: ${tookWords(each.taken)} ${JSON.stringify(each.question)}`);
    found.push(...worst);
  }
  return found;
}

async function climbFor(kind: Ask["kind"], seed: number, until: number): Promise<readonly Found[]> {
  const chance = chanceFrom(seed);
  const ask = asker(mostSeconds, false);
  let [slowest, largest]: [Found | null, Found | null] = [null, null];
  while (Date.now() < until) {
    const byMemory = chance.happens(0.3);
    const cost = ({ taken }: Found) => (taken === null ? mostSeconds : byMemory ? taken.peakMegabytes : taken.cpuSeconds);
    let best = await tried(anyQuestion(chance, kind), ask, byMemory);
    for (let vain = 0; vain < patience && Date.now() < until; vain += 1) {
      const next = await tried(changed(best.question, chance), ask, byMemory);
      if (cost(next) <= cost(best)) continue;
      best = next;
      vain = 0;
    }
    if (byMemory) largest = largest === null || cost(best) > cost(largest) ? best : largest;
    else slowest = slowest === null || cost(best) > cost(slowest) ? best : slowest;
  }
  ask.end();
  return [slowest, largest].filter((each) => each !== null);
}

/** Memory is that of the question only in a process of its own. */
async function tried(question: Question, ask: Asker, alone: boolean): Promise<Found> {
  if (alone) ask.end();
  return { question, taken: await ask.take(question) };
}

/** What a question took, in few words. */
export function tookWords(taken: Taken | null): string {
  if (taken === null) return "given up";
  const { cpuSeconds, peakMegabytes, refused } = taken;
  return `${cpuSeconds.toFixed(2)} s, ${peakMegabytes.toFixed(0)} MB${refused === null ? "" : `, refused: ${refused}`}`;
}
