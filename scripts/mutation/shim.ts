import { format } from "node:util";
import { ASYMMETRIC_MATCHERS_OBJECT, chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend } from "@vitest/expect";

/*
 * What of vitest the library's tests use, in one process: tests are only kept, and run when asked for,
 * again and again, as no test run by vitest itself could be.
 */

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
const matchers = (globalThis as unknown as Record<symbol, object>)[ASYMMETRIC_MATCHERS_OBJECT];
export const expect: unknown = Object.assign(
  (value: unknown, message?: string) => chai.expect(value, message),
  chai.expect,
  matchers,
);

type Body = (...given: readonly unknown[]) => unknown;

/** A test that was told, to be run any number of times. */
export interface Told {
  readonly file: string;
  readonly name: string;
  readonly run: Body;
}

export const told: Told[] = [];
let file = "";
const within: string[] = [];

/** Says which file the tests that follow are of. */
export function startFile(name: string): void {
  file = name;
}

function tell(name: string, run: Body): void {
  told.push({ file, name: [...within, name].join(" > "), run });
}

function group(name: string, body: Body): void {
  within.push(name);
  body();
  within.pop();
}

/** `$name` and `%s` are enough to tell rows apart. */
const eachOf = (of: (name: string, body: Body) => void) => (rows: readonly unknown[]) => (name: string, body: Body) => {
  for (const [index, row] of rows.entries()) {
    const given = Array.isArray(row) ? row : [row];
    of(`${format(name, ...given).slice(0, 100)} #${index}`, () => body(...given));
  }
};

export const it: unknown = Object.assign(tell, { each: eachOf(tell), concurrent: tell });
export const test: unknown = it;
export const describe: unknown = Object.assign(group, { each: eachOf(group), concurrent: group });
export const beforeAll = (body: Body): unknown => body();
export const afterAll = (): void => {};
