import { describe, expect, it } from "vitest";
import { bookletPdf } from "../../booklet/index.ts";
import { type Head, readyHeads } from "../../src/index.ts";

const [head] = readyHeads as readonly [Head];
const short = { from: 2, to: 60, parts: ["simple"] } as const;

describe("a book that is watched", () => {
  it("tells of every count, then of every page, and is the same book", async () => {
    const told: [string, number | undefined, number | undefined][] = [];
    const watched = await bookletPdf(head, { ...short, onProgress: (...all) => told.push(all as (typeof told)[number]) });
    expect(Buffer.from(watched).equals(Buffer.from(await bookletPdf(head, short)))).toBe(true);
    const counts = told.filter(([doing]) => doing === "working out and proving the counts");
    expect(counts.map(([, done]) => done)).toEqual(Array.from({ length: 60 }, (_, done) => done));
    expect(new Set(counts.map(([, , total]) => total))).toEqual(new Set([59]));
    const pages = told.filter(([doing]) => doing === "drawing the pages");
    expect(pages.map(([, done]) => done)).toEqual(Array.from({ length: pages.length }, (_, done) => done));
    expect(pages.at(-1)?.[1]).toBe(pages[0]?.[2]);
  });

  it("stops at the count or the page where it is told to", async () => {
    for (const [where, at] of [
      ["working out and proving the counts", 20],
      ["drawing the pages", 1],
    ] as const) {
      const stop = new AbortController();
      let last = "";
      const onProgress = (doing: string, done?: number) => {
        last = `${doing} ${done}`;
        if (doing === where && done === at) stop.abort(new Error("enough"));
      };
      await expect(bookletPdf(head, { ...short, signal: stop.signal, onProgress })).rejects.toThrow("enough");
      expect(last).toBe(`${where} ${at}`);
    }
  });

  it("lets others have a turn, so that it can be stopped from outside", async () => {
    const signal = AbortSignal.timeout(30);
    await expect(bookletPdf(head, { to: 5000, signal })).rejects.toMatchObject({ name: "TimeoutError" });
  });
});
