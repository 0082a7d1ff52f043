/** A record thinned to what a plot can show: finer towards its end, where it is judged. */
import { ratioFrom } from '../../calc/confidence/airAt.ts';
import type { LogColumn } from '../../calc/confidence/logColumns.ts';
import type { Log, Steadiness } from '../../calc/confidence/steady.ts';
import { enthalpyAt } from '../../calc/enthalpy.ts';

/** One moment of a record: s, and the capacity relative to its mean over the last window, less one. */
export interface TracePoint {
  readonly time: number;
  readonly capacity: number | null;
  readonly readings: Readonly<Partial<Record<LogColumn, number>>>;
}

/** s. This long before the end a record is drawn finely, and kept with a job. */
export const fineTrace = 3600;
const points = 120;

/** At most some 240 moments: half of them in the last hour, evenly, with the capacity that the four readings come to. */
export function thinTrace(log: Log, { window }: Steadiness): readonly TracePoint[] {
  const names = Object.keys(log.columns) as LogColumn[];
  const rows = Array.from({ length: log.time.length }, (_, row) => row).filter(
    (row) => Number.isFinite(log.time[row]) && names.every((name) => Number.isFinite(log.columns[name]?.[row])),
  );
  const timeOf = (row: number) => log.time[row] as number;
  const isFine = (row: number) => timeOf(row) >= window.to - fineTrace;
  const kept = [
    ...evenly(
      rows.filter((row) => !isFine(row)),
      points,
    ),
    ...evenly(rows.filter(isFine), points),
  ];
  const inWindow = rows.filter((row) => timeOf(row) >= window.from && timeOf(row) <= window.to);
  const drops = inWindow.flatMap((row) => capacityAt(log, row) ?? []);
  const mean = drops.reduce((sum, one) => sum + one, 0) / drops.length;
  return kept.map((row) => {
    const drop = capacityAt(log, row);
    return {
      time: timeOf(row),
      capacity: drop !== null && mean !== 0 && Number.isFinite(mean) ? drop / mean - 1 : null,
      readings: Object.fromEntries(names.map((name) => [name, log.columns[name]?.[row] as number])),
    };
  });
}

/** At most so many of a list, evenly chosen, the last one among them. */
export function evenly<T>(all: readonly T[], most: number): readonly T[] {
  const step = Math.ceil(all.length / most);
  return step < 2 ? all : all.filter((_, at) => (all.length - 1 - at) % step === 0);
}

/** What the coil takes from a kilogram of air, J; `null` without the four readings, and for readings that no air has. */
function capacityAt({ columns, measure, pressure = 101_325 }: Log, row: number): number | null {
  const at = (name: LogColumn) => columns[name]?.[row];
  const [t1, h1, t2, h2] = [
    at('entering.dryBulb'),
    at('entering.humidity'),
    at('leaving.dryBulb'),
    at('leaving.humidity'),
  ];
  if (t1 === undefined || h1 === undefined || t2 === undefined || h2 === undefined) return null;
  const enthalpy = (t: number, humidity: number) => enthalpyAt(t, ratioFrom(measure, t, humidity, pressure));
  const drop = enthalpy(t1, h1) - enthalpy(t2, h2);
  return Number.isFinite(drop) ? drop : null;
}
