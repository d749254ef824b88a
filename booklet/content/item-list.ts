import { capital, type Item } from "../../src/words/index.ts";
import type { ListBlock } from "./blocks.ts";

/** Items as a list of a page, each text a sentence. */
export function itemList(items: readonly Item[]): ListBlock {
  return { kind: "list", items: items.map(({ term, text }) => ({ term, text: sentence(text) })) };
}

function sentence(text: string): string {
  return `${capital(text)}${/[.:]$/.test(text) ? "" : "."}`;
}
