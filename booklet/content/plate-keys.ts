import type { Face, Head, Plate } from "../../src/index.ts";
import { type OnPlate, plateShort } from "../../src/words/index.ts";
import { bookSections, sectionWords } from "./sections.ts";

/** A plate whose name is too long for a table, with the letter that stands for it. */
export interface PlateKey {
  readonly key: string;
  /** As its owner calls it, with its faces where their names are too long as well. */
  readonly name: string;
  /** Whether it is a plate on the spindle itself, which only counts by direct indexing name. */
  readonly direct: boolean;
}

/** A head as print names its parts. */
export interface KeyedHead {
  /** The same head, its plates named as they stand in tables. */
  readonly head: Head;
  /** The letters that stand for names; none where every name is short. */
  readonly keys: readonly PlateKey[];
}

/** In letters; what is longer would be broken into lines in a column, row after row. */
const longestInTable = 8;

/** Names the plates of a head as tables have room for: by their own names, or where those are long by a letter. */
export function keyedHead(head: Head): KeyedHead {
  const letters = freeLetters(head);
  const keys: PlateKey[] = [];
  const keyFor = (name: string, direct: boolean): string => {
    const key = letters.next().value;
    keys.push({ key, name, direct });
    return key;
  };
  const plates = head.plates.map((plate): Plate => {
    if (!isLong(plate.name) && !hasLongFaces(plate)) return plate;
    return { name: keyFor(inFull(plate), false), faces: plate.faces.map((face, at) => shortFace(plate, face, at)) };
  });
  const directPlates = head.directPlates.map((plate) => ({
    ...plate,
    name: isLong(plate.name) ? keyFor(plate.name, true) : plate.name,
  }));
  if (keys.length === 0) return { head, keys };
  const mounted = plates[head.plates.findIndex(({ name }) => name === head.mounted)]?.name ?? null;
  return { head: { ...head, plates, directPlates, mounted }, keys };
}

function isLong(name: string): boolean {
  return name.length > longestInTable;
}

function hasLongFaces({ faces }: Plate): boolean {
  return faces.some(({ name }) => name !== null && isLong(name));
}

/** By their order: one face may have the name that another would get. */
const faceNames = ["first", "second"] as const;

function shortFace(plate: Plate, face: Face, at: number): Face {
  return hasLongFaces(plate) ? { ...face, name: faceNames[at] ?? face.name } : face;
}

function inFull(plate: Plate): string {
  if (!hasLongFaces(plate)) return plate.name;
  return `${plate.name} (${plate.faces.map(({ name }, at) => `${faceNames[at]}: ${name}`).join("; ")})`;
}

/** Letters, then pairs of them, but those that a plate is called by, that mark how a count is done, or that look like figures. */
function* freeLetters({ plates, directPlates }: Head): Generator<string, never> {
  const marks = bookSections.map((section) => sectionWords[section].mark);
  const names = [...plates, ...directPlates].map(({ name }) => name.toUpperCase());
  const taken = new Set([...marks, "I", "O", ...names]);
  const alphabet = Array.from({ length: 26 }, (_, at) => String.fromCharCode("A".charCodeAt(0) + at));
  const free = alphabet.filter((letter) => !taken.has(letter));
  yield* free;
  for (let pair = 0; ; pair += 1) {
    const two = `${alphabet[Math.floor(pair / alphabet.length) % alphabet.length]}${alphabet[pair % alphabet.length]}`;
    if (!taken.has(two)) yield two;
  }
}

/** A letter with what it stands for: `A = second plate, from the old machine`. */
function keyInFull({ key, name }: PlateKey): string {
  return `${key} = ${name}`;
}

/** A plate by its letter and its name; by its name alone where that is short. */
export function plateInFull(keys: readonly PlateKey[], plate: string): string {
  const found = keys.find(({ key }) => key === plate);
  return found === undefined ? plate : keyInFull(found);
}

/** A face of a plate over what is told of it: `Plate 1 front`, `Plate A front = second plate, from the old machine`. */
export function plateHeading(keys: readonly PlateKey[], on: OnPlate): string {
  const found = keys.find(({ key }) => key === on.plate);
  return `Plate ${plateShort(on)}${found === undefined ? "" : ` = ${found.name}`}`;
}

/** All letters in a line, for a sheet that stands alone; undefined where there are none. */
export function keyLine(keys: readonly PlateKey[]): string | undefined {
  return keys.length === 0 ? undefined : `Plates: ${keys.map(keyInFull).join("; ")}.`;
}
