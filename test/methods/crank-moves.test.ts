import fc from "fast-check";
import { expect, it } from "vitest";
import { allCrankMoves } from "../../src/methods/crank-moves.ts";
import { rational, toRatio } from "../../src/number/ratio.ts";

const ratios = (most: number) => fc.tuple(fc.integer({ min: 1, max: most }), fc.integer({ min: 1, max: 3 }));
const circles = fc.uniqueArray(fc.integer({ min: 2, max: 18 }), { minLength: 1, maxLength: 3 });

it("every crank move is one space more or less from another, as far as the plate may turn and one further at either end", () => {
  fc.assert(
    fc.property(ratios(24), ratios(9), circles, fc.integer({ min: 1, max: 40 }), (worm, plate, holes, divisions) => {
      const head = {
        worm: { n: worm[0], d: worm[1] },
        plateTurns: { n: plate[0], d: plate[1] },
        circles: holes.map((each) => ({ plate: "1", face: null, holes: each })),
      };
      const [turns, most] = [rational(...worm), rational(...plate)];
      const teeth = divisions > 2 ? 2 : 1;
      // g = R − N·h/(C·k), counted up space by space.
      const wanted = holes.flatMap((circle, index) => {
        const plateAt = (spaces: number) => turns.sub(rational(divisions * spaces, circle * teeth));
        const isWithin = (spaces: number) => plateAt(spaces).abs().compare(most) <= 0;
        const last = Math.ceil((circle * teeth * (worm[0] / worm[1] + plate[0] / plate[1])) / divisions) + 1;
        return Array.from({ length: last }, (_, step) => step + 1)
          .filter((spaces) => isWithin(spaces - 1) || isWithin(spaces) || isWithin(spaces + 1))
          .filter((spaces) => plateAt(spaces).n !== 0n && (spaces % circle !== 0 || index === 0))
          .map((spaces) => `${Math.floor(spaces / circle)} + ${spaces % circle}/${circle}: ${toRatio(plateAt(spaces))}`);
      });
      const terms = (one: { readonly with: boolean; readonly numerator: number; readonly denominator: number }) =>
        `${one.with ? "" : "-"}${one.numerator}${one.denominator === 1 ? "" : `/${one.denominator}`}`;
      const found = [...allCrankMoves(head, { divisions, teeth })];
      const kept = new Set(found.map((one) => `${one.turns} + ${one.spaces}/${one.on.holes}: ${terms(one)}`));
      expect(wanted.filter((move) => !kept.has(move))).toEqual([]);
      const named = found.map(({ spaces, circle, plate: on }) => [spaces === 0, circle === null, on === null].join());
      expect(new Set(["true,true,true", "false,false,false", ...named]).size).toBe(2);
      // No more than one beyond either end of each circle is there beside them.
      expect(found.length - wanted.length).toBeLessThanOrEqual(2 * holes.length);
    }),
    { numRuns: 30 },
  );
});
