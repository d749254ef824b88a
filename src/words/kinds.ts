import { type Kind, kindOf } from "../setting/kind.ts";
import type { NearKind } from "../setting/near-setting.ts";
import type { UnprovedSetting } from "../setting/setting.ts";
import type { KindWords } from "./method-words.ts";
import { methodWords } from "./methods.ts";

/** What each kind is called. Its words stand with those of its method. */
export const kindWords: Readonly<Record<Kind, KindWords>> = Object.freeze(
  Object.assign({}, ...Object.values(methodWords).map(({ kinds }) => kinds)) as Record<Kind, KindWords>,
);

/** The kind of a setting in a title: in capitals, what must not be missed. */
export function settingTitle(setting: UnprovedSetting): string {
  const teeth = setting.teethPerMove === 1 ? "" : `, ${setting.teethPerMove} TEETH PER MOVE`;
  return `${kindWords[kindOf(setting)].title}${teeth}`;
}

/** What each kind of near setting is called in a list. */
export const nearNames: Readonly<Record<NearKind, string>> = {
  simple: kindWords.simple.name,
  "one-pair": kindWords["one-pair"].name,
  "two-pair": kindWords["two-pair"].name,
  "wide-range": kindWords["wide-range"].name,
  compound: kindWords.compound.name,
  "may-foul": kindWords["may-foul"].name,
  "nearest-hole": "Nearest hole",
  "both-cranks": "Both cranks",
  "nearest-direct": "Nearest place",
  dial: "By the dial",
  ring: "By the ring",
};
