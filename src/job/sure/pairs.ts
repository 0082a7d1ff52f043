/** Stamped readings of both probes in one air, as a person types them. */
import { type Compared, compareProbes, type ProbePair } from '../../calc/confidence/compareProbes.ts';
import { attempt, orNull } from '../../calc/outcome.ts';
import type { HumidityMeasure } from '../../calc/sideBySide.ts';
import { chosen } from '../choices.ts';
import { siOf } from '../entered.ts';
import { cellOf, type Grid, rowsOf } from '../gridCells.ts';
import type { QuantityKey } from '../quantities.ts';
import { measuredHere, type Place } from '../readings.ts';
import type { Job } from '../types.ts';
import { joinSure } from './join.ts';
import { sureTables } from './tables.ts';

joinSure();

/** The air that both probes stand in: the return's, the supply's, and once more at the end; `swap`, `steady`: each in its own. */
export type PairAir = 'return' | 'supply' | 'end' | 'swap' | 'steady';

const quantities: Readonly<Record<string, QuantityKey>> = {
  DryBulb: 'state.dryBulb',
  RelativeHumidity: 'state.relativeHumidity',
  WetBulb: 'state.wetBulb',
};

/** What the figures of a column are: any that air can have; `null` for a column of words. */
export const figuresOf = (column: string): QuantityKey | null =>
  quantities[column.replace(/^(entering|leaving|known)/, '')] ?? null;

/** The grid of one air. */
export function pairGrid(air: PairAir): Grid {
  const key = `pairs.${air}` as const;
  return { key, columns: sureTables[key], quantity: figuresOf };
}

/** How the probes of a job say their humidity. */
export const measureHere = (job: Job): HumidityMeasure =>
  measuredHere(job)[1] === 'wetBulb' ? 'wetBulb' : 'relativeHumidity';

/** The columns that are typed here, by the humidity that the probes show. */
export function pairColumns(job: Job, place: Place): readonly [dryBulb: string, humidity: string] {
  const humidity = measureHere(job) === 'wetBulb' ? 'WetBulb' : 'RelativeHumidity';
  return [`${place}DryBulb`, `${place}${humidity}`];
}

/** What was read of both probes in one air: side by side, or one after the other where they were exchanged in the ducts. */
export function pairsIn(job: Job, air: PairAir): readonly ProbePair[] {
  const isSwapped = (air === 'return' || air === 'supply') && chosen(job, 'probes.how') === 'swapped';
  return isSwapped ? swappedPairs(rowsRead(job, 'swap'), air) : rowsRead(job, air);
}

/**
 * Two probes that were exchanged stood in the same two airs, one after the other: as used (the return probe in the return air),
 * then exchanged (the supply probe in the return air), in turn.
 */
function swappedPairs(rows: readonly ProbePair[], air: 'return' | 'supply'): readonly ProbePair[] {
  return rows.flatMap((used, index): ProbePair[] => {
    const exchanged = rows[index + 1];
    if (index % 2 === 1 || !exchanged) return [];
    return [
      air === 'return'
        ? { time: exchanged.time, entering: used.entering, leaving: exchanged.entering }
        : { time: exchanged.time, entering: exchanged.leaving, leaving: used.leaving },
    ];
  });
}

/** The rows in which both temperatures can be read, in the order of their times; a row without one counts as a minute after. */
function rowsRead(job: Job, air: PairAir): readonly ProbePair[] {
  const grid = pairGrid(air);
  const value = (row: number, column: string) => siOf(cellOf(job, grid, { row, column }).read);
  let latest = 0;
  return Array.from({ length: rowsOf(job, grid) }).flatMap((_, row): ProbePair[] => {
    const stamped = Date.parse(cellOf(job, grid, { row, column: 'time' }).text) / 1000;
    const time = Number.isFinite(stamped) ? stamped : latest + 60;
    const [t1, h1, t2, h2] = (['entering', 'leaving'] as const).flatMap((place) =>
      pairColumns(job, place).map((column) => value(row, column)),
    );
    if (typeof t1 !== 'number' || typeof t2 !== 'number') return [];
    latest = time;
    const reading = (dryBulb: number, humidity: number | null | undefined) => ({ dryBulb, humidity: humidity ?? null });
    return [{ time, entering: reading(t1, h1), leaving: reading(t2, h2) }];
  });
}

/** What the probes differ by in one air; `null` until both were read there. */
export function comparedIn(job: Job, air: PairAir): Compared | null {
  const pairs = pairsIn(job, air);
  return pairs.length === 0 ? null : orNull(attempt(() => compareProbes(pairs, { measure: measureHere(job) })));
}
