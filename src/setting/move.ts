/** One move of the work: `teeth` of `divisions`, coprime. An angle p/q of a turn is p of q. */
export interface Move {
  readonly divisions: number;
  readonly teeth: number;
}
