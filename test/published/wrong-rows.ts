import type { Source } from "./source.ts";

const source: Source = {
  title: "rows that shops were given, or took",
  publisher: "common practice, no source",
  year: "not known",
  place: "common practice, no source; what each really gives is our arithmetic",
};

/** Moves that shops were given, or took, for a count that they do not give. */
export const wrongRows = [
  { meant: 57, teeth: 1, move: { turns: 0, spaces: 22, circle: 33 }, gives: 60, why: "a geared row read as a plain one", source },
  {
    meant: 96,
    teeth: 1,
    move: { turns: 0, spaces: 20, circle: 47 },
    gives: 94,
    why: "an impossible count taken on the nearest circle",
    source,
  },
] as const;

/**
 * A compound row that goes about for 106: five teeth a move, said nowhere, and not exact. By hand,
 * 106·(1 + 7/39 + 29/41)/40 − 5 turns = (106·3017 − 5·63,960)/63,960 = 2/63,960, which is 40.5″ at the close.
 */
export const nearRow = {
  meant: 106,
  teeth: 5,
  move: { turns: 1, spaces: 7, circle: 39, second: { spaces: 29, circle: 41, direction: "with" } },
  closing: { turns: 2, of: 63_960, printed: "40.5" },
  source,
} as const;
