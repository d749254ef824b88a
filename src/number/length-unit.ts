/** The unit of length that a person works in. Data are always in millimetres. */
export type LengthUnit = "mm" | "in";

/** Millimetres in an inch. */
export const mmPerInch = 25.4;
