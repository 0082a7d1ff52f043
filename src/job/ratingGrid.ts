/** What the sheet asks of the maker's table: the few figures around the conditions of this test. */
import { moistAir } from '../calc/index.ts';
import { chosen } from './choices.ts';
import { entered, readEntered, siOf, sitePressure, systemOf } from './entered.ts';
import type { QuantityKey } from './quantities.ts';
import { type Head, headKey, headsAround } from './ratingHeads.ts';
import { onLine, outdoorSeries, ratingSeries, type Series, seriesSystem, wetBulbSeries } from './ratingSeries.ts';
import { type Figure, figureText, figureUnit } from './ratingTable.ts';
import { type Read, read } from './read.ts';
import { meanReading, measuredHere } from './readings.ts';
import type { Job, System, UnitKey } from './types.ts';

export interface Cell {
  /** Unique in the grid; names the place in the table. */
  readonly key: string;
  /** Indices into `outdoors`, `wetBulbs` and `airflows`. */
  readonly outdoors: number;
  readonly wetBulb: number;
  readonly block: number;
  readonly quantity: Figure;
  readonly text: string;
  readonly read: Read;
}

export interface Grid {
  readonly state: 'ready';
  readonly outdoors: readonly Head[];
  readonly wetBulbs: readonly Head[];
  /** The airflow of each block of the table. */
  readonly airflows: readonly Read[];
  /** In the order in which a table is read: block by block, row by row; total before sensible. */
  readonly cells: readonly Cell[];
  readonly at: { readonly outdoorDryBulb: number; readonly enteringWetBulb: number };
  readonly series: Series;
  /** What a bare figure means. */
  readonly unit: UnitKey;
}

export type RatingGrid = Grid | { readonly state: 'waiting'; readonly needs: readonly QuantityKey[] };

/** The grid of a job, its heads labelled for a system. Waits for the return air and for the outdoor temperature. */
export function ratingGrid(job: Job, system: System = systemOf(job)): RatingGrid {
  const outdoorDryBulb = entered(job, 'outdoorDryBulb');
  const enteringWetBulb = wetBulbEntering(job);
  if (outdoorDryBulb === null || typeof enteringWetBulb !== 'number') {
    const outdoors: readonly QuantityKey[] = outdoorDryBulb === null ? ['outdoorDryBulb'] : [];
    return { state: 'waiting', needs: [...(typeof enteringWetBulb === 'number' ? [] : enteringWetBulb), ...outdoors] };
  }
  const series = ratingSeries(job);
  const outdoors = headsAround({
    at: outdoorDryBulb,
    ...typedHeads(job, 'rating.outdoorLow', 'rating.outdoorHigh'),
    series: outdoorSeries[seriesSystem[series] ?? systemOf(job)],
    tolerance: onLine.outdoorDryBulb,
    system,
  });
  const wetBulbs = headsAround({
    at: enteringWetBulb,
    ...typedHeads(job, 'rating.wetBulbLow', 'rating.wetBulbHigh'),
    series: wetBulbSeries[series],
    tolerance: onLine.enteringWetBulb,
    system,
  });
  if ('needs' in outdoors || 'needs' in wetBulbs) {
    return { state: 'waiting', needs: [outdoors, wetBulbs].flatMap((heads) => ('needs' in heads ? heads.needs : [])) };
  }
  const airflowKeys = ['rating.airflow', 'rating.airflowSecond'] as const;
  const airflows = (chosen(job, 'rating.blocks') === 'two' ? airflowKeys : airflowKeys.slice(0, 1)).map((key) =>
    readEntered(job, key),
  );
  return {
    state: 'ready',
    outdoors,
    wetBulbs,
    airflows,
    cells: airflows.flatMap((_, block) => blockCells(job, outdoors, wetBulbs, block)),
    at: { outdoorDryBulb, enteringWetBulb },
    series,
    unit: figureUnit(job),
  };
}

/** Entering wet bulb, °C, measured or from the humidity; or the fields that it waits for. */
export function wetBulbEntering(job: Job): number | readonly QuantityKey[] {
  const { dryBulb, relativeHumidity, wetBulb } = meanReading(job, 'entering');
  if (wetBulb !== null) return wetBulb;
  if (dryBulb !== null && relativeHumidity !== null) {
    try {
      return moistAir({ dryBulb, relativeHumidity, pressure: sitePressure(job) }).wetBulb;
    } catch {
      return ['entering.relativeHumidity'];
    }
  }
  const values = { dryBulb, relativeHumidity, wetBulb };
  return measuredHere(job)
    .filter((what) => values[what] === null)
    .map((what): QuantityKey => `entering.${what}`);
}

function typedHeads(job: Job, low: QuantityKey, high: QuantityKey) {
  return { keys: [low, high], typed: [readEntered(job, low), readEntered(job, high)] } as const;
}

function blockCells(job: Job, outdoors: readonly Head[], wetBulbs: readonly Head[], block: number): Cell[] {
  const withSensible = chosen(job, 'rating.withSensible') === 'yes';
  const unit = figureUnit(job);
  return wetBulbs.flatMap((row, wetBulb) =>
    outdoors.flatMap((column, outdoor): Cell[] => {
      if (row.problem !== null || column.problem !== null) return [];
      const place = { outdoorDryBulb: headKey(column.si), enteringWetBulb: headKey(row.si), block: String(block + 1) };
      const cell = (quantity: Figure, total: number | null): Cell => {
        const text = figureText(job, place, quantity);
        return {
          key: [place.outdoorDryBulb, place.enteringWetBulb, place.block, quantity].join('/'),
          outdoors: outdoor,
          wetBulb,
          block,
          quantity,
          text,
          read: read(text, `rating.${quantity}`, unit, { total }),
        };
      };
      const total = cell('total', null);
      return withSensible ? [total, cell('sensible', siOf(total.read))] : [total];
    }),
  );
}
