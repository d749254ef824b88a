/** The room that a drawing has, in points. */
export interface DrawingRoom {
  readonly width: number;
  /** The most that it may be high. */
  readonly tallest: number;
  /** The least size of type. */
  readonly least: number;
}

/** Where a drawing goes. */
export interface DrawingBox extends DrawingRoom {
  readonly left: number;
  readonly top: number;
}
