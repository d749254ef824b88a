/** A gear to judge an error against. */
export interface PitchedGear {
  /** Normal module in mm, 0.5 to 70. */
  readonly module: number;
  /** Reference (pitch) diameter in mm, 5 to 10,000; for a spur gear module · teeth. */
  readonly diameterMm: number;
}

/** What the standard is for, in mm. */
export const standard = { module: { least: 0.5, most: 70 }, diameter: { least: 5, most: 10_000 } } as const;

/** Whether the standard has grades for such a gear. */
export function isGraded({ module, diameterMm }: PitchedGear): boolean {
  const isIn = (value: number, { least, most }: { readonly least: number; readonly most: number }) =>
    value >= least && value <= most;
  return isIn(module, standard.module) && isIn(diameterMm, standard.diameter);
}

/** The finest and the coarsest accuracy grade. */
export const grades = { finest: 0, coarsest: 12, base: 5 } as const;
