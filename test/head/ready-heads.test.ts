import { expect, it } from "vitest";
import { readyHead, readyHeads } from "../../src/index.ts";
import { refusal } from "../support/refusal.ts";
import { wrong } from "../support/wrong.ts";

it("every ready head is found by its id, and each id is there once", () => {
  for (const head of readyHeads) expect(readyHead(head.id)).toBe(head);
  expect(new Set(readyHeads.map(({ id }) => id)).size).toBe(readyHeads.length);
});

it.each(["ratio-41", "", "Ratio-90-dial", undefined])("%j is none, and those that there are are named", (id) => {
  const [fault] = refusal(() => readyHead(wrong<string>(id)));
  expect(fault).toMatchObject({ code: "unknown-word", place: "id" });
  for (const head of readyHeads) expect(fault?.problem).toContain(head.id);
});
