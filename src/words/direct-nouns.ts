import type { DirectForm } from "../head/direct-plate.ts";

/** What a direct plate is called, and a place round it. */
export interface DirectNouns {
  readonly what: string;
  readonly place: string;
  readonly places: string;
}

const directNounsBy: Readonly<Record<DirectForm | "plate", DirectNouns>> = {
  plate: { what: "direct plate", place: "hole", places: "holes" },
  collar: { what: "collar", place: "notch", places: "notches" },
  detents: { what: "detents", place: "detent", places: "detents" },
  gear: { what: "gear", place: "tooth space", places: "teeth" },
};

/** What the direct plate of a setting is called; of any other, a plate with holes. */
export function directNouns(setting: { readonly form?: DirectForm | undefined } | object): DirectNouns {
  return directNounsBy[("form" in setting && setting.form) || "plate"];
}
