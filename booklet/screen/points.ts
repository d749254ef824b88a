/** A point at so many turns clockwise from the top of a circle round the origin, in the figures of a path. */
export function pointAt(radius: number, turns: number): string {
  const angle = 2 * Math.PI * turns;
  return `${shown(radius * Math.sin(angle))} ${shown(-radius * Math.cos(angle))}`;
}

/** A length in a drawing, to the hundredth. */
export function shown(length: number): string {
  return String(Math.round(length * 100) / 100);
}
