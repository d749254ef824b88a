import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, BrowserContextOptions, Locator, Page } from "playwright-core";
import { screenPage } from "../../booklet/index.ts";
import { type Head, readyHeads } from "../../src/index.ts";

/** A page of the screen edition that is open, with all that it has asked for and complained of. */
export interface Opened {
  readonly page: Page;
  /** Where the page lies, without what comes after. */
  readonly url: string;
  readonly requests: readonly string[];
  readonly errors: readonly string[];
}

/** Opens the screen edition of a head at a link. */
export type Open = (head: Head, link?: string, options?: BrowserContextOptions) => Promise<Opened>;

/** Opens pages from the file system, as a phone does. */
export function opener(browser: Browser): Open {
  const folder = mkdtempSync(join(tmpdir(), "screen-"));
  return async (head, link = "", options = {}) => {
    const file = join(folder, `${head.id}.html`);
    writeFileSync(file, screenPage(head));
    const url = pathToFileURL(file).href;
    const context = await browser.newContext({ reducedMotion: "reduce", viewport: { width: 360, height: 740 }, ...options });
    const page = await context.newPage();
    page.setDefaultTimeout(5000);
    const [requests, errors]: [string[], string[]] = [[], []];
    page.on("request", (request) => requests.push(request.url()));
    page.on("pageerror", (error) => errors.push(error.message));
    page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
    await page.goto(`${url}${link}`);
    return { page, url, requests, errors };
  };
}

/** A ready head. */
export function ready(id: string): Head {
  const head = readyHeads.find((each) => each.id === id);
  if (head === undefined) throw new Error(`there is no ready head ${id}`);
  return head;
}

/** The button of these words. */
export const button = (page: Page, name: string): Locator => page.getByRole("button", { name, exact: true });

/** The figures that the page shows: what is above each, the figure, what is under it. */
export const figures = (page: Page, within: string): Promise<readonly string[]> =>
  page.locator(`${within} .tiles li`).evaluateAll((tiles) => tiles.map((tile) => tile.textContent ?? ""));
