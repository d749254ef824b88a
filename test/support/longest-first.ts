import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Files that take seconds, and are not the largest: on a clean clone nothing else tells which take long. */
const long = ["screen/screen", "package", "guides", "scripts/run", "scripts/bench", "booklet/foot-rule", "booklet/printed"].map(
  (name) => `/test/${name}.test.ts`,
);

/** Begins with what takes longest, so that neither of two workers ends long after the other. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isLong = ({ moduleId }: TestSpecification) => long.some((name) => moduleId.endsWith(name));
    const placeOf = ({ moduleId }: TestSpecification) => long.findIndex((name) => moduleId.endsWith(name));
    return [
      ...sorted.filter(isLong).sort((one, other) => placeOf(one) - placeOf(other)),
      ...sorted.filter((each) => !isLong(each)),
    ];
  }
}
