import { afterAll, describe } from "vitest";
import { openBrowser } from "../../scripts/bench/browser.ts";
import { accessLaws } from "./access-laws.ts";
import { answerLaws } from "./answer-laws.ts";
import { headLaws } from "./head-laws.ts";
import { jobLaws } from "./job-laws.ts";
import { otherHeadsLaws } from "./other-heads-laws.ts";
import { opener } from "./pages.ts";
import { repairLaws } from "./repair-laws.ts";

// One browser for all of them: to start it takes longer than most of the tests.
const browser = await openBrowser();
afterAll(() => browser?.close());

const open = browser === null ? null : await opener(browser);

describe.skipIf(open === null)("the screen edition, in a browser", () => {
  if (open === null) return;
  describe("answers", () => answerLaws(open));
  describe("works through a job", () => jobLaws(open));
  describe("repairs a gear", () => repairLaws(open));
  describe("has a head of its own", () => headLaws(open));
  describe("is for other heads as well", () => otherHeadsLaws(open));
  describe("is for everybody", () => accessLaws(open));
});
