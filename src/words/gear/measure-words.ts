import type { Measure } from "../../gear/identify/gear-evidence.ts";

/** What was measured: `tip diameter`, `span over 3 teeth`. */
export function measureWords(measure: Measure): string {
  switch (measure.code) {
    case "tip-diameter":
      return "tip diameter";
    case "whole-depth":
      return "whole depth";
    case "centre-distance":
      return "centre distance";
    case "mate-tip-diameter":
      return "mate's tip diameter";
    case "chord":
      return `chord of the tips, ${measure.teeth} teeth on`;
    case "height":
      return `height over that chord`;
    case "span":
      return `span over ${measure.teeth} teeth`;
    case "base-pitch":
      return `base pitch from the spans over ${measure.from} and ${measure.to} teeth`;
  }
}
