import { expect, it } from "vitest";
import { repairOnHead, spurGear } from "../../src/index.ts";
import { checksInWords, cutterItems, lengthsIn, purposeWords, sawItems } from "../../src/words/index.ts";
import { ready } from "../support/ready.ts";
import { button, type Open } from "./pages.ts";

/** That a repair is told as the library plans it, and worked through like any other job. */
export function repairLaws(open: Open): void {
  it.each([
    ["ratio-40-plates-15-49", "module", "2", 0.2],
    ["ratio-40-plates-15-49-ungeared", "dp", "12", 0.254],
  ] as const)("on %s, pitch %s %s", async (id, system, pitch, backlash) => {
    const head = ready(id);
    const { page, errors } = await open(head, "#repair");
    await page.getByLabel("Teeth").fill("97");
    await page.getByLabel("Pitch by").selectOption(system);
    await page.getByLabel("Pitch", { exact: true }).fill(pitch);
    await page.getByLabel(/Damaged/).fill("31-33");
    await page.getByLabel(/Most backlash/).fill(system === "dp" ? "0,01" : "0.2");
    const gear = spurGear({ teeth: 97, ...(system === "dp" ? { diametralPitch: 12 } : { module: 2 }) });
    const { moves, repair } = repairOnHead(head, gear, { damaged: [31, 32, 33], backlash });
    const length = lengthsIn(system === "dp" ? "in" : "mm");
    const said = (await page.locator(".answer dd").allTextContents()).join("\n");
    for (const { what, limits } of checksInWords(gear, repair, length)) expect(said).toContain(`${what}: ${limits}`);
    for (const { text } of [...sawItems(repair, length, false), ...cutterItems(gear)]) expect(said).toContain(text);
    expect(await page.getAttribute(".answer svg", "aria-label")).toContain("teeth 31–33 built up, the start space 29");
    await button(page, "Work through it").click();
    for (const { purpose, toothSpace } of moves) {
      expect(await page.textContent(".at h3")).toBe(`${purposeWords[purpose]} space ${toothSpace}`.toUpperCase());
      await button(page, "Done").click();
    }
    expect(await page.textContent(".at h3")).toBe("ALL DONE");
    await page.reload();
    expect(await page.textContent(".at h3")).toBe("ALL DONE");
    expect(errors).toEqual([]);
  });

  it("the ring finds the space again, counted from the start space", async () => {
    const head = ready("ratio-40-plates-15-49");
    const link = `#job=&spec=${encodeURIComponent(JSON.stringify(head))}&repair=97&module=2&damaged=31-33&done=0`;
    const { page } = await open(head, link);
    const { moves } = repairOnHead(head, spurGear({ teeth: 97, module: 2 }), { damaged: [31, 32, 33] });
    const space = moves[3];
    await page.getByText("Where was I?").click();
    await page.getByLabel("The ring stands at").fill("11");
    await button(page, "Find the place").click();
    await button(page, `At space ${space?.toothSpace}, not done yet`).click();
    expect(await page.textContent(".at h3")).toBe(`CUT SPACE ${space?.toothSpace}`);
  });
}
