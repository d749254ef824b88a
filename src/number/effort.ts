/**
 * The work that one question is let to be, counted in steps of about a twentieth of a microsecond.
 *
 * Steps and not time: the same question is then cut short at the same place on every machine, and a
 * test can count them. What a usual shop has comes nowhere near the end of them.
 *
 * The one thing here that changes as it is used: it belongs to one question and leaves it never.
 */
export interface Effort {
  left: number;
}

/** So many steps and no more. */
export function effortOf(most: number): Effort {
  return { left: most };
}

/** Takes so many steps. False where there are not so many left; from then on nothing is given. */
export function take(effort: Effort, steps: number): boolean {
  effort.left -= steps;
  return effort.left >= 0;
}

/** Whether steps were asked for in vain, so that something was left untried. */
export function isCut({ left }: Effort): boolean {
  return left < 0;
}
