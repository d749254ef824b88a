import { expect, it } from "vitest";
import type { Head } from "../../src/index.ts";
import { wideHead } from "../support/known-jobs.ts";
import { ready } from "../support/ready.ts";
import { byDegrees, byGears, byRing } from "../support/without-crank.ts";
import { button, type Open } from "./pages.ts";

/** That the page answers and walks through a job on heads with two cranks and with none; and that the page of other heads refuses those. */
export function otherHeadsLaws(open: Open): void {
  it.each<[string, Head, number, RegExp]>([
    ["both cranks", wideHead, 126, /SMALL SPACES\s*30/],
    ["both cranks, each place by itself", wideHead, 3989, /NOT POSSIBLE[\s\S]*Both cranks/],
    ["a row of holes", byDegrees, 40, /ROW\s*9/],
    ["the nearest place", byDegrees, 7, /NOT POSSIBLE[\s\S]*Nearest place/],
    ["a gear", byGears, 7, /CIRCLE\s*56[\s\S]*tooth space/],
    ["a ring alone", byRing, 7, /NOT POSSIBLE[\s\S]*By the ring/],
  ])("%s: answers, and its job is walked through", async (_, head, divisions, told) => {
    const { page, errors } = await open(head, `#ask=${divisions}`);
    expect(await page.textContent(".answer")).toMatch(told);
    if (told.source.startsWith("NOT")) await page.locator(".ways button").first().click();
    await button(page, "Work through it").click();
    await page.locator(".bar .main").click();
    expect(await page.textContent(".place")).not.toMatch(/undefined|null|NaN/);
    expect(errors).toEqual([]);
  });

  it("the page for heads with one crank refuses a file of another, in a sentence", async () => {
    const { page, errors } = await open(ready("ratio-40-plates-15-49"), "#head");
    const refused = page.locator("[role=alert]");
    for (const head of [wideHead, byDegrees]) {
      const file = { name: "mine.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(head)) };
      await page.getByLabel("Open a head file").setInputFiles(file);
      await refused.getByText("print the page of that head by itself").first().waitFor();
    }
    expect(errors).toEqual([]);
  });
}
