import { allMethods, exactSettings, type Head, type SearchOptions, type Setting, type Target } from "../../src/index.ts";

/** The first settings of a head for a target, at most so many. */
export function take(most: number, ...asked: readonly [head: Head, target: Target, options?: SearchOptions]): readonly Setting[] {
  const settings: Setting[] = [];
  if (most === 0) return settings;
  for (const setting of exactSettings(...asked)) {
    settings.push(setting);
    if (settings.length === most) break;
  }
  return settings;
}

/** A few settings by each method that serves. */
export function takeOfEach(most: number, head: Head, target: Target, teethPerMove: number): readonly Setting[] {
  return allMethods.flatMap((method) => take(most, head, target, { methods: [method], teethPerMove }));
}
