import { airflowFromGrille, type GrilleVaneFound } from '../../calc/airflow/grille.ts';
import { attempt } from '../../calc/outcome.ts';
import type { Trace } from '../../calc/types.ts';
import { chosen } from '../choices.ts';
import type { Job } from '../types.ts';
import { airHere } from './air.ts';
import type { Found } from './found.ts';
import { gridRows, gridValue } from './grid.ts';
import { airflowTables } from './tables.ts';

export const grilleReadings = airflowTables.grilles.slice(3);
const sizes = ['width', 'height', 'areaFactor'] as const;

/** Airflow by a vane over the return grilles. A grille counts once its size and factor are there. */
export function fromGrille(job: Job, t?: Trace): Found<GrilleVaneFound> {
  const rows = Array.from({ length: gridRows(job, 'grilles') }, (_, row) => {
    const at = (column: string) => gridValue(job, 'grilles', row, column);
    const readings = grilleReadings.map(at);
    const last = readings.findLastIndex((reading) => reading !== null);
    return { sizes: sizes.map(at), readings: readings.slice(0, last + 1) };
  });
  const whole = rows.every((row) => row.sizes.every((size) => size !== null));
  const read = rows.some(({ readings }) => readings.length > 0);
  if (!whole || !read) return { ok: false, waiting: ['grilles'], problem: null };
  const grilles = rows.map(({ sizes: [width, height, areaFactor], readings }) => ({
    width: width as number,
    height: height as number,
    areaFactor: areaFactor as number,
    readings: readings.length > 0 ? readings : [null],
  }));
  const factorFrom = chosen(job, 'grille.factorFrom') ?? 'guess';
  return attempt(() =>
    airflowFromGrille(
      { grilles, factorFrom, air: airHere(job, 'entering').air, speed: chosen(job, 'grille.speed') },
      t,
    ),
  );
}
