import { defineHead, type Head, ratio, revolutions, type UnprovedSetting } from "../../src/index.ts";
import { ready } from "./ready.ts";

/** 40:1 with one plate that has every circle of these settings, and a train for each. */
export const oneOfAll: Head = defineHead({
  wormRatio: 40,
  plates: [{ name: "1", circles: [15, 17, 18, 21, 23, 29, 33, 39, 49] }],
  directPlates: [{ name: "nose", holes: 24 }],
  rearPin: true,
  gears: [24, 24, 40, 48, 56, 64, 72],
});

const oddRatio = defineHead({ wormRatio: "81/2", plates: [{ name: "1", circles: [17] }] });

const byOnes = { wormRatio: ratio("40"), teethPerMove: 1 } as const;
const onPlate = { plate: "1", face: null } as const;
const noPlate = { circle: null, plate: null, face: null, spaces: 0, armsEnclose: null } as const;
const simple = { ...byOnes, ...onPlate, method: "simple", plateStopPin: "in" } as const;
const geared = { ...byOnes, ...onPlate, method: "differential", plateStopPin: "out" } as const;
const compound = { ...byOnes, ...onPlate, method: "compound", plateStopPin: "out" } as const;
const train = { mayFoul: null } as const;

/** A setting worked by hand, with what crank, pin and plate turn until the work is back. */
export interface HandWorked {
  readonly name: string;
  readonly setting: UnprovedSetting;
  /** One that has what it takes. */
  readonly head: Head;
  readonly moves: number;
  readonly rounds: number;
  readonly crankTurns: string | null;
  readonly pinTurns: string | null;
  readonly plateTurns: string | null;
}

/** Settings worked by hand, one of each kind: our own arithmetic, written out beside each. */
export const handWorked = {
  simple: {
    // 40/7 = 5 + 5/7 = 5 + 15/21.
    name: "simple: 7 = 5 turns + 15/21",
    setting: { ...simple, spindlePerMove: revolutions("1/7"), turns: 5, spaces: 15, circle: 21, armsEnclose: 16 },
    head: oneOfAll,
    moves: 7,
    rounds: 1,
    crankTurns: "40",
    pinTurns: "40",
    plateTurns: "0",
  },
  wholeTurns: {
    name: "simple: 8 = 5 turns, no circle",
    setting: { ...simple, ...noPlate, spindlePerMove: revolutions("1/8"), turns: 5 },
    head: oneOfAll,
    moves: 8,
    rounds: 1,
    crankTurns: "40",
    pinTurns: "40",
    plateTurns: "0",
  },
  block: {
    // 40 · 3/7 = 17 + 1/7: three of seven in each move, three times round.
    name: "simple, 3 teeth per move: 7 = 17 turns + 3/21",
    setting: { ...simple, teethPerMove: 3, spindlePerMove: revolutions("3/7"), turns: 17, spaces: 3, circle: 21, armsEnclose: 4 },
    head: oneOfAll,
    moves: 7,
    rounds: 3,
    crankTurns: "120",
    pinTurns: "120",
    plateTurns: "0",
  },
  fractional: {
    // 81/2 · 2/17 = 81/17 = 4 + 13/17.
    name: "simple on 81/2:1, 2 teeth per move: 17 = 4 turns + 13/17",
    setting: {
      ...simple,
      wormRatio: ratio("81/2"),
      teethPerMove: 2,
      spindlePerMove: revolutions("2/17"),
      turns: 4,
      spaces: 13,
      circle: 17,
      armsEnclose: 14,
    },
    head: oddRatio,
    moves: 17,
    rounds: 2,
    crankTurns: "81",
    pinTurns: "81",
    plateTurns: "0",
  },
  direct: {
    name: "direct: 6 = 4 holes of 24",
    setting: {
      ...byOnes,
      method: "direct",
      spindlePerMove: revolutions("1/6"),
      turns: 0,
      spaces: 4,
      circle: 24,
      plate: "nose",
      face: null,
      armsEnclose: null,
      plateStopPin: null,
    },
    head: oneOfAll,
    moves: 6,
    rounds: 1,
    crankTurns: null,
    pinTurns: null,
    plateTurns: null,
  },
  dial: {
    // 90/64 = 1 + 13/32, and 13/32 of the 240 · 6 places of the dial is 585.
    name: "dial: 64 on 90:1 = 1 turn + 585/1440",
    setting: {
      ...byOnes,
      method: "dial",
      wormRatio: ratio("90"),
      spindlePerMove: revolutions("1/64"),
      turns: 1,
      spaces: 585,
      circle: 1440,
      plate: null,
      face: null,
      armsEnclose: null,
      plateStopPin: null,
    },
    head: ready("ratio-90-dial"),
    moves: 64,
    rounds: 1,
    crankTurns: "90",
    pinTurns: "90",
    plateTurns: "0",
  },
  compoundWith: {
    // 10/15 + 2/17 = 40/51: the plate goes on 51 · 2/17 = 6 turns, the pin over it 34.
    name: "compound with: 51 = 10/15 + 2/17",
    setting: {
      ...compound,
      spindlePerMove: revolutions("1/51"),
      turns: 0,
      spaces: 10,
      circle: 15,
      armsEnclose: 11,
      second: { spaces: 2, circle: 17, direction: "with" },
    },
    head: oneOfAll,
    moves: 51,
    rounds: 1,
    crankTurns: "40",
    pinTurns: "34",
    plateTurns: "6",
  },
  compoundAgainst: {
    // 21/23 − 11/33 = 40/69: the pin goes 63 turns over a plate that goes back 23.
    name: "compound against: 69 = 21/23 − 11/33",
    setting: {
      ...compound,
      spindlePerMove: revolutions("1/69"),
      turns: 0,
      spaces: 21,
      circle: 23,
      armsEnclose: 22,
      second: { spaces: 11, circle: 33, direction: "against" },
    },
    head: oneOfAll,
    moves: 69,
    rounds: 1,
    crankTurns: "40",
    pinTurns: "63",
    plateTurns: "-23",
  },
  onePairWith: {
    // 40 − 71 · 10/18 = 5/9 = 40/72.
    name: "one pair with: 71 by 10/18, 40 : 72",
    setting: {
      ...geared,
      spindlePerMove: revolutions("1/71"),
      turns: 0,
      spaces: 10,
      circle: 18,
      armsEnclose: 11,
      gears: { ...train, drivers: [40], driven: [72], idlers: 1, direction: "with", platePerSpindle: ratio("5/9") },
    },
    head: oneOfAll,
    moves: 71,
    rounds: 1,
    crankTurns: "40",
    pinTurns: "355/9",
    plateTurns: "5/9",
  },
  onePairAgainst: {
    // 40 − 127 · 13/39 = −7/3 = −56/24.
    name: "one pair against: 127 by 13/39, 56 : 24",
    setting: {
      ...geared,
      spindlePerMove: revolutions("1/127"),
      turns: 0,
      spaces: 13,
      circle: 39,
      armsEnclose: 14,
      gears: { ...train, drivers: [56], driven: [24], idlers: 2, direction: "against", platePerSpindle: ratio("-7/3") },
    },
    head: oneOfAll,
    moves: 127,
    rounds: 1,
    crankTurns: "40",
    pinTurns: "127/3",
    plateTurns: "-7/3",
  },
  twoPairsWith: {
    // 40 − 53 · 35/49 = 15/7 = (72 · 40)/(24 · 56).
    name: "two pairs with: 53 by 35/49, 72·40 : 24·56",
    setting: {
      ...geared,
      spindlePerMove: revolutions("1/53"),
      turns: 0,
      spaces: 35,
      circle: 49,
      armsEnclose: 36,
      gears: { ...train, drivers: [72, 40], driven: [24, 56], idlers: 0, direction: "with", platePerSpindle: ratio("15/7") },
    },
    head: oneOfAll,
    moves: 53,
    rounds: 1,
    crankTurns: "40",
    pinTurns: "265/7",
    plateTurns: "15/7",
  },
  twoPairsAgainst: {
    // 40 − 319 · 4/29 = −4 = −(72 · 64)/(24 · 48).
    name: "two pairs against: 319 by 4/29, 72·64 : 24·48",
    setting: {
      ...geared,
      spindlePerMove: revolutions("1/319"),
      turns: 0,
      spaces: 4,
      circle: 29,
      armsEnclose: 5,
      gears: { ...train, drivers: [72, 64], driven: [24, 48], idlers: 1, direction: "against", platePerSpindle: ratio("-4") },
    },
    head: oneOfAll,
    moves: 319,
    rounds: 1,
    crankTurns: "40",
    pinTurns: "44",
    plateTurns: "-4",
  },
} as const satisfies Record<string, HandWorked>;
