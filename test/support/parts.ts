import type { NearSetting, SecondMove, SettingGears, UnprovedSetting } from "../../src/index.ts";

/** The change gears of a setting, or none. */
export function gearsOf(setting: UnprovedSetting | NearSetting): SettingGears | undefined {
  return setting.method === "differential" ? setting.gears : undefined;
}

/** The second part of a compound move, or none. */
export function secondOf(setting: UnprovedSetting | NearSetting): SecondMove | undefined {
  return setting.method === "compound" ? setting.second : undefined;
}
