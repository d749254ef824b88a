import type { Answer } from "../answer.ts";
import type { Head } from "../head/head.ts";
import type { Impossible, Reason } from "../instead/impossible.ts";
import type { Route } from "../instead/routes.ts";
import { canTry } from "../methods/registry.ts";
import { formatAngle } from "../number/angle.ts";
import type { Untried } from "../search/efforts.ts";
import type { NearSetting } from "../setting/near-setting.ts";
import type { Target } from "../setting/target.ts";
import type { Item } from "./item.ts";
import { methodWords } from "./methods.ts";
import { arcUpTo, counted } from "./numbers.ts";
import { shortSetting } from "./setting-words.ts";
import { whyNotWords } from "./why-not-words.ts";

/** What was asked for: `127 DIVISIONS`, `ANGLE 2° 54′ 00″`. */
export function targetWords(target: Target): string {
  return "divisions" in target ? counted(target.divisions, "division").toUpperCase() : `ANGLE ${formatAngle(target.angle, 2)}`;
}

/** What the places of a target are called. */
export function placeNoun(target: Target): "tooth" | "place" {
  return "divisions" in target ? "tooth" : "place";
}

/** The head in one line: its name, and its ratio where the name does not say it. */
export function headLine({ name, wormRatio }: Pick<Head, "name" | "wormRatio">): string {
  if (wormRatio === null) return name;
  const ratio = `${wormRatio}:1`;
  return name.includes(ratio) ? name : `${name} (${ratio})`;
}

/** Why methods cannot do a target, those that one would expect of this head. */
export function reasonItems(reasons: readonly Reason[], head: Head): readonly Item[] {
  return reasons
    .filter(({ method }) => canTry(method, head) && methodWords[method].isExpected(head))
    .map((reason) => ({ term: methodWords[reason.method].name, text: whyNotWords(reason) }));
}

/** Why the methods that would be preferred to the setting found cannot do it. */
export function passedOverItems({ passedOver }: Answer, head: Head): readonly Item[] {
  return reasonItems(passedOver, head).map(({ term, text }) => ({ term: `Not ${term.toLowerCase()}`, text }));
}

/** What was tried where a count is impossible; empty where there was one number of teeth to try. */
export function triedWords({ impossible, target }: Answer): string {
  const most = impossible?.teethPerMoveTried ?? 1;
  return most > 1 && "divisions" in target ? `Moves of 1 to ${most} teeth were tried.` : "";
}

const untriedParts: Readonly<Record<Untried["code"], string>> = {
  settings: "settings",
  near: "near settings",
  "nearest-counts": "counts nearby",
  "gears-to-add": "gears to add",
};

/** That there may be more than an answer holds; empty where everything was tried. */
export function untriedWords(untried: readonly Untried[]): string {
  if (untried.length === 0) return "";
  const parts = untried.map(({ code }) => untriedParts[code]).join(", ");
  return `This head has so many circles or gears that not everything was tried. There may be others, and better ones, of: ${parts}.`;
}

/** Of a count that has no setting where not everything was tried: it is not shown that there is none. */
export const notFoundWords = "not found in the work allowed";

/** Whether it is shown that a target is impossible, and not merely not found. */
export function isShownImpossible({ reasons }: Impossible): boolean {
  return reasons.every(({ code }) => code !== "not-all-tried");
}

/** How it is shown that a target is impossible, where {@link isShownImpossible}. */
export const shownImpossible =
  "Shown, and not merely not found: for direct, simple and compound indexing and for the dial the condition named is needed, and it is enough; for differential indexing every circle, every train and every number of teeth named was tried.";

const routeTerms: Readonly<Record<Route["kind"], string>> = {
  method: "Another way",
  gears: "Add gears",
  circle: "Drill a circle",
  "direct-plate": "Add a plate",
  count: "Another count",
  near: "Near settings",
};
const mostOfAKind = 4;

/** The ways on where a count is impossible, the least effort first; a kind is named once. */
export function routeItems({ routes }: Answer): readonly Item[] {
  const all: readonly Route[] = routes;
  return all.flatMap((route, index) => {
    const before = all.slice(0, index).filter(({ kind }) => kind === route.kind).length;
    return before < mostOfAKind ? [{ term: before === 0 ? routeTerms[route.kind] : "", text: routeWords(route) }] : [];
  });
}

function nearestWords({ worstArcSeconds }: NearSetting): string {
  return worstArcSeconds === 0 ? "the ring, read by eye" : `${arcUpTo(worstArcSeconds)} off at its worst`;
}

function routeWords(route: Route): string {
  switch (route.kind) {
    case "method":
      return shortSetting(route.setting);
    case "gears":
      return `${route.add.join(" and ")} teeth: then ${shortSetting(route.setting)}`;
    case "count":
      return `${route.divisions} can be done: ${shortSetting(route.setting)}`;
    case "direct-plate":
      return `of ${counted(route.holes, "hole")}, or a gear of as many teeth, or of a multiple`;
    case "near":
      return `the best is ${nearestWords(route.setting)}; see below`;
    case "circle": {
      const [first, ...others] = route.circles;
      const or = others.length > 0 ? `, or ${others.join(", ")}` : "";
      return `of ${first} holes${or}: then ${route.setting.turns} + ${route.setting.spaces} of ${first}`;
    }
  }
}
