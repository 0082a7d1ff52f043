/** Every field of a job that cannot be used, with the reason; the cells of the maker's table are in `ratingProblems.ts`. */
import { chosen } from './choices.ts';
import { readEntered } from './entered.ts';
import { readProbeLimits } from './probeLimits.ts';
import { type QuantityKey, quantities } from './quantities.ts';
import type { BadCode, Read } from './read.ts';
import { listedReadings, measuredHere } from './readings.ts';
import type { Job } from './types.ts';

export interface FieldProblem {
  /** A quantity, a ± ('leaving.dryBulb.limit'), a listed reading ('leaving.readings/0/dryBulb') or the key of a cell. */
  readonly key: string;
  readonly code: BadCode | 'equal';
  /** What is possible, SI. */
  readonly min?: number;
  readonly max?: number;
}

const places = ['entering', 'leaving'] as const;

/**
 * The problems of the fields in use: a humidity of the kind that is not asked for is kept, and not judged; what is
 * asked on the airflow sheet is judged there.
 */
export function fieldProblems(job: Job): readonly FieldProblem[] {
  const here = measuredHere(job);
  const fields = (Object.keys(quantities) as QuantityKey[])
    .filter((key) => isUsed(job, key))
    .flatMap((key) => problemOf(key, readEntered(job, key)));
  const limits = here.flatMap((what) => readProbeLimits(job, what)).flatMap(({ key, read }) => problemOf(key, read));
  const lists = places.flatMap((place) =>
    listedReadings(job, place).flatMap(({ reads }, index) =>
      here.flatMap((what) => problemOf(`${place}.readings/${index}/${what}`, reads[what])),
    ),
  );
  return [...fields, ...limits, ...lists];
}

function isUsed(job: Job, key: QuantityKey): boolean {
  const unused = chosen(job, 'humidityAs') === 'wetBulb' ? 'relativeHumidity' : 'wetBulb';
  if (places.some((place) => key === `${place}.${unused}`)) return false;
  return key !== 'rating.airflowSecond' || chosen(job, 'rating.blocks') === 'two';
}

/** What is wrong with one field, if anything is. */
export function problemOf(key: string, read: Read): readonly FieldProblem[] {
  return read.state === 'bad' ? [{ key, code: read.code, min: read.min, max: read.max }] : [];
}
