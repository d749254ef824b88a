import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Locator, Page } from "playwright-core";
import { screenPage } from "../../booklet/index.ts";
import type { Head } from "../../src/index.ts";
import { ownFolder } from "../support/own-folder.ts";

/** A page of the screen edition that is open, with all that it has asked for and complained of. */
export interface Opened {
  readonly page: Page;
  /** Where the page lies, without what comes after. */
  readonly url: string;
  readonly requests: readonly string[];
  readonly errors: readonly string[];
}

/** Opens the screen edition of a head at a link, on a phone that has kept nothing. */
export type Open = (head: Head, link?: string) => Promise<Opened>;

/** Opens pages from the file system, as a phone does; all in one page of the browser, since a new one takes long. */
export async function opener(browser: Browser): Promise<Open> {
  const folder = ownFolder("screen");
  const context = await browser.newContext({ reducedMotion: "reduce", viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  let [requests, errors]: [string[], string[]] = [[], []];
  page.on("request", (request) => requests.push(request.url()));
  page.on("pageerror", (error) => errors.push(error.message));
  page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
  let opened = 0;
  return async (head, link = "") => {
    const file = join(folder, `${head.id}.html`);
    writeFileSync(file, screenPage(head));
    if (opened > 0) await page.evaluate("localStorage.clear()");
    [requests, errors] = [[], []];
    // Another address, or the browser would only go to another part of the page that is there.
    opened += 1;
    const url = `${pathToFileURL(file).href}?${opened}`;
    await page.goto(`${url}${link}`);
    return { page, url, requests, errors };
  };
}

/** The button of these words. */
export const button = (page: Page, name: string): Locator => page.getByRole("button", { name, exact: true });

/** The figures that the page shows: what is above each, the figure, what is under it. */
export const figures = (page: Page, within: string): Promise<readonly string[]> =>
  page.locator(`${within} .tiles li`).evaluateAll((tiles) => tiles.map((tile) => tile.textContent ?? ""));
