import type {
  Answer,
  CheckChord,
  Coordinate,
  Coverage,
  DrilledByCoordinates,
  DrilledOnHead,
  ErrorBudget,
  Fault,
  Flats,
  GraduatedRound,
  GraduatedStraight,
  Identification,
  idlersFromTrial,
  NoJob,
  Place,
  PlannedJob,
  PlateCheck,
  PossibleCount,
  ProposedSpacing,
  RatioFound,
  RepairOnHead,
  SpurGear,
  TableRow,
  toothAt,
  UnequalSpacing,
  UnknownPlate,
  whatMoveGives,
} from "../../src/index.ts";

/** A refusal, of whatever question. */
export interface Refused {
  readonly error: {
    /** What the command ends with: 2 the question cannot be read, 3 a file cannot be read or written, 4 the program's own fault. */
    readonly status: 2 | 3 | 4;
    readonly message: string;
    readonly faults: readonly Fault[];
  };
}

/** How a job is planned; its places stand beside it. */
type Told = Omit<PlannedJob, "places"> | NoJob;

/** A count or an angle. */
export type LookedUp = Answer & {
  /** With `--teeth`, `--after` or `--ring`. */
  readonly positions?: readonly Place[];
  /** With `--ring`: the tooth that it stands at. */
  readonly standingAt?: ReturnType<typeof toothAt>;
  /** With `--teeth` or `--after`. */
  readonly plan?: Told;
  /** With `--coordinates`, in millimetres. */
  readonly coordinates?: readonly Coordinate[];
  readonly chords?: readonly CheckChord[];
  /** With `--budget`: what the error is made of. */
  readonly budget?: ErrorBudget;
};

/** `table`: every count in a range. */
export interface Tabled {
  readonly table: readonly TableRow[];
}

/** `spacing`. */
export interface Spaced {
  readonly spacing: UnequalSpacing;
  /** With `--propose`; its places stand in `spacing`. */
  readonly proposed?: Omit<ProposedSpacing, "spacing">;
}

/** An angle read by eye. */
export interface ByEye {
  readonly counts: readonly PossibleCount[];
}

/** `gives`: what a move really gives. */
export interface Gives {
  readonly gives: ReturnType<typeof whatMoveGives>;
}

/** `heads`. */
export interface Heads {
  readonly heads: readonly { readonly id: string; readonly name: string; readonly wormRatio: string }[];
}

/** `gear` with its pitch. */
export interface Measured {
  readonly gear: SpurGear;
  /** With `--pins`: what is measured over two of them, in millimetres; null where they do not touch the flanks. */
  readonly overPins?: { readonly pinDiameter: number; readonly length: number | null };
}

/** `gear` by what was measured on it. */
export interface Identified {
  readonly identification: Identification;
}

/** `gear` by marks that meet again: the counts that its teeth could be. */
export interface ByMarks {
  readonly counts: readonly number[];
}

/** `repair`. */
export type Repaired = Omit<RepairOnHead, "job"> & {
  /** Its places stand in `moves`. */
  readonly job: Told;
  /** With `--sheet`: its path. */
  readonly sheet?: string;
};

/** `plate` with a diameter: a circle to drill. */
export interface Drilled {
  readonly plate: DrilledByCoordinates | (Omit<DrilledOnHead, "plan"> & { readonly plan: Told }) | NoJob;
  /** With `--sheet`: its path. */
  readonly sheet?: string;
}

/** `plate` with its count and chords. */
export interface PlateChecked {
  readonly plateCheck: PlateCheck;
}

/** `plate` with chords alone. */
export interface PlateFound {
  readonly plateFound: UnknownPlate;
}

/** `graduate`. */
export interface Scaled {
  readonly scale: GraduatedStraight | (Omit<GraduatedRound, "plan"> & { readonly plan: Told }) | NoJob;
  /** With `--sheet`: its path. */
  readonly sheet?: string;
}

/** `ratio` with the crank's turns. */
export interface Ratioed {
  readonly ratio: RatioFound;
}

/** `ratio` with a train that was put up. */
export interface IdlersTold {
  readonly idlersWithCrank: ReturnType<typeof idlersFromTrial>;
}

/** `kit`. */
export interface KitTold {
  readonly kit: Coverage;
  /** With `--sheet`: its path. */
  readonly sheet?: string;
}

/** `flats`. */
export interface FlatsTold {
  readonly flats: Flats;
  /** The moves for them; with `--degrees` null. */
  readonly indexing: Answer | null;
  /** With `--sheet`: its path. */
  readonly sheet?: string;
}

/** `bolt-circle`, in millimetres. */
export interface BoltCircle {
  readonly boltCircle: {
    /** Signed; `tooth` is the hole. */
    readonly fromCentre: readonly Coordinate[];
    /** From the tangents, or with `--centre` from the zero that it is told from. */
    readonly fromZero: readonly Coordinate[];
    readonly chords: readonly CheckChord[];
  };
  /** With `--sheet`: its path. */
  readonly sheet?: string;
}
