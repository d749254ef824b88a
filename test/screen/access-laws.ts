import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, it } from "vitest";
import type { Head } from "../../src/index.ts";
import { ready } from "../support/ready.ts";
import { everyOf } from "../support/sweep.ts";
import { button, type Open } from "./pages.ts";

const head = ready("ratio-40-plates-15-49");
const plates = ready("ratio-40-plates-15-49-ungeared");
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const specOf = (on: Head) => `spec=${encodeURIComponent(JSON.stringify(on))}`;
const job = `#job=&${specOf(plates)}&divisions=97&done=24`;
const repair = "repair=97&module=2&damaged=31-33";
const views = [
  ["an exact answer", head, "#ask=127"],
  ["an impossible count", plates, "#ask=127"],
  ["what a move gives", head, "#ask=0+%2B+22/33"],
  ["a refusal", head, "#ask=abc"],
  ["a job", plates, `#job=&${specOf(plates)}&divisions=97&teeth=1,2,3,4&done=2`],
  ["a repair at work", head, `#job=&${specOf(head)}&${repair}&done=1`],
  ["a repair", head, "#repair=97&pitch=2&damaged=31-33&backlash=0.2"],
  ["the head", head, "#head"],
] as const;

/** Beside what is on by itself: text at 7:1, and targets that a finger hits. */
const rules = { "color-contrast-enhanced": { enabled: true }, "target-size": { enabled: true } };
/** All that the dark can change. */
const ofColour = { runOnly: ["color-contrast", "color-contrast-enhanced"] };

interface Barrier {
  readonly id: string;
  readonly nodes: readonly { readonly html: string }[];
}

/** That anybody can use it: by eye, by ear, by keyboard, on any screen; and that nothing leaves the page. */
export function accessLaws(open: Open): void {
  it.each(everyOf(2, views))(
    "%s: no barrier in light and dark, nothing too wide, nothing too small for a finger",
    async (_, on, link) => {
      const { page, errors } = await open(on, link);
      await page.evaluate("document.querySelectorAll('details').forEach((each) => { each.open = true; })");
      await page.evaluate(axe);
      for (const [colorScheme, options] of [
        ["light", { rules }],
        ["dark", ofColour],
      ] as const) {
        await page.emulateMedia({ colorScheme });
        const { violations } = (await page.evaluate(`axe.run(document, ${JSON.stringify(options)})`)) as {
          violations: readonly Barrier[];
        };
        const told = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
        expect(told, colorScheme).toEqual([]);
      }
      const tooLow = await page
        .locator(
          "button:visible, a:visible, input:visible:not([type=checkbox]), select:visible, summary:visible, label:visible:has(input)",
        )
        .evaluateAll((all) => all.filter((each) => each.getBoundingClientRect().height < 44).map((each) => each.outerHTML));
      expect(tooLow).toEqual([]);
      // Zoom is a narrower screen: at twice the size 640 is 320.
      for (const width of [320, 360, 384, 640, 768, 1280]) {
        await page.setViewportSize({ width, height: 740 });
        expect(await page.evaluate("document.documentElement.scrollWidth"), `on ${width}`).toBeLessThanOrEqual(width);
      }
      await page.setViewportSize({ width: 360, height: 740 });
      await page.emulateMedia({ colorScheme: "light" });
      expect(errors).toEqual([]);
    },
  );

  it("asks, takes a job and works through it by keyboard alone", async () => {
    const { page } = await open(head);
    await page.keyboard.type("127");
    const isOn = (words: string) => page.evaluate(`document.activeElement.textContent.trim() === ${JSON.stringify(words)}`);
    const tabTo = async (words: string) => {
      for (let press = 0; press < 40 && !(await isOn(words)); press += 1) await page.keyboard.press("Tab");
      expect(await isOn(words), words).toBe(true);
    };
    await tabTo("Work through it");
    await page.keyboard.press("Enter");
    await page.waitForSelector(".place");
    await tabTo("Done");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Space");
    expect(await page.textContent(".at h3")).toBe("TOOTH 3");
    await page.keyboard.press("Shift+Tab");
    await page.keyboard.press("Enter");
    expect(await page.textContent(".at h3")).toBe("TOOTH 2");
  });

  it("reads the answer aloud once typing rests", async () => {
    const { page } = await open(head);
    await page.fill("#question", "127");
    await page
      .getByRole("status")
      .filter({ hasText: "127 DIVISIONS, exact: differential 0 + 5 of 15" })
      .waitFor({ state: "attached" });
  });

  it("asks for nothing but itself, and may not", async () => {
    const { page, requests, errors } = await open(head, "#ask=127");
    await button(page, "Work through it").click();
    for (const name of ["Repair", "Head", "Ask"]) await page.getByRole("link", { name, exact: true }).click();
    expect(requests).toHaveLength(1);
    expect(errors).toEqual([]);
    expect(await page.evaluate("fetch('http://127.0.0.1:9/').then(() => 'went', () => 'held')")).toBe("held");
    expect(errors.join()).toContain("Content Security Policy");
  });

  it("prints the answer and the places, and not what is pressed", async () => {
    const { page } = await open(plates, job);
    await page.evaluate("dispatchEvent(new Event('beforeprint'))");
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".ticks li:visible").count()).toBe(97);
    expect(await button(page, "Done").isVisible()).toBe(false);
    await page.emulateMedia({ media: "screen" });
  });
}
