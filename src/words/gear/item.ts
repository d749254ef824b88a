/** A term with what is said of it; without a term it goes on with the one before. */
export interface Item {
  readonly term: string;
  readonly text: string;
}
