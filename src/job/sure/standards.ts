/** What the probes showed of a standard, as typed, and what that says of the error that both share. */
import { type HeldAgainst, heldAgainst, standards } from '../../calc/confidence/standards.ts';
import type { ProbeDifference } from '../../calc/types.ts';
import { chosen } from '../choices.ts';
import { siOf } from '../entered.ts';
import { cellOf, type Grid } from '../gridCells.ts';
import type { Job } from '../types.ts';
import { joinSure } from './join.ts';
import { limitOf } from './limits.ts';
import { figuresOf, measureHere } from './pairs.ts';
import { sureTables } from './tables.ts';

joinSure();

/** One row: what each probe showed, and what an aspirated wet bulb said beside them. */
export const standardsGrid: Grid = {
  key: 'standards',
  columns: sureTables.standards,
  quantity: figuresOf,
};

export type Standard = 'iceBath' | 'salt' | 'aspirated';

/** The standards that a job has, and the columns in which what was seen of each is typed. */
export function standardsHere(
  job: Job,
): readonly { readonly standard: Standard; readonly columns: readonly string[] }[] {
  const humidity = measureHere(job) === 'wetBulb' ? 'WetBulb' : 'RelativeHumidity';
  const held = chosen(job, 'probes.humidityStandard');
  const both = (of: string) => [`entering${of}`, `leaving${of}`];
  return [
    ...(chosen(job, 'probes.iceBath') === 'yes' ? [{ standard: 'iceBath', columns: both('DryBulb') } as const] : []),
    // A salt says a relative humidity; what a wet bulb is over it hangs on how warm the jar is.
    ...(held === 'salt' && humidity === 'RelativeHumidity'
      ? [{ standard: 'salt', columns: both(humidity) } as const]
      : []),
    ...(held === 'wetBulb'
      ? [{ standard: 'aspirated', columns: [...both(humidity), `known${humidity}`] } as const]
      : []),
  ];
}

/** What a standard says of these probes, whose difference near it is known; `null` until something was typed of it. */
export function heldIn(
  job: Job,
  standard: Standard,
  { dryBulb, humidity }: Pick<ProbeDifference, 'dryBulb' | 'humidity'>,
): HeldAgainst | null {
  const measure = measureHere(job);
  const columns = standardsHere(job).find((one) => one.standard === standard)?.columns;
  if (!columns) return null;
  const [entering = null, leaving = null, typed = null] = columns.map((column) =>
    siOf(cellOf(job, standardsGrid, { row: 0, column }).read),
  );
  const known = { iceBath: standards.iceBath.dryBulb, salt: standards.salt.relativeHumidity, aspirated: typed }[
    standard
  ];
  if (known === null) return null;
  const limit = {
    iceBath: standards.iceBath.limit,
    salt: standards.salt.limit,
    aspirated: standards.aspirated.limit[measure],
  }[standard];
  const of = standard === 'iceBath' ? 'dryBulb' : measure;
  const reference = chosen(job, 'probes.reference') ?? 'neither';
  return heldAgainst(
    { entering: entering === null ? null : entering - known, leaving: leaving === null ? null : leaving - known },
    (standard === 'iceBath' ? dryBulb : humidity) ?? 0,
    { neither: 0.5, entering: 1, leaving: 0 }[reference],
    { standard: limit, probes: limitOf(job, of) },
  );
}
