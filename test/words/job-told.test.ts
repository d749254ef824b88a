import { describe, expect, it } from "vitest";
import type { Head, Method, PlanOptions } from "../../src/index.ts";
import { methodWords } from "../../src/words/index.ts";
import { allTold, wholeText } from "../support/all-told.ts";
import { planned } from "../support/jobs.ts";
import { backwards69, bareTable, cramped, everyJob, jobsFromZero, type KnownJob } from "../support/known-jobs.ts";
import { threePlates } from "../support/ready.ts";

type Asked = Pick<KnownJob, "head" | "target" | "options">;

const toldOf = ({ head, target, options }: Asked, more: PlanOptions = {}) =>
  allTold(planned(head, target, { ...options, ...more }), head);
const told = (head: Head, divisions: number, options: PlanOptions = {}, more: PlanOptions = {}) =>
  toldOf({ head, target: { divisions }, options }, more);
const methodOf = ({ head, target, options }: Asked) => planned(head, target, options).way.setting.method;
const ofMethod = (method: Method | "ring") => everyJob.filter((each) => methodOf(each) === method);

/** Words that send the hand to a part that has nothing to do with the job. */
const foreign: Readonly<Record<Method | "ring" | "handwheel", RegExp>> = {
  direct: /\b(arms?|crank|sector|stop pin|rear|gears?|dial)\b/i,
  dial: /\b(holes?|arms?|pins?|plates?|crank|gears?)\b/i,
  ring: /\b(holes?|arms?|pins?|plates?|gears?)\b/i,
  handwheel: /\b(holes?|arms?|pins?|plates?|gears?|spaces?)\b/i,
  simple: /\b(rear pin|both|OUT|train|driver|idlers?)\b/,
  "wide-range": /\b(gears?|train|idlers?|rear|OUT\b)/,
  compound: /\b(gears?|train|idlers?|stop pin IN\b)/,
  differential: /\b(rear pin|both on|both back|stop pin IN\b)/,
};

describe("a job speaks of the parts that it goes by, and of no others", () => {
  it("every method, and every way from zero, is among the jobs told here", () => {
    const methods = new Set(everyJob.map(methodOf));
    expect([...Object.keys(methodWords), "ring"].filter((method) => !methods.has(method as Method))).toEqual([]);
  });

  for (const method of ["direct", "dial", "ring", "wide-range", "compound", "differential"] as const) {
    it.each(ofMethod(method))(`${method}: $name`, (each) => {
      for (const direction of ["forward", "nearer"] as const) {
        // A gear that a detent drops into is what the spindle goes by.
        const text = wholeText(toldOf(each, { direction })).replace(/\bgear small\b|^Gear: /gm, "");
        expect(text.split("\n").filter((line) => foreign[method].test(line))).toEqual([]);
      }
    });
  }

  it.each(ofMethod("simple").filter(({ head }) => head.plates.length > 0))("simple: $name", (each) => {
    const all = toldOf(each);
    expect(
      wholeText(all)
        .split("\n")
        .filter((line) => foreign.simple.test(line)),
    ).toEqual([]);
    expect(all.setUp.join("\n")).toMatch(/Plate stop pin: IN/i);
  });

  it("whole turns of a handwheel, where there is no plate at all", () => {
    const text = wholeText(told(bareTable, 12));
    expect(text.split("\n").filter((line) => foreign.handwheel.test(line))).toEqual([]);
    expect(text).toContain("back at the same mark after every move");
  });

  it("direct: the worm is out of mesh before all else, and only the lock holds the spindle", () => {
    for (const each of ofMethod("direct").filter(({ head }) => head.wormRatio !== null)) {
      const { setUp, cautions } = toldOf(each);
      expect(setUp[0]).toBe("Worm: out of mesh; the spindle is moved by hand");
      expect(cautions[0]).toMatch(/^Worm out: .*lock it for every cut/);
      expect(cautions.join("\n")).toContain("Turn the spindle one way only");
    }
  });

  it("from zero: no step is added to the last, and no arms are set", () => {
    for (const each of jobsFromZero) {
      const { setUp, cautions, start } = toldOf(each);
      const trap =
        each.options.by === "nearest-hole"
          ? "turns and spaces of each line: they differ"
          : each.options.by === "both-cranks" || each.options.by === "nearest-direct"
            ? "Go on to the place of each line"
            : "never add one rounded step to the last";
      expect(cautions.join("\n")).toContain(trap);
      expect([...setUp, ...start].join("\n")).not.toMatch(/arms/i);
      expect(start.join("\n")).toContain("how far the work stands from its true angle");
    }
  });
});

describe("a compound move tells its parts in the order in which they are made", () => {
  const back = told(threePlates, 69, { setting: backwards69 });
  const on = told(threePlates, 96, { methods: ["compound"] });
  const first = (text: string, one: RegExp, other: RegExp) => {
    expect([text, one.exec(text)?.index]).not.toContain(undefined);
    expect([text, other.exec(text)?.index]).not.toContain(undefined);
    expect(text.search(one)).toBeLessThan(text.search(other));
  };

  it("a part that goes back first, then the crank forward: set-up, caution, columns and each place alike", () => {
    first(
      back.setUp.join("\n"),
      /First, both: .* BACK the other way 2 spaces of 23/,
      /Then the crank: 0 turns \+ 14 spaces of 21, forward/,
    );
    first(back.cautions.join("\n"), /first crank and plate together BACK/, /then the crank alone forward/);
    first(back.legend.join("\n"), /FIRST BOTH spaces of 23/, /THEN GO ON BY/);
    expect(back.places).toContain("both back 2/23, 0 + 14/21");
  });

  it("parts that both go on: the crank first, then both", () => {
    first(on.setUp.join("\n"), /First, the crank: /, /Then both: .* ON the same way/);
    first(on.cautions.join("\n"), /first the crank alone/, /then crank and plate together/);
    first(on.legend.join("\n"), /GO ON BY turns/, /THEN BOTH/);
    expect(on.places.some((line) => /^\d+ \+ \d+\/\d+, both on \d+\/\d+$/.test(line))).toBe(true);
  });

  it("gone back over, the part that goes on comes last", () => {
    const { places } = told(threePlates, 69, { setting: backwards69 }, { teeth: [3, 2], direction: "nearer" });
    expect(places).toContain("BACK 0 + 14/21, both on 2/23");
  });

  it("the stop pin is OUT, in set-up and caution, and the plate is held by the rear pin", () => {
    for (const { setUp, cautions } of [back, on]) {
      expect(setUp.join("\n")).toMatch(/Plate stop pin: OUT: the rear pin holds the plate/);
      expect(cautions.join("\n")).toContain("Plate stop pin OUT");
    }
  });
});

describe("a geared job tells its train, and what comes without it", () => {
  it.each(ofMethod("differential"))("$name", (each) => {
    const { setUp, cautions } = toldOf(each);
    const text = setUp.join("\n");
    expect(text).toContain("Plate stop pin: OUT: the gears turn the plate");
    expect(text).toMatch(/Gear on spindle: \d+ teeth/);
    expect(text).toMatch(
      /Gear on worm: \d+ teeth[,;] (no idler|1 idler between: one gear more, of any size|\d idlers between: \d gears more, of any size)/,
    );
    expect(text).toMatch(/Plate turns: (WITH|AGAINST) the crank/);
    expect(cautions.join("\n")).toMatch(
      /Without its gears this move (gives \d+|comes nearest to \d+, .* out at the close): the part is scrap/,
    );
    expect(cautions.join("\n")).toContain("tilted out of line with the gears, nor while they cut a helix");
  });

  it("127 without its gears gives 120, and so it says", () => {
    expect(told(threePlates, 127).cautions.join("\n")).toContain("Without its gears this move gives 120");
  });

  it("a train that may not go together says so where it is set up and where it is warned of", () => {
    const { setUp, cautions } = told(cramped, 28, { methods: ["differential"], teethPerMove: 1 });
    for (const text of [setUp, cautions]) expect(text.join("\n")).toMatch(/May foul: the stud's 90 may reach the spindle/i);
  });
});
