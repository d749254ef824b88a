/** A term with what is said of it; without a term it goes on with the one before. */
export interface Item {
  readonly term: string;
  readonly text: string;
  /** It says only what a page may show in large figures instead: plate, circle, turns, spaces, arms. */
  readonly inFigures?: true;
}
