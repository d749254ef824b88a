import { expect, it } from "vitest";
import { jobOf } from "../../booklet/content/job.ts";
import { openPrintShop } from "../../booklet/draw/print-shop.ts";
import { flattened } from "../../booklet/layout/marks.ts";
import { setInPages } from "../../booklet/layout/pages.ts";
import { paperNamed, paperNames } from "../../booklet/layout/papers.ts";
import { ready } from "../support/ready.ts";

const { measure } = await openPrintShop();
const ungeared = ready("ratio-40-plates-15-49-ungeared");

const otherWay = /no place over .* off\.$/;

it.each(paperNames)("%s: the other ways to do a job stand on one page, under the word that says so", (name) => {
  const apart: number[] = [];
  let seen = 0;
  for (const divisions of [51, 59, 61, 67, 73, 79, 89, 97, 101, 127, 131, 199]) {
    const pages = setInPages(
      jobOf(ungeared, { version: "1.0.0", digest: "0123456789ab" }, { divisions }),
      paperNamed(name),
      measure,
    );
    for (const { marks } of pages.pages()) {
      const texts = [...flattened(marks)].flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
      if (!texts.some((text) => otherWay.test(text))) continue;
      seen += 1;
      if (!texts.includes("Or")) apart.push(divisions);
    }
  }
  expect(seen).toBeGreaterThan(0);
  expect(apart).toEqual([]);
});
