import { parseAngle, type SetMove, type Target } from "../../src/index.ts";
import { byEyeTyped, isByEye, type ReadByEye } from "./by-eye.ts";
import { refuseTyped } from "./numbers-typed.ts";

/** A move as it is set, but for the worm ratio, which is the head's. */
export type MoveTyped = Omit<SetMove, "wormRatio">;

/** What was asked: a count or an angle to divide by, what a move gives, or which counts an angle could mean that was read by eye. */
export type Question =
  | { readonly kind: "target"; readonly target: Target }
  | { readonly kind: "move"; readonly move: MoveTyped }
  | { readonly kind: "by-eye"; readonly read: ReadByEye };

/**
 * Reads what was typed; null where nothing was.
 *
 * @throws {@link InputError} in a sentence where it is neither a count nor an angle nor a move.
 */
export function questionTyped(typed: string): Question | null {
  const text = typed.trim();
  if (text === "") return null;
  if (/^\d{1,8}$/.test(text)) return { kind: "target", target: { divisions: Number(text) } };
  if (isByEye(text)) return { kind: "by-eye", read: byEyeTyped(text) };
  const move = moveTyped(text);
  // Turns alone are an angle of the work.
  if (move !== null && (move.circle !== null || move.gears)) return { kind: "move", move };
  return { kind: "target", target: { angle: parseAngle(text) } };
}

const fraction = String.raw`(\d{1,6})\s*(?:/|of)\s*(\d{1,6})`;
const movePattern = new RegExp(
  String.raw`^(?:(\d{1,6})(?:\s*t(?:urns?)?)?(?=$|[\s+−-]))?\s*\+?\s*(?:${fraction})?\s*(?:([+−-])\s*${fraction})?$`,
  "i",
);
const trainPattern = /^(.*?)[\s,;]*gears?\s*([\d*×x\s]+)(?:\/|to)([\d*×x\s]+?)\s*,?\s*(?:plate\s*)?(with|against)?$/i;

/** Reads a move with its gears: `0 + 5/15 gears 56/24 against`; null where it is none. */
function moveTyped(text: string): MoveTyped | null {
  const train = trainPattern.exec(text);
  if (train === null) return crankTyped(text);
  const crank = crankTyped(train[1] ?? "");
  return crank && { ...crank, gears: gearsTyped(train[2] ?? "", train[3] ?? "", train[4]?.toLowerCase()) };
}

/** Reads a move without gears: `0 + 22/33`, `1 + 7/39 + 29/41`, `2 turns`; null where it is none. */
export function crankTyped(text: string): MoveTyped | null {
  const parts = movePattern.exec(text.trim());
  if (parts === null || parts[0] === "") return null;
  const [, turns = "0", spaces, circle, sign, then, second] = parts;
  return {
    turns: Number(turns),
    spaces: Number(spaces ?? 0),
    circle: circle === undefined ? null : Number(circle),
    ...(sign !== undefined && {
      second: { spaces: Number(then), circle: Number(second), direction: sign === "+" ? "with" : "against" } as const,
    }),
  };
}

function gearsTyped(drivers: string, driven: string, direction: string | undefined): NonNullable<SetMove["gears"]> {
  const teeth = (side: string) => side.split(/[*×x]/i).map(Number);
  if (direction !== "with" && direction !== "against")
    refuseTyped("gears", "say which way the gears turn the plate: end with the word with, or against, the crank");
  return { drivers: teeth(drivers), driven: teeth(driven), direction };
}
