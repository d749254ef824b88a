/**
 * Where a value was read: title, who published it, when, and on which page. A value remembered says "from memory"
 * in place of the page; one that shops use and no print is known of "common practice, no source"; one that our own
 * formula gives to the last digit, and that no page was at hand for, is "our arithmetic".
 */
export interface Source {
  readonly title: string;
  readonly publisher: string;
  readonly year: string;
  readonly place: string;
}

/** A source in the name of a test: title, year, place. */
export function cited({ title, year, place }: Source): string {
  return `${title}, ${year}, ${place}`;
}
