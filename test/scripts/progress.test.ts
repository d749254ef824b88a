import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { progress } from "../../scripts/progress.ts";

beforeEach(() => void vi.useFakeTimers({ toFake: ["performance"] }));
afterEach(() => void vi.useRealTimers());

/** A stream that keeps what it is told. */
function streamOf(isTTY: boolean) {
  const told: string[] = [];
  return { isTTY, told, write: (text: string) => told.push(text) > 0 };
}

it.each([
  ["of what takes less than a second", true, 990],
  ["where nobody reads it as it comes", false, 5000],
] as const)("says nothing %s", (_, isTTY, milliseconds) => {
  const stream = streamOf(isTTY);
  const { tell, end } = progress(stream as never);
  vi.advanceTimersByTime(milliseconds);
  tell("drawing", 1, 9);
  end();
  expect(stream.told).toEqual([]);
});

it("tells on one line how far it has come, not too often, and takes the line away", () => {
  const stream = streamOf(true);
  const { tell, end } = progress(stream as never);
  for (let done = 1; done <= 30; done += 1) {
    vi.advanceTimersByTime(50);
    tell("drawing", done, 30);
  }
  end();
  const shown = stream.told.map((text) => text.split("\r").at(-1));
  expect(shown).toEqual([
    "… drawing 20 of 30",
    "… drawing 22 of 30",
    "… drawing 24 of 30",
    "… drawing 26 of 30",
    "… drawing 28 of 30",
    "… drawing 30 of 30",
    "",
  ]);
  expect(stream.told.at(-1)).toBe(`\r${" ".repeat("… drawing 30 of 30".length)}\r`);
});
