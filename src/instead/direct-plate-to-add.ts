import { layOut } from "../methods/layout.ts";
import { firstSetting, type Search } from "../search/exact-settings.ts";
import type { Setting } from "../setting/setting.ts";
import { firstMove, type Target } from "../setting/target.ts";
import { fitsCommonPlate } from "./missing-circles.ts";

/** On a head that no crank turns: by a direct plate, or a gear in its place, that is not owned. Exact. */
export interface AddDirectPlate {
  readonly kind: "direct-plate";
  /** The fewest holes, or teeth, that would do; so would any multiple. */
  readonly holes: number;
  readonly setting: Setting;
}

/** The plate that would do it; none where a crank turns the spindle, or it would have too many holes. */
export function directPlate(search: Search, target: Target): AddDirectPlate[] {
  const { head } = search.layout;
  const { divisions: holes } = firstMove(target);
  if (head.wormRatio !== null || holes < 2 || !fitsCommonPlate(holes)) return [];
  const setting = firstSetting({ ...search, layout: layOut({ ...head, directPlates: [{ name: "new", holes }] }) }, target);
  return setting === null ? [] : [{ kind: "direct-plate", holes, setting }];
}
