/** Both probes in one air, out of a record of both or of one record each: pairs of readings, few enough for a person to look through. */
import { alignClocks, type ProbeLog, pairLogs } from '../../calc/confidence/alignClocks.ts';
import { batchCount, meanOf } from '../../calc/confidence/batches.ts';
import type { ProbePair, ProbeReading } from '../../calc/confidence/compareProbes.ts';
import { CalcError } from '../../calc/errors.ts';
import type { OpenLog } from './openLog.ts';
import { type ColumnsRefusal, type ColumnsSaid, type ReadColumns, readColumns } from './readColumns.ts';

/** What was confirmed of each record, and over how many minutes before its end the probes are compared; `null`: all of it. */
export interface PairSaid {
  readonly records: readonly ColumnsSaid[];
  readonly minutes: number | null;
}

export interface PairedRecords {
  /** As read, or the means of five parts where there are more than `mostPairs`. */
  readonly pairs: readonly ProbePair[];
  readonly areMeans: boolean;
  /** How many pairs of readings they stand for. */
  readonly count: number;
  /** Whether the times have a date. */
  readonly dated: boolean;
  /** s that were added to the clock of the second record: `null` where the two did not say how far they are apart. */
  readonly shift: number | null;
}

export type PairRefusal = ColumnsRefusal | 'noProbes' | 'differentClocks' | 'noPairs';

export const mostPairs = 30;

/** The readings of one probe, times rising: rows that cannot be read or go back are left out. */
function probeLog({ time, columns }: ReadColumns, place: 'entering' | 'leaving'): ProbeLog | null {
  const dryBulb = columns[`${place}.dryBulb`];
  const humidity = columns[`${place}.humidity`];
  if (!dryBulb) return null;
  let latest = -Infinity;
  const kept = time.flatMap((at, row) => {
    const usable =
      at > latest && Number.isFinite(dryBulb[row]) && (humidity === undefined || Number.isFinite(humidity[row]));
    if (!usable) return [];
    latest = at;
    return [row];
  });
  return {
    time: kept.map((row) => time[row] as number),
    dryBulb: kept.map((row) => dryBulb[row] as number),
    humidity: kept.map((row) => humidity?.[row] ?? null),
  };
}

/** Pairs of the two probes; of two records with their clocks brought together, where their temperatures tell how far they are apart. */
export function pairRecords(open: readonly OpenLog[], said: PairSaid): PairedRecords | PairRefusal {
  const read: ReadColumns[] = [];
  for (const [index, one] of open.entries()) {
    const saidOfOne = said.records[index];
    const columns = saidOfOne ? readColumns(one, saidOfOne) : 'noTime';
    if (typeof columns === 'string') return columns;
    read.push(columns);
  }
  const [first, second = first] = read;
  const entering = read.map((one) => probeLog(one, 'entering')).find(Boolean);
  const leaving = read.map((one) => probeLog(one, 'leaving')).find(Boolean);
  if (!entering || !leaving) return 'noProbes';
  if (first?.clock !== second?.clock) return 'differentClocks';
  const together = read.length === 1;
  const shift = together ? 0 : shiftOf(entering, leaving);
  const apart = together ? 0 : Math.max(2, 0.6 * Math.max(stepOf(entering), stepOf(leaving)));
  const all = pairLogs(entering, leaving, { shift: shift ?? 0, apart });
  const end = all.at(-1)?.time ?? 0;
  const { minutes } = said;
  const pairs = minutes === null ? all : all.filter(({ time }) => time > end - minutes * 60);
  if (pairs.length === 0) return 'noPairs';
  const areMeans = pairs.length > mostPairs;
  return {
    pairs: areMeans ? fiveMeans(pairs) : pairs,
    areMeans,
    count: pairs.length,
    dated: first?.clock === 'dated' || first?.clock === 'epoch',
    shift,
  };
}

function shiftOf(entering: ProbeLog, leaving: ProbeLog): number | null {
  try {
    return alignClocks(entering, leaving)?.shift ?? null;
  } catch (error) {
    if (error instanceof CalcError) return null;
    throw error;
  }
}

/** The middle one of the times between two readings, s. */
function stepOf({ time }: ProbeLog): number {
  const steps = time.slice(1).map((at, row) => at - (time[row] as number));
  return steps.toSorted((a, b) => a - b)[steps.length >> 1] ?? 60;
}

/** The means of five parts in the order of time: what is known of their mean is what is known of all of them. */
function fiveMeans(pairs: readonly ProbePair[]): readonly ProbePair[] {
  return Array.from({ length: batchCount }, (_, part) => {
    const from = Math.round((part * pairs.length) / batchCount);
    const some = pairs.slice(from, Math.round(((part + 1) * pairs.length) / batchCount));
    const mean = (of: 'entering' | 'leaving'): ProbeReading => {
      const humidities = some.flatMap((pair) => pair[of].humidity ?? []);
      return {
        dryBulb: meanOf(some.map((pair) => pair[of].dryBulb)),
        humidity: humidities.length === some.length ? meanOf(humidities) : null,
      };
    };
    return { time: meanOf(some.map(({ time }) => time)), entering: mean('entering'), leaving: mean('leaving') };
  });
}
