import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { defineHead, indexDivisions } from "../../src/index.ts";
import { ready } from "../support/ready.ts";
import { button, type Open } from "./pages.ts";

const usual = ready("ratio-40-plates-15-49");

/** That the head is chosen, edited, kept and saved; and that a name is a name, whatever it is. */
export function headLaws(open: Open): void {
  it("a ready head is taken and answers, also after a reload", async () => {
    const { page, url } = await open(usual, "#head");
    await page.getByLabel("Head", { exact: true }).selectOption({ label: ready("ratio-90-dial").name });
    await page.goto(`${url}#ask=97`);
    await page.reload();
    expect(await page.textContent(".name")).toBe(ready("ratio-90-dial").name);
    expect(await page.textContent(".answer h2")).toContain("NOT POSSIBLE");
  });

  it("faults stand at their places, and a head with faults is not taken", async () => {
    const { page } = await open(usual, "#head");
    await page.getByLabel("Worm ratio").fill("0");
    await page.getByLabel("Holes of its circles").nth(1).fill("21 23 x");
    const faultAt = (label: string, index = 0) =>
      page.locator(".field").filter({ hasText: label }).nth(index).locator(".refused").textContent();
    expect(await faultAt("Worm ratio")).toBe('"0" is not above 0');
    expect(await faultAt("Holes of its circles", 1)).toContain('"x" is not a whole number');
    expect(await faultAt("Holes of its circles", 0)).toBe("");
    expect(await button(page, "Answer with this head, and keep it").isDisabled()).toBe(true);
  });

  it("an edited head is kept in the browser and saved as a file that is a head", async () => {
    const { page, errors } = await open(usual, "#head");
    await page.getByLabel("Name").fill("Mine, plate 2 lost");
    await button(page, "Take it off").nth(1).click();
    await page.getByLabel("Change gears").fill("24 28 32 40 48 56 72");
    const download = page.waitForEvent("download");
    await button(page, "Save it as a file").click();
    const saved = defineHead(JSON.parse(readFileSync(await (await download).path(), "utf8")));
    expect(saved.plates.map(({ name }) => name)).toEqual(["1", "3"]);
    await button(page, "Answer with this head, and keep it").click();
    await page.reload();
    expect(await page.textContent(".name")).toBe("Mine, plate 2 lost (40:1)");
    await page.getByRole("link", { name: "Ask" }).click();
    await page.fill("#question", "63");
    expect(await page.textContent(".tiles li")).toContain(String(indexDivisions(saved, 63).settings[0]?.circle));
    await button(page, "Work through it").click();
    expect(new URL(page.url()).hash).toContain("spec=");
    expect(errors).toEqual([]);
  });

  it("a head file is opened again, one saved here or written by hand, and one with faults is refused by their places", async () => {
    const { page, errors } = await open(usual, "#head");
    const file = (name: string, text: string) =>
      page.getByLabel("Open a head file").setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
    const refused = page.locator("[role=alert]");
    await file("picture.json", "\u0089PNG");
    await refused.getByText("this is no head file").waitFor();
    await file("faults.json", JSON.stringify({ wormRatio: 0, plates: [{ name: "1", circles: [15, "x"] }] }));
    await refused.getByText("wormRatio").waitFor();
    expect(await refused.textContent()).toContain("plates[0].circles[1]");
    expect(await page.textContent(".name")).toBe("40:1 head, three plates 15–49, twelve change gears");
    const byHand = {
      $schema: "head.schema.json",
      name: "From a file",
      wormRatio: 60,
      plates: [{ name: "A", circles: [21, 30] }],
    };
    await file("mine.json", JSON.stringify(byHand));
    await page.locator(".name", { hasText: "From a file" }).waitFor();
    const download = page.waitForEvent("download");
    await button(page, "Save it as a file").click();
    const saved = readFileSync(await (await download).path(), "utf8");
    expect(JSON.parse(saved)).toEqual(JSON.parse(JSON.stringify(defineHead(byHand))));
    await page.reload();
    expect(await page.textContent(".name")).toBe("From a file (60:1)");
    await page.getByLabel("Head", { exact: true }).selectOption({ label: ready("ratio-90-dial").name });
    await file("saved.json", saved);
    await page.locator(".name", { hasText: "From a file" }).waitFor();
    expect(await page.getByLabel("Holes of its circles").inputValue()).toBe("21 30");
    expect(errors).toEqual([]);
  });

  it("a name that is markup stays a name", async () => {
    const name = "</script><img src=x onerror=alert(1)>&lt;";
    const head = defineHead({ ...usual, name, plates: [{ name: "<b>1</b>", circles: [15, 20] }] });
    const { page, requests, errors } = await open(head, "#ask=30");
    expect(await page.textContent(".name")).toBe(`${name} (40:1)`);
    expect(await page.textContent(".tiles li")).toContain("<b>1</b>");
    expect(await page.locator("img").count()).toBe(0);
    expect([requests.length, errors]).toEqual([1, []]);
  });
}
