import type { Head } from "../head/head.ts";
import type { KindOf } from "../setting/kind.ts";
import type { Proof } from "../setting/proof.ts";
import type { Method, SettingBy } from "../setting/setting.ts";
import type { Figure } from "./figures.ts";
import type { Item } from "./item.ts";

/** Where a kind of setting stands in a book: geared and compound rows apart, so that none is read as simple. */
export type Section = "direct" | "simple" | "wide-range" | "dial" | "geared" | "compound";

/** What a kind of setting is called. */
export interface KindWords {
  /** In a list: `One pair`. */
  readonly name: string;
  /** At the head of an answer. */
  readonly title: string;
  /** The letter before its rows in a table. */
  readonly mark: string;
  readonly section: Section;
}

/** What is said of the settings of one method. */
export interface MethodWords<M extends Method> {
  /** As in a list of methods: `Simple`. */
  readonly name: string;
  /** What its kinds of setting are called, and where they stand in a book. */
  readonly kinds: Readonly<Record<KindOf<M>, KindWords>>;
  /** Whether a head can be said to lack it: nobody asks why a head without a direct plate does no direct indexing. */
  isExpected(head: Head): boolean;
  /** The setting, item by item in the order of work. */
  setUp(setting: SettingBy<M>, head: Head): readonly Item[];
  /** What the hand sets, in figures, in the order of work. */
  figures(setting: SettingBy<M>, head: Head): readonly Figure[];
  /** The move in few words: `0 + 5 of 15 (plate 1)`. `plate` is to stand after its circle, or is empty. */
  short(setting: SettingBy<M>, plate: string): string;
  /** What all the moves together come to, after `127 moves, 1 turn of the work`. */
  proof(setting: SettingBy<M>, proof: Proof): string;
}
