import type { Source } from "./source.ts";

const source: Source = {
  title: "Spacing Table (chordal factors)",
  publisher: "workshop notes, published on the web",
  year: "not shown",
  place: "the whole page",
};

/** From hole to hole of a circle, in parts of its diameter. */
export const chordFactors = {
  source,
  rows: [
    { holes: 4, factor: "0.7071" },
    { holes: 6, factor: "0.5000" },
    { holes: 8, factor: "0.3827" },
    { holes: 10, factor: "0.3090" },
    { holes: 12, factor: "0.2588" },
    { holes: 14, factor: "0.2225" },
    { holes: 16, factor: "0.1951" },
    { holes: 18, factor: "0.1736" },
    { holes: 20, factor: "0.1564" },
    { holes: 22, factor: "0.1423" },
    { holes: 24, factor: "0.1305" },
    { holes: 26, factor: "0.1205" },
    { holes: 28, factor: "0.1120" },
    { holes: 30, factor: "0.1045" },
    { holes: 36, factor: "0.0872" },
    { holes: 38, factor: "0.0826" },
    { holes: 40, factor: "0.0785" },
    { holes: 42, factor: "0.0747" },
    { holes: 44, factor: "0.0713" },
  ],
} as const;
