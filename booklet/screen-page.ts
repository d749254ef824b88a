import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
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
  return template(head).replace("{{filled}}", () => filled);
}

/**
 * The page that the build has packed, wherever this code is run from: for most heads that which holds no more, and for
 * the few with two cranks or none, or with more on the spindle than plates of holes, that which holds all.
 */
function template({ wormRatio, smallCrank, directPlates }: Head): string {
  const hasMore = directPlates.some(({ vernierHoles, form }) => vernierHoles !== undefined || form !== undefined);
  const page = wormRatio === null || smallCrank !== undefined || hasMore ? "page-for-any.html" : "page.html";
  const ofPackage = pathToFileURL(createRequire(import.meta.url).resolve("turns-and-holes/package.json"));
  return readFileSync(new URL(`dist/booklet/screen/${page}`, ofPackage), "utf8");
}
