import { type Kind, kindOf } from "../setting/kind.ts";
import type { NearKind } from "../setting/near-setting.ts";
import type { UnprovedSetting } from "../setting/setting.ts";

/** Where a kind of setting stands in a book: geared and compound rows apart, so that none is read as simple. */
export type Section = "direct" | "simple" | "dial" | "geared" | "compound";

/** What a kind of setting is called. */
export interface KindWords {
  /** At the head of an answer. */
  readonly title: string;
  /** The letter before its rows in a table. */
  readonly mark: string;
  readonly section: Section;
}

/** What each kind is called: a new kind has its words here. */
export const kindWords: Readonly<Record<Kind, KindWords>> = {
  direct: { title: "DIRECT INDEXING", mark: "D", section: "direct" },
  simple: { title: "SIMPLE INDEXING", mark: "S", section: "simple" },
  "one-pair": { title: "DIFFERENTIAL INDEXING, one pair of gears", mark: "G", section: "geared" },
  "two-pair": { title: "DIFFERENTIAL INDEXING, two pairs of gears", mark: "G", section: "geared" },
  compound: { title: "COMPOUND INDEXING", mark: "C", section: "compound" },
  block: { title: "DIFFERENTIAL INDEXING", mark: "G", section: "geared" },
  dial: { title: "BY THE DIAL, every position on a mark", mark: "H", section: "dial" },
  "may-foul": { title: "DIFFERENTIAL INDEXING, two pairs of gears that may foul", mark: "G", section: "geared" },
};

/** The kind of a setting in a title: in capitals, what must not be missed. */
export function settingTitle(setting: UnprovedSetting): string {
  const teeth = setting.teethPerMove === 1 ? "" : `, ${setting.teethPerMove} TEETH PER MOVE`;
  return `${kindWords[kindOf(setting)].title}${teeth}`;
}

/** What each kind of near setting is called in a list. */
export const nearNames: Readonly<Record<NearKind, string>> = {
  simple: "Simple",
  "one-pair": "One pair",
  "two-pair": "Two pairs",
  compound: "Compound",
  "may-foul": "May foul",
  "nearest-hole": "Nearest hole",
  dial: "By the dial",
  ring: "By the ring",
};
