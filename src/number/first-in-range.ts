/**
 * The first step j from 0 at which j·`step` modulo `modulus` lies from `least` to `most`, both ends
 * among them; null where it never does.
 *
 * By the identity of Euclid and not by stepping: should no multiple of a short step fall in the range
 * itself, the remainders at which the steps come round are asked the same question of a smaller
 * modulus, so that the work grows with the digits of the numbers and not with the numbers.
 *
 * @param step - 0 to one below the modulus.
 * @param least - 0 or more, not over `most`, which is below the modulus.
 */
export function firstInRange(step: bigint, modulus: bigint, least: bigint, most: bigint): bigint | null {
  if (least === 0n) return 0n;
  if (step === 0n) return null;
  // Long steps are short ones the other way round.
  if (2n * step > modulus) return firstInRange(modulus - step, modulus, modulus - most, modulus - least);
  const onward = (least + step - 1n) / step;
  if (onward * step <= most) return onward;
  // No multiple of the step is among them, nor is an end one.
  const rounds = firstInRange(modulus % step, step, step - (most % step), step - (least % step));
  return rounds === null ? null : (least + modulus * rounds + step - 1n) / step;
}

/**
 * Of the first `count` multiples of `step`, the one that lies furthest from every multiple of
 * `modulus`: its index, and how far it lies, which is at most half of the modulus.
 */
export function furthestMultiple(
  step: bigint,
  modulus: bigint,
  count: bigint,
): { readonly index: bigint; readonly distance: bigint } {
  let [none, some] = [modulus / 2n + 1n, 0n];
  let index = 0n;
  // The greatest distance that some multiple still has, by halving.
  while (none - some > 1n) {
    const distance = (none + some) / 2n;
    const first = firstInRange(step, modulus, distance, modulus - distance);
    if (first !== null && first < count) {
      some = distance;
      index = first;
    } else {
      none = distance;
    }
  }
  return { index, distance: some };
}
