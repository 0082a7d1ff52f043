/** What a picture shows, worked out while the site is built for every place of its sliders, so that no calculation comes to the page. */

/** A slider: where it can stand, SI from the least up, and the place in that list where it begins. */
export interface Dial {
  readonly stops: readonly number[];
  readonly start: number;
}

/** The figures of a picture: one row for every place of its sliders, the last slider running fastest. */
export interface Ahead<Row extends readonly number[]> {
  readonly dials: readonly Dial[];
  readonly rows: readonly Row[];
}

/** The row for a place of each slider. */
export function rowAt<Row extends readonly number[]>({ dials, rows }: Ahead<Row>, places: readonly number[]): Row {
  const index = dials.reduce((sum, { stops }, i) => sum * stops.length + (places[i] ?? 0), 0);
  const row = rows[index];
  if (!row) throw new RangeError(`no row at ${places.join(', ')}`);
  return row;
}
