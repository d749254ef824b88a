import {
  type NearBy,
  type Place,
  type PlaceByCranks,
  type PlaceByHole,
  type PlaceByMoves,
  type PlaceByScale,
  type PlannedJob,
  type Reading,
  wormRatioOf,
} from "../../src/index.ts";
import { add, divided, holes, type Turns, turnsOf, turnsText, withinTurn, workTurned } from "./bench.ts";
import {
  type Bench,
  countedByHand,
  isNoMoreThan,
  madeByHand,
  pastTooth,
  perSpindle,
  readTurns,
  type Stood,
  secondsOf,
  shownByHand,
  stepsRead,
  trueTurn,
  zerosDown,
} from "./hand-moves.ts";

/*
 * A plan worked through on the bench, and what it says beside what is seen there.
 */

/** What a plan says of its places that is not so on the bench; none where all is so. `made`: the moves that are made before it. */
export function notSoOnBench(plan: Pick<PlannedJob, "way" | "places">, bench: Bench, made = 0): readonly string[] {
  const { way, places } = plan;
  switch (way.by) {
    case "moves": {
      const list = places as readonly PlaceByMoves[];
      const stood = madeByHand(bench, way.setting, list, made);
      return list.flatMap((place, index) => notSo(place, stood[index] as Stood, bench, way.setting.spindlePerMove));
    }
    case "nearest-hole": {
      const list = places as readonly PlaceByHole[];
      const { circle } = way.setting;
      const halfSpace = { n: 1n, d: 2n * BigInt(circle) };
      const stood = countedByHand(bench, circle, list);
      return list.flatMap((place, index) => [
        ...notSo(place, stood[index] as Stood, bench),
        ...claim(
          isNoMoreThan((stood[index] as Stood).off, halfSpace, perSpindle(bench.head, "dial")),
          `${place.tooth}: there is a nearer hole`,
        ),
      ]);
    }
    case "both-cranks":
      return (places as readonly PlaceByCranks[]).flatMap((place) => notSoByCranks(place, way.setting, bench));
    case "nearest-direct": {
      const list = places as readonly PlaceByHole[];
      const { circle, vernierHoles = 1 } = way.setting;
      const halfSpace = { n: 1n, d: 2n * BigInt(circle) };
      const stood = countedByHand(bench, circle, list, undefined, { n: 1n, d: 1n });
      return list.flatMap((place, index) => {
        const { hole, ...stands } = stood[index] as Stood;
        const there = {
          ...stands,
          hole: Math.floor((hole ?? 0) / vernierHoles),
          ...(vernierHoles > 1 && { vernierHole: (hole ?? 0) % vernierHoles }),
        };
        return [
          ...notSo(place, there, bench),
          ...claim(isNoMoreThan(there.off, halfSpace, { n: 1n, d: 1n }), `${place.tooth}: there is a nearer hole`),
        ];
      });
    }
    case "dial":
    case "ring":
      return places.flatMap((place) => notSoByScale(place as PlaceByScale, way.by, bench));
  }
}

/** The true places that a list set from the start goes to, in turns of the work, its whole rounds among them. */
export function goneTo({ way, places }: Pick<PlannedJob, "way" | "places">, bench: Bench): readonly Turns[] {
  switch (way.by) {
    case "nearest-hole":
      return countedByHand(bench, way.setting.circle, places as readonly PlaceByHole[]).map(({ work, off }) =>
        add(work, manyOf(-1, off)),
      );
    case "dial":
      return places.map((place) => {
        if (place.dial === null) throw new Error("the dial is not read");
        const work = workAt(place.dial, "dial", bench);
        return add(work, manyOf(-1, pastTooth(bench, place, work)));
      });
    case "moves":
    case "both-cranks":
    case "nearest-direct":
    case "ring":
      throw new Error(`by ${way.by} no rounds are counted from the start`);
  }
}

function notSo(place: PlaceByMoves | PlaceByHole, stood: Stood, bench: Bench, perMove?: string): readonly string[] {
  const { tooth, turns, hole } = place;
  const [rear, small] = place.by === "moves" ? [place.rearHole, place.smallHole] : [];
  return [
    ...same(
      `${tooth}: turns, hole, rear hole, small hole, hole of the row`,
      [turns, hole, rear, small, place.vernierHole],
      [stood.turns, stood.hole, stood.rearHole, stood.smallHole, stood.vernierHole],
    ),
    ...near(`${tooth}: off by`, place.errorArcSeconds, secondsOf(stood.off)),
    ...(place.by === "moves" && perMove !== undefined
      ? same(
          `${tooth}: ${place.move} moves on`,
          turnsText(withinTurn(manyOf(place.move, turnsOf(perMove)))),
          turnsText(trueTurn(bench, tooth)),
        )
      : []),
    ...notSoOnRing(place, bench),
    ...notSoOnScale(place, "dial", bench, stood.work),
    ...notSoOnScale(place, "ring", bench, stood.work),
  ];
}

/** Both cranks set to what a place says: where that turns the work, and that no hole of the small one is nearer. */
function notSoByCranks(place: PlaceByCranks, { circle, small }: NearBy<"both-cranks">, bench: Bench): readonly string[] {
  const { tooth, turns, hole, smallTurns, smallHole } = place;
  const start = bench.startHole ?? 0;
  const large = holes(turns, ((((hole ?? 0) - start) % (circle ?? 1)) + (circle ?? 1)) % (circle ?? 1), circle ?? 1);
  const crank = add(large, divided(holes(smallTurns, smallHole, small.circle), small.ratio));
  const work = workTurned(crank, turnsOf("0"), turnsOf(wormRatioOf(bench.head)));
  const off = pastTooth(bench, place, work);
  const halfSpace = { n: 1n, d: 2n * BigInt(small.circle * small.ratio) };
  return [
    ...near(`${tooth}: off by`, place.errorArcSeconds, secondsOf(off)),
    ...claim(isNoMoreThan(off, halfSpace, perSpindle(bench.head, "dial")), `${tooth}: there is a nearer hole`),
    ...notSoOnRing(place, bench),
    ...notSoOnScale(place, "dial", bench, work),
    ...notSoOnScale(place, "ring", bench, work),
  ];
}

/** Set by a scale: what it reads is where the work is turned to, and the other scale shows it. */
function notSoByScale(place: PlaceByScale, by: "dial" | "ring", bench: Bench): readonly string[] {
  const [reading, scale] = [place[by], bench.head[by]];
  if (reading === null || scale === null) return [`${place.tooth}: the ${by} is not read`];
  const work = workAt(reading, by, bench);
  const step = perSpindle(bench.head, by);
  const halfStep = { n: 1n, d: 2n * BigInt(scale.marksPerTurn * scale.vernierLines) };
  const off = pastTooth(bench, place, work);
  const other = by === "dial" ? "ring" : "dial";
  return [
    ...near(`${place.tooth}: off by`, place.errorArcSeconds, secondsOf(off)),
    ...near(`${place.tooth}: the ${by} is off by`, reading.errorArcSeconds, secondsOf(off)),
    ...claim(isNoMoreThan(off, halfStep, step), `${place.tooth}: there is a nearer mark`),
    ...same(`${place.tooth}: side`, reading.side, bench.side ?? "plus"),
    ...notSoOnRing(place, bench),
    ...notSoOnScale(place, other, bench, by === "dial" ? work : onSameRound(place, work, bench)),
  ];
}

/** How far the work has turned since the start when a scale is set to a reading. */
function workAt(reading: Reading, by: "dial" | "ring", bench: Bench): Turns {
  const scale = bench.head[by];
  if (scale === null) throw new Error(`the head has no ${by}`);
  const start = turnsOf(bench.startAngle ?? "0");
  const read = readTurns(scale, reading, by, bench);
  return bench.side === "minus" ? add(start, manyOf(-1, read)) : add(read, manyOf(-1, start));
}

/** A ring does not tell how often it has gone round: the dial beside it does. */
function onSameRound({ dial }: Place, work: Turns, bench: Bench): Turns {
  if (dial === null) return work;
  const by = workAt(dial, "dial", bench);
  const past = withinTurn(add(add(by, manyOf(-1, work)), { n: 1n, d: 2n }));
  // What the two differ by, less what is left of it after whole rounds.
  return add(by, manyOf(-1, add(past, { n: -1n, d: 2n })));
}

function notSoOnRing({ tooth, angle }: Place, bench: Bench): readonly string[] {
  const [start, there] = [turnsOf(bench.startAngle ?? "0"), trueTurn(bench, tooth)];
  const wanted = withinTurn(add(start, manyOf(bench.side === "minus" ? -1 : 1, there)));
  return [
    ...same(`${tooth}: true angle`, turnsText(withinTurn(turnsOf(angle))), turnsText(wanted)),
    ...claim(turnsOf(angle).n >= 0n, `${tooth}: ${angle} is below the zero`),
  ];
}

/** What a scale shows, beside what is seen on it when the work has turned so far. */
function notSoOnScale(place: Place, by: "dial" | "ring", bench: Bench, work: Turns): readonly string[] {
  const [scale, reading] = [bench.head[by], place[by]];
  if (scale === null || reading === null) return same(`${place.tooth}: ${by}`, reading, scale);
  const { step, off } = shownByHand(bench, by, work);
  const perTurn = BigInt(scale.marksPerTurn * scale.vernierLines);
  const within = ((step % perTurn) + perTurn) % perTurn;
  const turns =
    by === "ring"
      ? 0
      : bench.side === "minus"
        ? zerosDown(shownByHand(bench, by, { n: 0n, d: 1n }).step, step, perTurn)
        : Number((step - within) / perTurn);
  const figure = scale.figures === "marks" ? null : turnsText(withinFigure(within, perTurn, bench, by));
  return [
    ...same(`${place.tooth}: ${by}`, [reading.side, reading.turns, reading.figure], [bench.side ?? "plus", turns, figure]),
    ...same(`${place.tooth}: ${by} step`, stepsRead(scale, { ...reading, turns: 0 }), within),
    ...near(`${place.tooth}: ${by} off by`, reading.errorArcSeconds, secondsOf(off)),
  ];
}

function withinFigure(step: bigint, perTurn: bigint, { head }: Bench, by: "dial" | "ring"): Turns {
  const { n, d } = perSpindle(head, by);
  return add({ n: step * d, d: perTurn * n }, { n: 0n, d: 1n });
}

function manyOf(times: number, { n, d }: Turns): Turns {
  return add({ n: BigInt(times) * n, d }, { n: 0n, d: 1n });
}

function same(what: string, said: unknown, seen: unknown): readonly string[] {
  return claim(shown(said) === shown(seen), `${what}: said ${shown(said)}, seen ${shown(seen)}`);
}

function near(what: string, said: number, seen: number): readonly string[] {
  return claim(Math.abs(said - seen) <= 1e-9 * Math.max(1, Math.abs(seen)), `${what}: said ${said}, seen ${seen}`);
}

function claim(isSo: boolean, otherwise: string): readonly string[] {
  return isSo ? [] : [otherwise];
}

function shown(value: unknown): string {
  return JSON.stringify(value, (_, each) => (typeof each === "bigint" ? String(each) : (each ?? null)));
}
