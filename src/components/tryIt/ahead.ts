import type { Ahead, Dial } from '~/islands/article/tryIt/ahead.ts';

/** Digits that a page carries: more than any picture shows. */
const digits = 6;

/** From a least to a most value in equal steps, both ends included, SI; `start` is the value where the slider begins. */
export function dial(least: number, most: number, step: number, start: number): Dial {
  const count = Math.round((most - least) / step);
  return {
    stops: Array.from({ length: count + 1 }, (_, i) => short(least + i * step)),
    start: Math.round((start - least) / step),
  };
}

/** A model at every place of its sliders, of which it takes one value each. */
export function ahead<Values extends readonly number[], Row extends readonly number[]>(
  dials: { readonly [K in keyof Values]: Dial },
  model: (...values: Values) => Row,
): Ahead<Row> {
  const all = dials as readonly Dial[];
  const places = all.reduce<readonly (readonly number[])[]>(
    (before, { stops }) => before.flatMap((values) => stops.map((stop) => [...values, stop])),
    [[]],
  );
  const rowOf = (values: readonly number[]) => model(...(values as Values)).map(short);
  return { dials: all, rows: places.map(rowOf) as readonly (readonly number[])[] as readonly Row[] };
}

const short = (value: number) => Number(value.toPrecision(digits));
