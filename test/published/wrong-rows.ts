/**
 * Moves that shops were given, or took, for a count that they do not give.
 * From shop reports, no printed source; what each really gives is our arithmetic.
 */
export const wrongRows = [
  { meant: 57, teeth: 1, move: { turns: 0, spaces: 22, circle: 33 }, gives: 60, why: "a geared row read as a plain one" },
  {
    meant: 96,
    teeth: 1,
    move: { turns: 0, spaces: 20, circle: 47 },
    gives: 94,
    why: "an impossible count taken on the nearest circle",
  },
] as const;

/** A compound row that old tables give for 106: five teeth a move, said nowhere, and not exact. */
export const nearRow = {
  meant: 106,
  teeth: 5,
  move: { turns: 1, spaces: 7, circle: 39, second: { spaces: 29, circle: 41, direction: "with" } },
  closingArcSeconds: 40.5,
} as const;
