import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { cuttingOrder, type Head, type PlannedJob, type PlanOptions, parseAngle, planJob, type Target } from "../../src/index.ts";
import { checkItem, goOnWords, holeStands, orderItems, placeColumns } from "../../src/words/index.ts";
import { ready } from "../support/ready.ts";
import { button, figures, type Open } from "./pages.ts";

const geared = ready("ratio-40-plates-15-49");
const plates = ready("ratio-40-plates-15-49-ungeared");

function planned(head: Head, target: Target, options: PlanOptions = {}): PlannedJob {
  const plan = planJob(head, target, options);
  if (!plan.planned) throw new Error("the head cannot do it");
  return plan;
}

/** What must stand on the page at a place. */
function figuresAt(plan: PlannedJob, head: Head, index: number): readonly string[] {
  const place = plan.places[index];
  const columns = placeColumns(plan, head);
  // There is no going on to the start; a scale is set there too.
  const isGoing = index > 0 || plan.way.by === "dial";
  const shown = [...columns.filter(({ sets }) => sets && isGoing), ...columns.filter(({ sets }) => !sets)];
  return place === undefined
    ? []
    : shown.map(({ group = "", head: name, cell }) => `${`${group} ${name}`.trim().toUpperCase()} ${cell(place)} `);
}

/** Presses done so many times; gives what the page shows at each place before. */
const walk = `(times) => Array.from({ length: times }, () => {
  const texts = (selector) => [...document.querySelectorAll(".place " + selector)].map((each) => each.textContent);
  const shown = { figures: texts(".tiles li"), checks: texts(".check") };
  document.querySelector(".bar .main").click();
  return shown;
})`;

/** Presses done until so many are, and holds every place to the plan. */
async function workTo(page: Page, plan: PlannedJob, head: Head, from: number, to: number): Promise<void> {
  const shown = (await page.evaluate(`(${walk})(${to - from})`)) as readonly { figures: string[]; checks: string[] }[];
  for (const [step, { figures: there, checks }] of shown.entries()) {
    const index = from + step;
    expect(there, `place ${index + 1}`).toEqual(figuresAt(plan, head, index));
    const due = plan.checks.filter(({ at, place }) => at !== "close" && place.tooth === plan.places[index]?.tooth);
    expect(checks.length, `checks at place ${index + 1}`).toBe(due.length);
    for (const check of due) expect(checks[0]).toContain(checkItem(check, plan.way, { head }).text);
  }
}

const titleNow = (page: Page) => page.textContent(".at h3");

/** That a job is gone through by the plan, and that its place is not lost. */
export function jobLaws(open: Open): void {
  it("127 to the end, with a reload half-way and the place found again by the ring", async () => {
    const { page, errors } = await open(geared, "#ask=127");
    await button(page, "Work through it").click();
    const plan = planned(geared, { divisions: 127 });
    await workTo(page, plan, geared, 0, 64);
    await page.reload();
    expect(await titleNow(page)).toBe("TOOTH 65");
    await page.getByText("Where was I?").click();
    await page.getByLabel("The ring stands at").fill("46½°");
    await button(page, "Find the place").click();
    // A ring of whole degrees is read to the half: tooth 17 lies at 45.35°, tooth 18 at 48.19°.
    expect(await page.textContent("details .items")).toMatch(/tooth 17/);
    await page.getByLabel("The ring stands at").fill("113.4");
    await button(page, "Find the place").click();
    await button(page, "At tooth 41, not done yet").click();
    expect(await titleNow(page)).toBe("TOOTH 41");
    await button(page, "Undo: 64 done").click();
    await workTo(page, plan, geared, 64, 127);
    expect(await titleNow(page)).toBe("ALL DONE");
    const close = plan.checks.find(({ at }) => at === "close");
    expect(await page.textContent(".check")).toContain(close && checkItem(close, plan.way, { head: geared }).text);
    expect(await button(page, "Done").isDisabled()).toBe(true);
    expect(errors).toEqual([]);
  });

  it("a pin in a hole after so many turns is one place", async () => {
    const { page } = await open(geared, "#job=&divisions=127");
    expect(await page.textContent("[role=alert]")).toContain('the link is for a head ""');
    await page.goto(`${page.url().split("#")[0]}#ask=127`);
    await button(page, "Work through it").click();
    const plan = planned(geared, { divisions: 127 });
    const [index, place] = [50, plan.places[50]];
    await page.getByText("Where was I?").click();
    await page.getByLabel("Pin in hole").fill(String(place && "hole" in place ? place.hole : ""));
    await page.getByLabel("after turns").fill(String(place && "turns" in place ? place.turns : ""));
    await button(page, "Find the place").click();
    await button(page, `tooth ${place?.tooth} is done`).click();
    expect(await titleNow(page)).toBe(`TOOTH ${plan.places[index + 1]?.tooth}`);
  });

  it("the place goes with the link to another phone, and is kept where the link is lost", async () => {
    const { page, url } = await open(geared, "#ask=127");
    await button(page, "Work through it").click();
    await page.getByText("Set out otherwise").click();
    await page.getByLabel("Only these").fill("12, 13, 55-57");
    await page.getByLabel("Pin starts in hole").fill("3");
    await page.getByLabel("Scales stand at").fill("124°");
    await page.getByLabel("and from there").selectOption("minus");
    await button(page, "Begin anew, so set out").click();
    const options: PlanOptions = { teeth: [12, 13, 55, 56, 57], startHole: 3, startAngle: parseAngle("124°"), side: "minus" };
    const plan = planned(geared, { divisions: 127 }, options);
    for (let done = 0; done < 2; done += 1) await button(page, "Done").click();
    const link = page.url().slice(url.length);
    await open(geared, link);
    expect(await titleNow(page)).toBe("TOOTH 55");
    expect(await figures(page, ".place")).toEqual(figuresAt(plan, geared, 2));
    await page.goto(`${url}#job`);
    await page.getByRole("link", { name: /127 DIVISIONS 2 done/ }).click();
    expect(await titleNow(page)).toBe("TOOTH 55");
    expect(link).toMatch(/done=2$/);
  });

  it("in an order of its own, with what that costs, and the same by its link", async () => {
    const { page, url, errors } = await open(geared, "#ask=127");
    await button(page, "Work through it").click();
    await page.getByText("Set out otherwise").click();
    await page.getByLabel("Only these").fill("every 19");
    await button(page, "Begin anew, so set out").click();
    const plan = planned(geared, { divisions: 127 }, { teeth: cuttingOrder(127, 19) });
    await workTo(page, plan, geared, 0, 60);
    await page.getByText("Set up, and what to mind").click();
    const [costs] = orderItems(plan, geared);
    expect(await page.textContent(".beside .items")).toContain(costs?.text);
    const link = page.url().slice(url.length);
    expect(link).toContain("teeth=every+19&");
    await open(geared, link);
    expect(await titleNow(page)).toBe(`TOOTH ${plan.places[60]?.tooth}`);
    expect(errors).toEqual([]);
  });

  it("a near job, each place with its own error", async () => {
    const { page } = await open(plates, "#ask=97");
    await page.locator(".ways button").first().click();
    expect(await page.locator(".kind").allTextContents()).toContain("NEAR ONLY, NOT EXACT: COMPOUND INDEXING, 5 TEETH PER MOVE");
    await button(page, "Work through it").click();
    expect(await page.textContent(".kind")).toContain("NEAR ONLY, NOT EXACT");
    await workTo(page, planned(plates, { divisions: 97 }), plates, 0, 97);
    expect(await titleNow(page)).toBe("ALL DONE");
  });

  it.each([
    ["ratio-90-dial", "97", "dial"],
    ["ratio-40-plates-15-49", "1°", "moves"],
  ])("on %s, %s by %s", async (id, asked, by) => {
    const head = ready(id);
    const { page } = await open(head, `#${new URLSearchParams({ ask: asked })}`);
    if ((await page.locator(".tiles").count()) === 0) await page.locator(".ways button").first().click();
    await button(page, "Work through it").click();
    const target: Target = asked === "97" ? { divisions: 97 } : { angle: parseAngle("1°") };
    const plan = planned(head, target);
    expect(plan.way.by).toBe(by);
    await workTo(page, plan, head, 0, 4);
  });

  it("every place has a box to tick, and a tick too many can be undone", async () => {
    const { page } = await open(geared, "#ask=127");
    await button(page, "Work through it").click();
    await page.getByText("All places").click();
    const plan = planned(geared, { divisions: 127 });
    const rows = await page.locator(".ticks li").allTextContents();
    for (const [index, place] of plan.places.entries()) {
      expect(rows[index]).toContain(`tooth ${place.tooth} `);
      expect(rows[index]).toContain(goOnWords(place, plan.way));
      expect(rows[index]).toContain(holeStands(place, plan.way));
    }
    await page.locator(".ticks input").nth(9).check();
    expect(await titleNow(page)).toBe("TOOTH 11");
    expect(await page.locator(".ticks input:checked").count()).toBe(10);
    await button(page, "Undo: 0 done").click();
    expect(await titleNow(page)).toBe("TOOTH 1");
  });

  it("refuses a link with nonsense in it", async () => {
    const spec = `spec=${encodeURIComponent(JSON.stringify(geared))}`;
    for (const [link, sentence] of [
      ["#job=&divisions=127&head=x~1&done=1", /head "x" that is not in this page/],
      ["#job=&divisions=127&spec=%7B&done=1", /describes no head/],
      ["#job=&colour=red&done=1", /has "colour" where no job has it/],
      [`#job=&divisions=127&${spec}&done=500`, /500 places cannot be done/],
      [`#job=&divisions=127&${spec}&way=%3Cb%3Emagic&done=0`, /no way "<b>magic"/],
      [`#job=&divisions=127&${spec}&hole=99&done=0`, /99 is not a hole/],
      [`#job=&divisions=127&${spec}&teeth=500&done=0`, /500 is not a tooth of 127/],
      ["#%E0%A4%A&=&&", null],
    ] as const) {
      const { page, errors } = await open(geared, link);
      // What names no view at all is as if nothing were named.
      if (sentence === null) expect(await page.locator("#question").count()).toBe(1);
      else expect(await page.textContent("[role=alert]"), link).toMatch(sentence);
      expect(errors).toEqual([]);
    }
  });
}
