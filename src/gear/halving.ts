/** Enough to come down to the last bit of a float from any range. */
const steps = 100;

/** The place in a range from which a claim holds that fails below it, found by halving. */
export function firstWhere(holds: (at: number) => boolean, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < steps; step += 1) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}
