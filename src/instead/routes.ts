import { layOut } from "../methods/layout.ts";
import { usualMethods } from "../methods/registry.ts";
import { firstSetting, type Search, type SearchOnce } from "../search/exact-settings.ts";
import type { NearSetting } from "../setting/near-setting.ts";
import type { Setting } from "../setting/setting.ts";
import { type Target, usualTeethPerMove } from "../setting/target.ts";
import { type AddDirectPlate, directPlate } from "./direct-plate-to-add.ts";
import { fitsCommonPlate } from "./missing-circles.ts";
import { gearsThatWouldDo } from "./missing-gears.ts";

/** By a method, or with more teeth per move, than was asked for. Exact, with what is owned. */
export interface OtherMethod {
  readonly kind: "method";
  readonly setting: Setting;
}

/** With change gears added to those owned. Exact. */
export interface AddGears {
  readonly kind: "gears";
  /** Teeth of the gears to add: one, or the two of a pair. */
  readonly add: readonly number[];
  /** On the head with these gears. */
  readonly setting: Setting;
}

/** By simple indexing on a circle that is not owned. Exact. */
export interface DrillCircle {
  readonly kind: "circle";
  /** Any one of these would do; the smallest first. */
  readonly circles: readonly number[];
  /** On the first of them, on a plate of its own. */
  readonly setting: Setting;
}

/** Another count, the nearest below or above. Exact for that count. */
export interface OtherCount {
  readonly kind: "count";
  readonly divisions: number;
  readonly setting: Setting;
}

/** The best near setting: with an error, which it states. */
export interface BestNear {
  readonly kind: "near";
  readonly setting: NearSetting;
}

/** One way on where nothing closes. */
export type Route = OtherMethod | AddGears | DrillCircle | AddDirectPlate | OtherCount | BestNear;

/** What an answer has found already. */
export interface Found {
  readonly circlesThatWouldDo: readonly number[];
  readonly nearestCounts: readonly number[];
  readonly near: readonly NearSetting[];
}

/**
 * The ways on for a target that cannot be done as it was asked, in order of effort: what is owned
 * but was not asked for; gears to add; a circle to drill; the nearest counts; the best near
 * setting; last a circle too large for a common plate.
 */
export function routesFor(search: SearchOnce, target: Target, found: Found): readonly Route[] {
  const { circlesThatWouldDo, nearestCounts, near } = found;
  const circle = drillCircle(search, target, circlesThatWouldDo);
  const fits = fitsCommonPlate(circlesThatWouldDo[0] ?? 0);
  return [
    ...otherMethod(search, target),
    ...gearsThatWouldDo(search, target).map(({ teeth, setting }): Route => ({ kind: "gears", add: teeth, setting })),
    ...(fits ? circle : []),
    ...directPlate(search, target),
    ...nearestCounts.flatMap((divisions): Route[] => {
      const setting = firstSetting(search, { divisions });
      return setting === null ? [] : [{ kind: "count", divisions, setting }];
    }),
    ...near.slice(0, 1).map((setting): Route => ({ kind: "near", setting })),
    ...(fits ? [] : circle),
  ];
}

/** Where methods or teeth per move were held back, what the head does without that. */
function otherMethod(search: Search, target: Target): Route[] {
  const teethPerMove = Math.max(search.teethPerMove, usualTeethPerMove);
  const methods = usualMethods(search.layout.head);
  const isFree = methods.every((method) => search.methods.includes(method)) && search.teethPerMove === teethPerMove;
  const setting = isFree ? null : firstSetting({ ...search, methods, teethPerMove }, target);
  return setting === null ? [] : [{ kind: "method", setting }];
}

function drillCircle(search: Search, target: Target, circles: readonly number[]): Route[] {
  const [holes] = circles;
  const { layout } = search;
  if (holes === undefined || layout.circles.length === 0) return [];
  const plates = [{ name: "new", faces: [{ name: null, circles: [holes] }] }];
  const drilled = { ...layOut({ ...layout.head, plates, mounted: null }), mounted: layout.mounted };
  const setting = firstSetting({ ...search, layout: drilled, methods: ["simple"] }, target);
  return setting === null ? [] : [{ kind: "circle", circles, setting }];
}
