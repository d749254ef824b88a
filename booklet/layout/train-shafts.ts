import type { TrainFigure } from "../content/figure-blocks.ts";

/** Teeth that an idler is drawn with; any size serves. */
const idlerTeeth = 24;

/** A gear of a train. */
export interface Wheel {
  readonly teeth: number;
  /** Whether it drives or is driven; nothing for an idler, which only passes on. */
  readonly label: "driver" | "driven" | "";
  /** Wheels that mesh stand in one plane; the stud carries one in each. */
  readonly plane: 1 | 2;
}

/** A shaft with its gears, from the spindle to the worm. */
export interface Shaft {
  readonly name: "spindle" | "stud" | "idler" | "worm shaft";
  /** The one that meshes with the shaft before comes first. */
  readonly wheels: readonly Wheel[];
  /** Centre along the line of shafts, in teeth. */
  readonly at: number;
  /** Whether it turns as the spindle does. */
  readonly asSpindle: boolean;
}

/** The shafts of a train in a line, each as far from the one before as their wheels need to mesh. */
export function shaftsOf({ drivers, driven, idlers }: TrainFigure): readonly Shaft[] {
  const [spindle = 0, studDriver = 0] = drivers;
  const last = drivers.length > 1 ? 2 : 1;
  const stud: Omit<Shaft, "at" | "asSpindle"> = {
    name: "stud",
    wheels: [
      { teeth: driven[0] ?? 0, label: "driven", plane: 1 },
      { teeth: studDriver, label: "driver", plane: 2 },
    ],
  };
  const idler: Omit<Shaft, "at" | "asSpindle"> = {
    name: "idler",
    wheels: [{ teeth: idlerTeeth, label: "", plane: last }],
  };
  const chain: readonly Omit<Shaft, "at" | "asSpindle">[] = [
    { name: "spindle", wheels: [{ teeth: spindle, label: "driver", plane: 1 }] },
    ...(drivers.length > 1 ? [stud] : []),
    ...Array.from({ length: idlers }, () => idler),
    { name: "worm shaft", wheels: [{ teeth: driven.at(-1) ?? 0, label: "driven", plane: last }] },
  ];
  let at = 0;
  return chain.map((shaft, index) => {
    const before = chain[index - 1];
    if (before) at += ((before.wheels.at(-1)?.teeth ?? 0) + (shaft.wheels[0]?.teeth ?? 0)) / 2;
    return { ...shaft, at, asSpindle: index % 2 === 0 };
  });
}

/** The teeth of the largest gear on a shaft. */
export function largestOn(shaft: Shaft | undefined): number {
  return Math.max(0, ...(shaft?.wheels ?? []).map(({ teeth }) => teeth));
}
