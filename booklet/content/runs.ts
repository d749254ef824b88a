/** Some of a list that stand one after the other. */
export type Run<Each> = readonly [Each, ...Each[]];

/**
 * A list in runs, each as long as it can be.
 *
 * @param goesOn - Whether the next one is of the run.
 */
export function runsOf<Each>(list: readonly Each[], goesOn: (run: Run<Each>, next: Each) => boolean): readonly Run<Each>[] {
  const runs: [Each, ...Each[]][] = [];
  for (const each of list) {
    const run = runs.at(-1);
    if (run !== undefined && goesOn(run, each)) run.push(each);
    else runs.push([each]);
  }
  return runs;
}
