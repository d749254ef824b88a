import { type Head, type Method, wormRatioOf } from "../../src/index.ts";
import { type SetOnHead, settingKey } from "./setting-key.ts";

/*
 * An oracle that finds settings with no solver: it tries what a patient person with the head on
 * the bench could try. Plain integers; nothing of src/ but the shape of a head.
 */

/** Which counts and how many teeth per move to look for. */
export interface Reach {
  readonly divisionsTo: number;
  readonly teethTo: number;
}

/** A ratio of integers, not always in lowest terms. */
interface Ratio {
  readonly n: number;
  readonly d: number;
}

interface Train {
  readonly drivers: readonly number[];
  readonly driven: readonly number[];
  readonly direction: "with" | "against";
  /** Plate turns for one spindle turn, + with the crank. */
  readonly plate: Ratio;
}

/** A setting that a move was found to make. */
export interface Found {
  readonly method: Method;
  readonly teeth: number;
  readonly circle: number | null;
  /** The second circle of a compound move, else null. */
  readonly second: number | null;
  readonly key: string;
}

/**
 * Makes every move that a head can make, up to one turn of the work, and notes which count it gives:
 * every hole of every direct plate; every place of the dial; every space of every circle with every
 * train that the gears make; every two parts of a compound move on every two circles of a face.
 */
export function everyMove(head: Head, reach: Reach): ReadonlyMap<number, readonly Found[]> {
  const found = new Map<number, Map<string, Found>>();
  const note = (spindle: Ratio, made: Made) => {
    const common = greatestDivisor(spindle.n, spindle.d);
    const [teeth, divisions] = [spindle.n / common, spindle.d / common];
    if (divisions > reach.divisionsTo || teeth > reach.teethTo || (teeth >= divisions && divisions > 1)) return;
    const key = settingKey({ ...made, teethPerMove: teeth });
    const settings = found.get(divisions) ?? new Map<string, Found>();
    settings.set(key, { method: made.method, teeth, circle: made.circle, second: made.second?.circle ?? null, key });
    found.set(divisions, settings);
  };
  makeDirect(head, note);
  makeByDial(head, note);
  makeCrankMoves(head, note);
  if (head.rearPin) makeCompound(head, note);
  return new Map([...found].map(([divisions, settings]) => [divisions, [...settings.values()]]));
}

/** What was set on the head for a move, however many teeth it advances. */
type Made = Omit<SetOnHead, "teethPerMove">;
type Note = (spindle: Ratio, made: Made) => void;

function makeDirect(head: Head, note: Note): void {
  for (const { name, holes } of head.directPlates) {
    for (let spaces = 1; spaces <= holes; spaces += 1) {
      note({ n: spaces, d: holes }, { method: "direct", plate: name, face: null, circle: holes, turns: 0, spaces });
    }
  }
}

function makeByDial(head: Head, note: Note): void {
  const worm = ratioOf(wormRatioOf(head));
  const places = dialPlaces(head);
  for (let all = 1; all * worm.d <= places * worm.n; all += 1) {
    const move = { plate: null, face: null, circle: places, turns: Math.floor(all / places), spaces: all % places };
    note({ n: all * worm.d, d: places * worm.n }, { method: "dial", ...move });
  }
}

/** The places that a dial shows in a turn; 0 where there is no dial. */
function dialPlaces({ dial }: Head): number {
  return dial === null ? 0 : dial.marksPerTurn * dial.vernierLines;
}

function makeCrankMoves(head: Head, note: Note): void {
  const worm = ratioOf(wormRatioOf(head));
  const standing: Train = { drivers: [], driven: [], direction: "with", plate: { n: 0, d: 1 } };
  for (const train of [standing, ...everyTrain(head)]) {
    // The plate runs ahead of or behind the pin: of R turns the pin makes R − g over the plate.
    const net = { n: worm.n * train.plate.d - train.plate.n * worm.d, d: worm.d * train.plate.d };
    if (net.n <= 0) continue;
    for (const plate of head.plates) {
      for (const face of plate.faces) {
        for (const circle of face.circles) {
          for (let holes = 1; holes * net.d <= circle * net.n; holes += 1) {
            const [turns, spaces] = [Math.floor(holes / circle), holes % circle];
            const where = spaces === 0 ? nowhere : { plate: plate.name, face: face.name, circle };
            const move = { ...where, turns, spaces };
            note(
              { n: holes * net.d, d: circle * net.n },
              train === standing ? { method: "simple", ...move } : { method: "differential", ...move, gears: train },
            );
          }
        }
      }
    }
  }
}

const nowhere = { plate: null, face: null, circle: null };

function makeCompound(head: Head, note: Note): void {
  const worm = ratioOf(wormRatioOf(head));
  for (const plate of head.plates) {
    for (const face of plate.faces) {
      for (const [circle, other] of everyTwo(face.circles)) {
        for (const direction of ["with", "against"] as const) {
          for (let holes = 1; holes * worm.d <= circle * (worm.n + worm.d); holes += 1) {
            if (holes % circle === 0) continue;
            for (let spaces = 1; spaces < other; spaces += 1) {
              const crank = holes * other + (direction === "with" ? spaces : -spaces) * circle;
              if (crank <= 0 || crank * worm.d > circle * other * worm.n) continue;
              note(
                { n: crank * worm.d, d: circle * other * worm.n },
                {
                  method: "compound",
                  plate: plate.name,
                  face: face.name,
                  circle,
                  turns: Math.floor(holes / circle),
                  spaces: holes % circle,
                  second: { spaces, circle: other, direction },
                },
              );
            }
          }
        }
      }
    }
  }
}

/** More than any head wants. */
const mostIdlers = 9;

/** Every train of one and two pairs that the gears make, each gear used once, with idlers enough, within the greatest plate ratio. */
export function everyTrain(head: Head): readonly Train[] {
  if (head.gearing === null) return [];
  const { greatestPlateRatio, idlersWithCrank } = head.gearing;
  const greatest = ratioOf(greatestPlateRatio);
  const trains: Train[] = [];
  const add = (drivers: readonly number[], driven: readonly number[]) => {
    const plate = { n: product(drivers), d: product(driven) };
    if (plate.n * greatest.d > plate.d * greatest.n) return;
    const { onePair, twoPairs } = idlersWithCrank;
    const idlersWith = drivers.length === 1 ? onePair : twoPairs;
    // Any gear left over will do for an idler; where the owner has not said, there are enough.
    const idlers = head.idlers === null ? mostIdlers : head.idlers.length + head.gears.length - 2 * drivers.length;
    if (idlers >= idlersWith) trains.push({ drivers, driven, direction: "with", plate });
    if (idlers > idlersWith) trains.push({ drivers, driven, direction: "against", plate: { n: -plate.n, d: plate.d } });
  };
  const box = head.gears.map((teeth, place) => ({ teeth, place }));
  for (const a of box) {
    for (const b of box) {
      if (b.place === a.place) continue;
      add([a.teeth], [b.teeth]);
      if (b.place < a.place) continue;
      for (const c of box) {
        for (const d of box) {
          if (d.place > c.place && ![a.place, b.place].includes(c.place) && ![a.place, b.place].includes(d.place))
            add([a.teeth, b.teeth], [c.teeth, d.teeth]);
        }
      }
    }
  }
  return trains;
}

/**
 * Every count to `divisionsTo` that a head of any size does, by trying for each count every number
 * of teeth per move, every circle, the dial, every two circles and every train until one comes out
 * in whole spaces.
 */
export function countsThatClose(head: Head, { divisionsTo, teethTo }: Reach): readonly number[] {
  const worm = ratioOf(wormRatioOf(head));
  const circles = [...new Set(head.plates.flatMap(({ faces }) => faces.flatMap((face) => face.circles)))];
  const twos = head.rearPin ? head.plates.flatMap(({ faces }) => faces.flatMap((face) => everyTwo(face.circles))) : [];
  const plateRatios = new Map(everyTrain(head).map(({ plate }) => [plate.n / plate.d, plate]));
  const closes = (divisions: number): boolean => {
    if (head.directPlates.some(({ holes }) => holes % divisions === 0)) return true;
    for (let teeth = 1; teeth <= teethTo; teeth += 1) {
      if (teeth > 1 && (teeth >= divisions || greatestDivisor(teeth, divisions) > 1)) continue;
      const [n, d] = [worm.n * teeth, worm.d * divisions];
      if ([...circles, dialPlaces(head)].some((places) => places > 0 && (n * places) % d === 0)) return true;
      if (twos.some(([first, second]) => partsClose(n, d, first, second))) return true;
      for (const { n: p, d: q } of plateRatios.values()) {
        const net = (worm.n * q - p * worm.d) * teeth;
        if (net > 0 && circles.some((circle) => (net * circle) % (d * q) === 0)) return true;
      }
    }
    return false;
  };
  return Array.from({ length: divisionsTo }, (_, index) => index + 1).filter(closes);
}

/** Whether n/d is a whole number of spaces of two circles together. */
function partsClose(n: number, d: number, first: number, second: number): boolean {
  for (let spaces = 0; spaces < first; spaces += 1) {
    if (((n * first - spaces * d) * second) % (d * first) === 0) return true;
  }
  return false;
}

function everyTwo(circles: readonly number[]): [number, number][] {
  return circles.flatMap((first) =>
    circles.filter((second) => second !== first).map((second): [number, number] => [first, second]),
  );
}

function product(teeth: readonly number[]): number {
  return teeth.reduce((all, each) => all * each, 1);
}

function ratioOf(text: string): Ratio {
  const [n, d = 1] = text.split("/").map(Number);
  return { n: n ?? 0, d };
}

function greatestDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestDivisor(b, a % b);
}
