import type { Source } from "./source.ts";

const source: Source = {
  title: "Index table and plates (project 7)",
  publisher: "workshop notes, published on the web",
  year: "not shown",
  place: "page project-07-8",
};

/** What a hole that is off by so many minutes of its plate turns the work by; printed rounded up to half a second. */
export const plateError = { source, plateMinutes: 0.5, wormRatio: 72, printedSeconds: 0.5 } as const;
