/** Where a published value was read. */
export interface Source {
  readonly title: string;
  readonly publisher: string;
  readonly year: string;
  readonly place: string;
}
