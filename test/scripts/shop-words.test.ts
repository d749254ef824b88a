import { describe, expect, it } from "vitest";
import { said } from "../../scripts/command.ts";
import { headFiles } from "../support/head-file.ts";

const headFile = headFiles();

const words = async (...asked: string[]) => (await said(asked)).text;
const oneLine = async (...asked: string[]) => (await words(...asked)).replace(/\s+/g, " ");
const smallPlate = { wormRatio: "40", plates: [{ name: "1", circles: [15, 16, 17, 18, 19, 20] }] };

describe("a train that may not go together", () => {
  /*
   * Worked by hand: 6 of 181 want 240/181 of a turn. With 1 7/18 turns the plate must give
   * 40 − 181·25/(18·6) = −205/108 for a turn of the spindle, which is 41·40/(12·72). Either way round one gear
   * reaches a shaft: 41 + 12 is less than 40 + 15, and 40 + 12 than 41 + 15.
   */
  const head = headFile({ id: "small-kit", name: "a small kit", ...smallPlate, gears: [12, 40, 41, 72] });

  it("is an answer that says so in its title, beside its gears, and what to try", async () => {
    const told = await oneLine("181", "--head", head);
    expect(told).toContain("two pairs of gears that may foul, 6 TEETH PER MOVE: exact");
    expect(told).toContain("Crank 1 turn + 7 spaces");
    expect(told).toContain("Plate turns AGAINST the crank, 1 97/108 for one turn of the spindle");
    expect(told).toMatch(
      /MAY FOUL the stud's (?:40 may reach the spindle: 41 \+ 12 is less than 40|41 may reach the spindle: 40 \+ 12 is less than 41) \+ 15 \(.*?\)\. Try it on the quadrant first\./,
    );
    expect((await said(["181", "--head", head])).code).toBe(0);
  });

  it("is not said of one that goes together: 56 to 24 on two shafts", async () => {
    expect(await words("127")).not.toMatch(/foul/i);
  });
});

describe("moves by the dial", () => {
  it("8 on 90:1 with 240 marks: 11 1/4 turns are 11 turns and 60 marks, from each to the next", async () => {
    const told = await oneLine("8", "--head", "ratio-90-dial");
    expect(told).toContain("BY THE DIAL, every position on a mark: exact");
    expect(told).toContain("Dial 11 turns + 60 marks + 0 lines of the vernier from each to the next");
    expect(told).toContain("One zero Set every position from one zero, not each from the last.");
    expect(told).toContain("Past the mark: go back half a turn or more and come up to it again");
    expect(told).not.toMatch(/\bholes?\b|sector arms/i);
  });

  it("1080 with a vernier of six: 1/12 of a turn is 20 marks; 4320 is 5 marks, 12,960 is 1 mark and 4 lines", async () => {
    const dial = async (count: string) =>
      / Dial (.*?) from each to the next/.exec(await oneLine(count, "--head", "ratio-90-dial"))?.[1];
    expect(await dial("1080")).toBe("0 turns + 20 marks + 0 lines of the vernier");
    expect(await dial("4320")).toBe("0 turns + 5 marks + 0 lines of the vernier");
    expect(await dial("12960")).toBe("0 turns + 1 mark + 4 lines of the vernier");
  });

  it("whole turns come back to the same mark, and no line of the vernier is named", async () => {
    const told = await oneLine("9", "--head", "ratio-90-dial");
    expect(told).toContain("Dial 10 turns + 0 marks: back at the same mark after every move");
  });

  it("the dial at every tooth: 22° 30′ is 5 turns of 4° and 2° 30′ more", async () => {
    const told = await words("16", "--head", "ratio-90-dial", "--teeth", "2,5");
    expect(told).toMatch(/^ +2 {3}5 t \+ 2° 30′ 00″ +\S+ +22° 30′ 00\.0″$/m);
    expect(told).toMatch(/^ +5 {2}22 t \+ 2° 00′ 00″ +90° +90° 00′ 00\.0″$/m);
  });
});

describe("where the ring cannot be sure", () => {
  it("between two teeth is NOT SURE, and near one is not: 2 of 86 are at 4.19° and 8.37°", async () => {
    expect(await words("86", "--ring", "4")).not.toContain("NOT SURE");
    const told = await oneLine("86", "--ring", "6.3");
    expect(told).toContain("The ring says about tooth 3, ≈ 2° 04′ 19.5″ short of it; ");
    expect(told).toContain("NOT SURE no tooth reads so on this ring: check its zero, its side, and what was asked for");
  });

  it("on a head that states no ring it is said to be over a quarter of the way to the next", async () => {
    const head = headFile({ id: "no-ring", name: "one that states no ring", ...smallPlate, ring: null });
    const told = await oneLine("8", "--ring", "60", "--head", head);
    // 60° of 45°: 15° past, a third of the way.
    expect(told).toContain("about tooth 2, 15° 00′ 00.0″ past it");
    expect(told).toContain("NOT SURE that is over a quarter of the way to the next: check the zero of the ring");
  });
});

describe("a repair by the nearest holes", () => {
  const head = headFile({ id: "one-plate", name: "one plate", ...smallPlate });
  const circles = [15, 16, 17, 18, 19, 20];
  const teeth = 97;
  const spaceSeconds = 1_296_000 / teeth;
  const nearestOn = (circle: number, moves: number) => Math.round((40 * circle * moves) / teeth);
  const offOn = (circle: number, moves: number) => (nearestOn(circle, moves) / circle / 40) * 1_296_000 - moves * spaceSeconds;
  const asked = ["repair", "97", "--module", "2", "--head", head, "--damaged"];

  it.each([
    ["20,60,90", 58],
    ["1-60", 96],
    ["5,50", 3],
  ])("teeth %s: counted from space %d, each space set by itself, on the circle that is least off", async (damaged, start) => {
    const text = await words(...asked, damaged);
    expect(text).toContain("SET UP: NEAR ONLY, NOT EXACT: THE NEAREST HOLES");
    const circle = Number(/Plate +1, circle of (\d+) holes/.exec(text)?.[1]);
    const rows = [
      ...text.matchAll(/^ +(\d+) +(START|cut|PROVE) +\d+\*? \| \d+\*? +(\S+|\d+ \+ \d+\/\d+) +(\d+) +(\d+) +(\S+)/gm),
    ].map(([, space = "", act = "", goOn = "", turns = "", hole = "", off = ""]) => ({
      moves: (Number(space) - start + teeth) % teeth,
      act,
      goOn,
      pin: Number(turns) * circle + Number(hole),
      off: Number(off.replace("−", "-").replace(/[″+]/g, "")),
    }));
    expect(rows[0]).toMatchObject({ moves: 0, act: "START", goOn: "stay", pin: 0 });
    expect(rows.at(-1)?.act).toBe("PROVE");
    let pin = 0;
    for (const { moves, goOn, pin: printed, off } of rows) {
      const [turns = 0, spaces = 0] = (goOn.match(/\d+/g) ?? []).map(Number);
      pin += turns * circle + spaces;
      expect(printed).toBe(pin);
      expect(pin).toBe(nearestOn(circle, moves));
      expect(Math.abs(off - offOn(circle, moves))).toBeLessThanOrEqual(0.0501);
    }
    const cut = rows.filter(({ act }) => act === "cut").map(({ moves }) => moves);
    const worstOn = (each: number) => Math.max(...cut.map((moves) => Math.abs(offOn(each, moves))));
    expect(worstOn(circle)).toBe(Math.min(...circles.map(worstOn)));
    expect(text.replace(/\s+/g, " ")).toContain("Set every place to its own nearest hole; no error adds to the next");
    const worst = Number(/no space to cut over ([\d.]+)′/.exec(text)?.[1]) * 60;
    expect(worst).toBeGreaterThanOrEqual(worstOn(circle));
    expect(worst - worstOn(circle)).toBeLessThan(6);
  });
});
