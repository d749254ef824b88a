/** A drawing. */
export interface FigureBlock {
  readonly kind: "figure";
  readonly figure:
    | PlateFigure
    | TrainFigure
    | TrainsFigure
    | GearFigure
    | TemplateFigure
    | HeadFigure
    | FlatsFigure
    | BoltCircleFigure
    | ScaleFigure;
  /** The drawing in words. */
  readonly alt: string;
  readonly caption: string;
  /** Of the height of the page, at most, before it grows; left out, as high as it is wide. */
  readonly share?: number;
  /** Whether it grows to fill what the rest of its page leaves. */
  readonly grows?: boolean;
}

/** A plate face with its circles, and where one is chosen the arms set on it. */
export interface PlateFigure {
  readonly type: "plate";
  /** Holes in each circle, ascending. */
  readonly circles: readonly number[];
  /** Their diameters in mm, where they are known; else the circles stand at even distances. */
  readonly diameters?: readonly number[];
  readonly chosen: { readonly circle: number; readonly spaces: number } | null;
}

/** A plate face at true size, its holes as centre marks, with a scale to be checked with a rule. */
export interface TemplateFigure {
  readonly type: "template";
  readonly circles: readonly number[];
  /** In mm, in the order of the circles. */
  readonly diameters: readonly number[];
  /** Whether it cannot be had as a file of its own: of a plate that the head does not have yet. */
  readonly onlyHere?: true;
}

/** The change gears between spindle and worm shaft, seen from the side they are on. */
export interface TrainFigure {
  readonly type: "train";
  readonly drivers: readonly number[];
  readonly driven: readonly number[];
  readonly idlers: number;
}

/** Trains side by side. */
export interface TrainsFigure {
  readonly type: "trains";
  readonly trains: readonly TrainFigure[];
}

/** The head from the crank, its parts named, with the arms set for a move. */
export interface HeadFigure {
  readonly type: "head";
  readonly circle: number;
  readonly spaces: number;
  /** Whether the plate of the head is ever turned, with the crank or against it. */
  readonly plateTurns: boolean;
}

/** A gear under repair, the sound start space at the top and its teeth numbered clockwise. */
export interface GearFigure {
  readonly type: "gear";
  readonly teeth: number;
  readonly damaged: readonly number[];
  readonly startSpace: number;
  /** The spaces that are cut. */
  readonly cuts: readonly number[];
  readonly proofSpace: number;
  /** A tooth from root to tip: radii in parts of the tip's, and half of its angle there in turns. */
  readonly profile: readonly { readonly radius: number; readonly half: number }[];
}

/** Round stock with its flats, seen from the end, the first at the top. Lengths in mm. */
export interface FlatsFigure {
  readonly type: "flats";
  readonly sides: number;
  readonly acrossFlats: number;
  readonly blank: number;
  readonly flatWidth: number;
  /** From a flat to what is measured opposite in the end: a flat, or of an odd number a corner. */
  readonly opposite: number;
  /** Each measure as it is written. */
  readonly says: {
    readonly blank: string;
    readonly depth: string;
    readonly flatWidth: string;
    readonly flatToRound: string;
    readonly opposite: string;
  };
}

/** The holes of a bolt circle as their coordinates have them, x to the right and y up. */
export interface BoltCircleFigure {
  readonly type: "bolt-circle";
  readonly count: number;
  /** In mm. */
  readonly diameter: number;
  /** Where hole 1 lies, in turns from the +x axis upwards. */
  readonly start: number;
  readonly clockwise: boolean;
  /** Where all is counted from besides the centre: the corner of two tangents, or somewhere else. */
  readonly zero: "tangents" | "own";
  readonly says: { readonly diameter: string };
}

/** A scale as it will look. */
export interface ScaleFigure {
  readonly type: "scale";
  /** In their order from left to right, or clockwise. */
  readonly lines: readonly DrawnLine[];
  /** Whether the lines go all round; else they are drawn out straight. */
  readonly allRound: boolean;
  /** A space of the main scale in mm; null where only its angle is known. */
  readonly spaceMm: number | null;
  /** Whether the main scale is drawn against it. */
  readonly againstMain: boolean;
}

/** A line of a scale. */
export interface DrawnLine {
  readonly line: number;
  /** Where it lies, in spaces of the main scale; of a vernier from its zero. */
  readonly at: number;
  readonly length: "long" | "medium" | "short";
  readonly figure: string | null;
}

/** A drawing that is a file of its own, no larger than it need be. */
export interface DrawingSheet {
  readonly title: string;
  /** What is said of it, under its title. */
  readonly lines: readonly string[];
  /** Drawn at true size: a template to drill through, or a face with its arms set, which has its diameters. */
  readonly figure: TemplateFigure | (PlateFigure & { readonly diameters: readonly number[] });
}
