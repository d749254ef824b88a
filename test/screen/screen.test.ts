import { afterAll, describe } from "vitest";
import { accessLaws } from "./access-laws.ts";
import { answerLaws } from "./answer-laws.ts";
import { openBrowser } from "./browser.ts";
import { headLaws } from "./head-laws.ts";
import { jobLaws } from "./job-laws.ts";
import { opener } from "./pages.ts";
import { repairLaws } from "./repair-laws.ts";

// One browser for all of them: to start it takes longer than most of the tests.
const browser = await openBrowser();
afterAll(() => browser?.close());

describe.skipIf(browser === null)("the screen edition, in a browser", () => {
  if (browser === null) return;
  const open = opener(browser);
  describe("answers", () => answerLaws(open));
  describe("works through a job", () => jobLaws(open));
  describe("repairs a gear", () => repairLaws(open));
  describe("has a head of its own", () => headLaws(open));
  describe("is for everybody", () => accessLaws(open));
});
