import {
  exactSettings,
  indexDivisions,
  indexRows,
  kindOf,
  type Method,
  type NotPossible,
  type PreparedHead,
  type Proved,
  prove,
  type Setting,
  type SettingBy,
} from "../../src/index.ts";
import { isShownImpossible, kindWords } from "../../src/words/index.ts";
import { isReadHead, type ReadCount, readCount } from "./readings.ts";
import type { BookSection } from "./sections.ts";

/** A proved setting by one method. */
export type ProvedBy<M extends Method> = SettingBy<M> & Proved;

/** What the book knows of every count. */
interface EveryCount {
  readonly divisions: number;
  /** The part where it is printed. */
  readonly section: BookSection;
  /** How a head that is set by readings sets it; null on other heads, and where its places would run into each other. */
  readonly read: ReadCount | null;
  /** False where not everything was tried, so that there may be a better setting. */
  readonly complete: boolean;
  /** Every simple setting, where there is one: all owned circles that close. */
  readonly simple: readonly ProvedBy<"simple">[];
}

/** A count that the head does: by its preferred setting. */
export interface CountBy<M extends Method> extends EveryCount {
  readonly setting: ProvedBy<M>;
}

/** A count that nothing closes, with why not and what comes nearest. */
export interface CountNotPossible extends EveryCount {
  readonly setting: null;
  readonly answer: NotPossible;
}

/** All that the book knows of one count on a head. */
export type HeadCount = CountBy<Method> | CountNotPossible;

/**
 * The counts of a book, each with its settings, worked out when it is asked for; every one is turned
 * through all its moves on the model of the mechanism before it may be printed.
 */
export function* countsOneByOne(on: PreparedHead, from: number, to: number): Generator<HeadCount, undefined> {
  for (const { divisions, setting, complete } of indexRows(on, { from, to })) {
    const simple = [...exactSettings(on, { divisions }, { methods: ["simple"] })].filter(isSimple);
    for (const each of simple) walked(each, on);
    yield setting === null ? notDone(on, divisions, simple) : done(on, { divisions, simple, complete }, setting);
  }
}

type CountTried = Pick<EveryCount, "divisions" | "simple" | "complete">;

function done(on: PreparedHead, count: CountTried, setting: Setting): CountBy<Method> {
  // A simple one is among those that were walked before.
  if (setting.method !== "simple") walked(setting, on);
  const read = isReadHead(on.head) ? readCount(on, count.divisions, []) : null;
  return { ...count, section: kindWords[kindOf(setting)].section, read, setting };
}

function notDone(on: PreparedHead, divisions: number, simple: EveryCount["simple"]): HeadCount {
  const answer = indexDivisions(on, divisions);
  if (answer.exact) return done(on, { divisions, simple, complete: answer.untried.length === 0 }, answer.settings[0]);
  const read = isReadHead(on.head) ? readCount(on, divisions, answer.near) : null;
  return {
    divisions,
    section: read === null ? undone(answer) : "readings",
    read,
    simple,
    complete: answer.untried.length === 0,
    setting: null,
    answer,
  };
}

/** Impossible only where that is shown. */
function undone({ impossible }: NotPossible): BookSection {
  return isShownImpossible(impossible) ? "impossible" : "unfound";
}

function isSimple(setting: Setting): setting is ProvedBy<"simple"> {
  return setting.method === "simple";
}

/** Makes every move of a setting on the model of the head; one that does not close is our own fault. */
export function walked(setting: Setting, { head }: PreparedHead): void {
  if (!prove(setting, { walkOn: head }).closes) {
    throw new Error(`turns-and-holes is at fault, please report it: ${JSON.stringify(setting)} does not close when walked`);
  }
}
