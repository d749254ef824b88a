import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, it } from "vitest";
import { button, type Open, ready } from "./pages.ts";

const head = ready("ratio-40-plates-15-49");
const plates = ready("ratio-40-plates-15-49-ungeared");
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const job = `#job=&spec=${encodeURIComponent(JSON.stringify(plates))}&divisions=97&done=24`;
const repair = `#job=&spec=${encodeURIComponent(JSON.stringify(head))}&repair=97&module=2&damaged=31-33&done=1`;
const views = [
  ["an exact answer", head, "#ask=127"],
  ["an impossible count", plates, "#ask=127"],
  ["what a move gives", head, "#ask=0+%2B+22/33"],
  ["a refusal", head, "#ask=abc"],
  ["a job", plates, job],
  ["a repair at work", head, repair],
  ["a repair", head, "#repair"],
  ["the head", head, "#head"],
] as const;

/** Beside what is on by itself: text at 7:1, and targets that a finger hits. */
const rules = { "color-contrast-enhanced": { enabled: true }, "target-size": { enabled: true } };

/** That anybody can use it: by eye, by ear, by keyboard, on any screen; and that nothing leaves the page. */
export function accessLaws(open: Open): void {
  it.each(views.flatMap((view) => (["light", "dark"] as const).map((scheme) => [...view, scheme] as const)))(
    "%s: no barrier found, %4$s",
    async (name, on, link, colorScheme) => {
      const { page, errors } = await open(on, link, { colorScheme });
      if (name === "a repair") {
        await page.getByLabel("Teeth").fill("97");
        await page.getByLabel("Pitch", { exact: true }).fill("2");
        await page.getByLabel(/Damaged/).fill("31");
      }
      await page.evaluate("document.querySelectorAll('details').forEach((each) => { each.open = true; })");
      await page.evaluate(axe);
      const { violations } = (await page.evaluate(`axe.run(document, { rules: ${JSON.stringify(rules)} })`)) as {
        violations: readonly { id: string; nodes: readonly { html: string }[] }[];
      };
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
      expect(errors).toEqual([]);
    },
  );

  it.each([320, 360, 768, 1280])("nothing is wider than a screen of %i, nor with text of twice the size", async (width) => {
    for (const [, on, link] of views) {
      const { page } = await open(on, link, { viewport: { width, height: 800 } });
      const wide = () => page.evaluate("document.documentElement.scrollWidth");
      expect(await wide(), link).toBeLessThanOrEqual(width);
      // Zoom is a narrower screen: twice as large on 640 is 320.
      if (width < 768) continue;
      await page.setViewportSize({ width: width / 2, height: 400 });
      expect(await wide(), `${link} at twice the size`).toBeLessThanOrEqual(width / 2);
    }
  });

  it("what is pressed is at least 44 pixels high", async () => {
    for (const [, on, link] of views) {
      const { page } = await open(on, link);
      const low = await page
        .locator("button:visible, a:visible, input:visible:not([type=checkbox]), select:visible, summary:visible")
        .evaluateAll((all) => all.filter((each) => each.getBoundingClientRect().height < 44).map((each) => each.outerHTML));
      expect(low).toEqual([]);
    }
  });

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
  });
}
