import { checkIsHead } from "../head/check-is-head.ts";
import type { Head } from "../head/head.ts";
import { oneOf } from "../number/check-options.ts";
import { refuse } from "../number/errors.ts";
import { checkMove } from "../setting/check-move.ts";
import type { Kind } from "../setting/kind.ts";
import type { Method, UnprovedSetting } from "../setting/setting.ts";
import type { Target } from "../setting/target.ts";
import { compound } from "./compound.ts";
import { dial } from "./dial.ts";
import { differential } from "./differential.ts";
import { direct } from "./direct.ts";
import type { Law, Trial } from "./law.ts";
import type { HeadLayout } from "./layout.ts";
import { simple } from "./simple.ts";
import type { WhyNot } from "./why-not.ts";
import { wideRange } from "./wide-range.ts";

/** Every method with its law: the one place where a method is known to the search. */
const laws = { direct, simple, "wide-range": wideRange, differential, compound, dial } satisfies {
  readonly [M in Method]: Law<M>;
};

/** A law whose own kinds and settings are those it is asked for; the registry pairs them rightly. */
interface AnyLaw {
  readonly places: Readonly<Partial<Record<Kind, number>>>;
  readonly plain: boolean;
  find(kind: Kind, layout: HeadLayout, trial: Trial): Iterable<UnprovedSetting>;
  lacks(setting: UnprovedSetting, head: Head): string | null;
  whyNot(layout: HeadLayout, target: Target, teethPerMove: number): WhyNot;
}

function lawOf(method: Method): AnyLaw {
  return laws[method] as unknown as AnyLaw;
}

const kinds = (Object.keys(laws) as Method[])
  .flatMap((method) => Object.entries(lawOf(method).places).map(([kind, place]) => ({ kind: kind as Kind, place, method })))
  .sort((a, b) => a.place - b.place);

/**
 * The order in which settings are preferred: least work and least to go wrong first. `may-foul` is
 * last: every setting that fits is preferred to it.
 */
export const orderOfPreference: readonly Kind[] = Object.freeze(kinds.map(({ kind }) => kind));

/** All methods, in the order of preference. */
export const allMethods: readonly Method[] = Object.freeze([...new Set(kinds.map(({ method }) => method))]);

/** The methods that are tried where none are named: all, but for that of a small crank where a head has none. */
export function usualMethods({ smallCrank }: Pick<Head, "smallCrank">): readonly Method[] {
  return smallCrank === undefined ? withoutSmallCrank : allMethods;
}

const withoutSmallCrank: readonly Method[] = allMethods.filter((method) => method !== "wide-range");

/** The methods that go by plates alone: one expects to be told why they do not serve. */
export const plainMethods: readonly Method[] = allMethods.filter((method) => lawOf(method).plain);

const methodByKind = Object.fromEntries(kinds.map(({ kind, method }) => [kind, method])) as Readonly<Record<Kind, Method>>;

/** The method that a kind of setting is of. */
export function methodOf(kind: Kind): Method {
  return methodByKind[kind];
}

/** Whether a head has what a method goes by at all: every one but direct indexing goes by the crank. */
export function canTry(method: Method, { wormRatio }: Pick<Head, "wormRatio">): boolean {
  return wormRatio !== null || method === "direct";
}

/** The settings of a kind, best first, each found only when asked for. */
export function settingsOfKind(kind: Kind, layout: HeadLayout, trial: Trial): Iterable<UnprovedSetting> {
  if (!canTry(methodByKind[kind], layout.head)) return [];
  return lawOf(methodByKind[kind]).find(kind, layout, trial);
}

/** Why a method cannot do a target, once it was tried in vain. */
export function whyNotBy(method: Method, layout: HeadLayout, target: Target, teethPerMove: number): WhyNot {
  if (!canTry(method, layout.head)) return { code: "without", part: "crank" };
  return lawOf(method).whyNot(layout, target, teethPerMove);
}

/** What a head lacks to make a setting, as a part of a sentence; null where it has all that it takes. */
export function lackOf(setting: UnprovedSetting, head: Head): string | null {
  if (setting.wormRatio !== head.wormRatio)
    return `is for a worm ratio of ${setting.wormRatio}; the head has ${head.wormRatio ?? "no crank"}`;
  return lawOf(setting.method).lacks(setting, head);
}

/**
 * Checks that a setting can be set up on a head: that the head has its ratio, plate, circles,
 * pins and gears, and that its idlers turn the plate the way the setting says.
 *
 * @throws {@link InputError} that names what the head lacks, or says that it is no setting or no head.
 *
 * @example
 * ```ts
 * typeof checkOwned(indexDivisions(readyHeads[0], 97).settings[0], readyHeads[0]); // "undefined"
 * ```
 */
export function checkOwned(setting: UnprovedSetting, head: Head): void {
  checkIsHead(head);
  checkMove(setting);
  oneOf(setting.method, allMethods, "setting.method");
  const lack = lackOf(setting, head);
  if (lack !== null) refuse("not-owned", "setting", lack);
}
