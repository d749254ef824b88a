import { readFileSync } from "node:fs";
import { brotliDecompressSync } from "node:zlib";
import type { Answer, HeadInShort, Method, NearSetting, Route, Setting } from "../../src/index.ts";

/** Why a method could not do a count, as 0.1 said it. */
export interface SentenceThen {
  readonly method: Method;
  readonly why: string;
}

/** An answer as version 0.1 gave it. Its settings are of the shapes of today. */
export interface AnswerThen extends Record<keyof Answer, unknown> {
  readonly head: HeadInShort;
  readonly target: { readonly divisions: number };
  readonly settings: readonly Setting[];
  readonly complete: boolean;
  readonly passedOver: readonly SentenceThen[];
  readonly impossible: { readonly teethPerMoveTried: number; readonly reasons: readonly SentenceThen[] } | null;
  readonly near: readonly NearSetting[];
  readonly routes: readonly Route[];
}

/** The answers of version 0.1 for every ready head and 2 to 400, near settings among them. */
export function answersThen(): readonly AnswerThen[] {
  const lines = brotliDecompressSync(readFileSync("test/golden/answers-0.1.jsonl.br")).toString().trim().split("\n");
  return lines.map((line): AnswerThen => JSON.parse(line));
}

/**
 * What of a value of then is not held by that of today: keys that are gone, and values that differ, each
 * by its place. Keys that are new are no difference.
 */
export function differences(then: unknown, now: unknown, place = ""): readonly string[] {
  if (Object.is(then, now)) return [];
  if (!isObject(then) || !isObject(now) || Array.isArray(then) !== Array.isArray(now)) {
    return [`${place}: ${JSON.stringify(then)} is ${JSON.stringify(now)}`];
  }
  const inside = Object.entries(then).flatMap(([key, value]) => differences(value, now[key], `${place}.${key}`));
  return Array.isArray(then) && then.length !== now.length
    ? [`${place}: ${then.length} of then are ${now.length}`, ...inside]
    : inside;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}
