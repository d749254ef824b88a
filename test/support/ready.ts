import { type Head, readyHeads } from "../../src/index.ts";

/** A ready head by its id. */
export function ready(id: string): Head {
  const head = readyHeads.find((each) => each.id === id);
  if (head === undefined) throw new Error(`there is no ready head ${id}`);
  return head;
}

/** 40:1, plates 15–20, 21–33, 37–49, twelve change gears. */
export const threePlates: Head = ready("ratio-40-plates-15-49");

/** 40:1, the plate with faces 24–43 and 46–66, nineteen change gears. */
export const twoFaces: Head = ready("ratio-40-faces-24-66");
