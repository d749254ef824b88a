import { readFileSync } from "node:fs";
import type { Head } from "../src/index.ts";
import { editionOf } from "./edition.ts";

/**
 * Makes the screen edition for a head: one page that answers every count and walks through the job,
 * without a network.
 *
 * The script in it is the same for every head; the head is filled in as data, so written that no
 * name in it can end the data and become markup. The same head gives the same text.
 */
export function screenPage(head: Head): string {
  const filled = JSON.stringify({ head, ...editionOf(head, { as: "screen" }) }).replaceAll("<", "\\u003c");
  return template().replace("{{filled}}", () => filled);
}

/** From the sources or from the build: the page is packed by the build alone. */
function template(): string {
  const built = import.meta.url.endsWith(".ts") ? "../dist/booklet/screen/page.html" : "./screen/page.html";
  return readFileSync(new URL(built, import.meta.url), "utf8");
}
