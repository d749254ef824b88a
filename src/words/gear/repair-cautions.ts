import type { Item } from "../item.ts";

/** Before the cutting: heat, fumes, and whose work it is; general workshop practice, no source. */
export const heatCautions: readonly Item[] = Object.freeze([
  {
    term: "First of all",
    text: "The machine's manual, local codes and qualified practice come before anything here. A gear that lifts, carries or guards people is theirs to repair.",
  },
  {
    term: "Old coatings",
    text: "Find out what is on the part before heating it. Zinc, cadmium, lead or chromium in plating or paint make fumes that can kill: take it off by a safe way, or have it done.",
  },
  {
    term: "Brazing",
    text: "Fumes of filler and flux hurt: take cadmium-free filler, read its data sheet and the flux's, draw the fumes away from the face. Keep the part dry, watch the fire, let the part cool before touching it.",
  },
  {
    term: "Cast iron",
    text: "The trade does not agree on heat: some preheat the whole part and cool it slowly, some warm only the place, some avoid heat with screwed-in pegs or a fitted insert. Any heat can crack the casting. Ask someone qualified for that iron.",
  },
]);

/** At the cutter; general workshop practice, no source. */
export const cuttingCautions: readonly Item[] = Object.freeze([
  {
    term: "Spindle",
    text: "Lock it before every cut: on an unlocked spindle the cutter snatches the work and breaks.",
  },
  {
    term: "Saw",
    text: "A slitting saw grabs: work held fast, feed against its turning, shallow cuts. Keep out of its path.",
  },
  {
    term: "Cutter",
    text: "No hand near it until it stands. Guards on, sleeves and gloves away, eye protection on; chips by brush.",
  },
]);
