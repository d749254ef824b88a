import { describe, expect, it } from "vitest";
import { type NearestTooth, revolutions, type Scale } from "../../src/index.ts";
import { standingItems } from "../../src/words/index.ts";

const ring: Scale = { marksPerTurn: 360, vernierLines: 1, figures: "angle" };
const at = (more: Partial<NearestTooth> = {}): NearestTooth => ({
  tooth: 13,
  past: revolutions(0),
  sure: true,
  alike: null,
  ...more,
});
const said = (...given: Parameters<typeof standingItems>) => standingItems(...given).map(({ term, text }) => `${term}: ${text}`);

describe("where the work stands by the ring", () => {
  it("is at a tooth, or past it or short of it, as it was read", () => {
    expect(said(at(), ring, "tooth", "")).toEqual(["The ring says: tooth 13, exactly"]);
    // 1/2700 of a turn is 8′.
    expect(said(at({ past: revolutions("1/2700") }), ring, "tooth", "")).toEqual([
      "The ring says: tooth 13, 0° 08′ 00.0″ past it",
    ]);
    expect(said(at({ past: revolutions("-1/2700") }), ring, "place", "")).toEqual([
      "The ring says: place 13, 0° 08′ 00.0″ short of it",
    ]);
  });

  it("says where the pin should be then", () => {
    expect(said(at(), ring, "tooth", "hole 6")).toEqual(["The ring says: tooth 13, exactly; the pin should be in hole 6"]);
  });

  it("is not sure of teeth that read the same on a coarse ring", () => {
    const alike = { first: 12, last: 14, count: 3 };
    expect(said(at({ sure: false, alike }), ring, "tooth", "")).toEqual([
      "The ring says: about tooth 13, as read",
      "NOT SURE: teeth 12 to 14 read the same on this ring, which is too coarse for them: find the tooth by the pin's hole, or count",
    ]);
    expect(said(at({ sure: false, alike }), ring, "place", "")[1]).toMatch(/^NOT SURE: places 12 to 14 .* find the place by/);
  });

  it("is not sure where no tooth reads so, or where no ring tells how fine the reading is", () => {
    expect(said(at({ sure: false }), ring, "tooth", "")[1]).toBe(
      "NOT SURE: no tooth reads so on this ring: check its zero, its side, and what was asked for, and that nothing has moved since",
    );
    expect(said(at({ sure: false }), null, "tooth", "")[1]).toBe(
      "NOT SURE: that is over a quarter of the way to the next: check the zero of the ring, its side, and what was asked for; or the ring is too coarse for it",
    );
  });
});
