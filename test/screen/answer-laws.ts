import { expect, it } from "vitest";
import { countsFromAngle, type Head, indexAngle, indexDivisions, parseAngle, type Setting, wayOf } from "../../src/index.ts";
import { nearItems, reasonItems, routeItems, settingItems, targetWords, wayFigures, wayTitle } from "../../src/words/index.ts";
import { ready } from "../support/ready.ts";
import { everyOf } from "../support/sweep.ts";
import { button, figures, type Open } from "./pages.ts";

const usual = ready("ratio-40-plates-15-49");
const ungeared = ready("ratio-40-plates-15-49-ungeared");
const heads = [usual, ungeared, ready("ratio-90-dial")];

/** What the page says of each count: typed one after another, as fast as it goes. */
const sayAll = `async (counts) => {
  const all = [];
  for (const count of counts) all.push(await say(count));
  return all;
  async function say(count) {
  const input = document.getElementById("question");
  input.value = String(count);
  input.dispatchEvent(new Event("input"));
  if (document.querySelector(".answer h2:last-child")) await new Promise((shown) => requestAnimationFrame(() => setTimeout(() => setTimeout(shown))));
  const texts = (selector) => [...document.querySelectorAll(".answer " + selector)].map((each) => each.textContent.trim());
  return { title: texts("h2"), kind: texts(".kind"), figures: texts(".tiles li"), said: texts("dd"), near: texts(".ways li") };
  }
}`;

interface Said {
  readonly title: readonly string[];
  readonly kind: readonly string[];
  readonly figures: readonly string[];
  readonly said: readonly string[];
  readonly near: readonly string[];
}

/** The stop pin stands among the figures of the page. */
function figuresOf(setting: Setting, head: Head): readonly string[] {
  const pin = settingItems(setting, head).find(({ term }) => term === "Plate stop pin");
  const [, stands = "", why = ""] = /^(IN|OUT)[:,]?\s*(.*)$/.exec(pin?.text ?? "") ?? [];
  return [
    ...wayFigures(wayOf(setting), head).map((each) => `${each.head} ${each.figure} ${each.under}`),
    ...(pin === undefined ? [] : [`STOP PIN ${stands} ${why}`.trim()]),
  ];
}

/** What is wrong with the page's answer to a count; nothing where it is the library's. */
function faults(said: Said, divisions: number, head: Head): readonly string[] {
  const answer = indexDivisions(head, divisions);
  const title = targetWords(answer.target);
  const has = (texts: readonly string[], all: readonly string[]) => all.filter((text) => !texts.includes(text));
  if (!answer.exact) {
    const near = answer.near.slice(0, 8).map((setting) => nearItems(setting, divisions, null));
    return [
      ...has(said.title, [`${title}: NOT POSSIBLE exactly with what this head has`]),
      ...(said.figures.length > 0 ? ["figures where nothing closes"] : []),
      ...has(
        said.near,
        near.map(([how, off]) => `${how?.term}: ${how?.text}${off?.text}`),
      ),
      ...has(
        said.said,
        [
          ...routeItems({ ...answer, routes: answer.routes.filter(({ kind }) => kind !== "near") }),
          ...reasonItems(answer.impossible.reasons, head),
        ].map(({ text }) => text),
      ),
    ];
  }
  const [best] = answer.settings;
  return [
    ...has(said.title, [title]),
    ...has(said.kind, [`${wayTitle(wayOf(best))}: exact`]),
    ...(said.figures.join("\n") === figuresOf(best, head).join("\n") ? [] : [`figures ${said.figures.join(", ")}`]),
    ...has(
      said.said,
      settingItems(best, head)
        .filter(({ inFigures, term }) => !inFigures && term !== "Plate stop pin")
        .map(({ text }) => text),
    ),
  ];
}

/** That what is typed is answered as the library answers it. */
export function answerLaws(open: Open): void {
  it.each(heads.map((head) => [head.id, head] as const))("%s: counts from 2 to 400 as the library does", async (_, head) => {
    const { page, errors } = await open(head);
    // A step that shares no factor with a worm ratio, nor much with a circle.
    const counts = everyOf(
      13,
      Array.from({ length: 399 }, (_, index) => index + 2),
    );
    const said = (await page.evaluate(`(${sayAll})(${JSON.stringify(counts)})`)) as readonly Said[];
    const wrong = counts.flatMap((count, index) => faults(said[index] as Said, count, head).map((fault) => `${count}: ${fault}`));
    expect(wrong).toEqual([]);
    expect(errors).toEqual([]);
  });

  it("reads an angle as a phone writes it", async () => {
    const { page } = await open(usual);
    const { target, settings } = indexAngle(usual, parseAngle("2.9°"));
    for (const typed of ["2.9°", "2°54’", "2.9º", "2,9°", "29/3600 rev"]) {
      await page.fill("#question", typed);
      expect(await page.textContent(".answer h2"), typed).toContain(targetWords(target));
      expect((await figures(page, ".answer"))[0] ?? null).toBe(settings[0] ? figuresOf(settings[0], usual)[0] : null);
    }
  });

  it("points to nothing that stands elsewhere on the page", async () => {
    const { page } = await open(ungeared, "#ask=97");
    expect(await page.textContent(".answer")).not.toMatch(/see (?:below|above)/);
    expect(await page.locator(".answer h3").first().textContent()).toMatch(/^Near ways/);
  });

  it("says what a move gives", async () => {
    const { page } = await open(usual);
    for (const [typed, gives] of [
      ["0 + 22/33", "60 divisions exactly"],
      ["22/33", "60 divisions exactly"],
      ["0 + 5/15 gears 56/24 against", "127 divisions exactly"],
      ["1 + 7/39 + 29/41", "no whole count; nearest is 21"],
    ] as const) {
      await page.fill("#question", typed);
      expect(await page.locator(".answer dd").allTextContents(), typed).toContain(gives);
    }
  });

  it("says which counts an angle read by eye could mean, and asks one of them by one tap", async () => {
    const { page, errors } = await open(usual);
    const counts = (angle: string, teeth?: number) => countsFromAngle(parseAngle(angle), parseAngle("0.05°"), teeth);
    for (const [typed, could] of [
      ["2.9° ± 0.05°", counts("2.9°")],
      ["2,9 +− 0,05", counts("2.9°")],
      ["14.5° ± 0.05° over 5", counts("14.5°", 5)],
    ] as const) {
      await page.fill("#question", typed);
      const all = could.map(({ divisions }) => divisions);
      expect(await page.textContent(".gives dd"), typed).toBe(`${all.join(" or ")} divisions`);
      expect(await page.locator(".answer button").allTextContents(), typed).toEqual(all.map((count) => `Ask ${count}`));
    }
    await button(page, "Ask 124").click();
    expect(await page.textContent(".answer h2")).toBe("124 DIVISIONS");
    expect(new URL(page.url()).hash).toBe("#ask=124");
    expect(errors).toEqual([]);
  });

  it("the keys under the question type the marks that a phone lacks, and change it to letters", async () => {
    const { page } = await open(usual);
    for (const [mark, before] of [
      ["±", "2.9"],
      ["−", "2.9±0.05"],
    ] as const) {
      await page.fill("#question", before);
      await button(page, mark).click();
      expect(await page.inputValue("#question")).toBe(before + mark);
    }
    const modeNow = () => page.getAttribute("#question", "inputmode");
    await button(page, "abc").click();
    expect(await modeNow()).toBe("text");
    await button(page, "123").click();
    expect(await modeNow()).toBe("decimal");
  });

  it("refuses in a sentence what is none of these", async () => {
    const { page, errors } = await open(usual);
    for (const [typed, sentence] of [
      ["abc", /is not an angle/],
      ["99999999", /is not a count of divisions/],
      ["2°70'", /60 or more minutes/],
      ["0 + 5/15 gears 56/24", /which way the gears turn the plate/],
      ["2.9° ± 3°", /as large as the angle itself/],
      ["2.9° ± x", /after ±: "x" is not an angle/],
      ["± 0.05° over 5", /is not an angle/],
      ["<img src=x onerror=alert(1)>", /is not an angle/],
    ] as const) {
      await page.fill("#question", typed);
      expect(await page.textContent(".answer .refused"), typed).toMatch(sentence);
    }
    expect(await page.locator(".answer img").count()).toBe(0);
    expect(errors).toEqual([]);
  });

  it("takes another way by one tap, and draws it", async () => {
    const { page } = await open(usual, "#ask=127");
    const [, other] = indexDivisions(usual, 127).settings;
    await page.locator(".ways button").first().click();
    expect(await figures(page, ".answer")).toContain(`CIRCLE ${other?.circle} plate ${other?.plate}`);
    expect(await page.getAttribute(".plate", "aria-label")).toContain(`circle of ${other?.circle} holes`);
    expect(await page.locator(".train").count()).toBe(1);
    await button(page, "Every way that this head has").click();
    expect(await page.locator(".ways button").count()).toBeGreaterThan(10);
  });

  it("tells the error of a near way at the radius given, in mm and in inches", async () => {
    const { page } = await open(ungeared, "#ask=127");
    const [near] = indexDivisions(ungeared, 127).near;
    for (const [unit, mm] of [
      ["mm", 50],
      ["in", 50 * 25.4],
    ] as const) {
      await page.getByLabel("Radius of the work").fill("50");
      await page.getByLabel("Unit").selectOption(unit);
      expect(await page.textContent(".ways li p")).toBe(near && nearItems(near, 127, { mm, unit })[1]?.text);
    }
  });
}
