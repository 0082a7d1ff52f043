import { limits } from '../limits.ts';
import { amount } from '../trace.ts';
import type { Trace } from '../types.ts';
import { mean, missingCause, readList } from './cells.ts';
import { type AirflowFound, type BlowerSpeed, type Cause, found, remark } from './found.ts';
import { type AirThere, flowShown, type ShownAs } from './instruments.ts';

export interface Hood {
  /** What the hood shows at each return grille, m³/s; `null` where nothing stands yet. */
  readonly returns: readonly (number | null)[];
  /** `powered`: a fan takes off the hood's own resistance; `compensated`: read twice and corrected; `plain`: neither. */
  readonly hood: 'powered' | 'compensated' | 'plain';
  readonly shownAs: ShownAs;
  /** The hood covers every grille in both directions. */
  readonly covers: boolean;
  /** Ducts between the grilles and the blower that were tested or sealed. */
  readonly ductsTight: boolean;
  /** The air at the grilles. */
  readonly air: AirThere;
  readonly speed?: BlowerSpeed | undefined;
}

/** Standard uncertainties in the field; for the hood that is read twice the figure is ours, between the other two. */
const hoodError = {
  powered: { u: 0.06, basis: 'fieldHoods' },
  compensated: { u: 0.08, basis: 'commonPractice' },
  plain: { u: 0.12, basis: 'fieldHoods' },
} as const satisfies Record<Hood['hood'], Pick<Cause, 'u' | 'basis'>>;
/** Air drawn in behind the grilles, which no hood sees. Common practice, no source. */
const leaks = 0.05;
/** A hood smaller than the grille. Common practice, no source. */
const uncovered = 0.1;

/**
 * Airflow by a hood at one or several return grilles, m³/s: their sum. A grille without a reading counts as the mean of the
 * others and makes the answer partial. Throws a `CalcError` when no grille was read. Errors in the field: `fieldHoods`.
 */
export function airflowFromHood(reading: Hood, t?: Trace): AirflowFound {
  const { hood, shownAs, covers, ductsTight, air, speed } = reading;
  const cells = readList('returns', reading.returns, limits.volumeFlow);
  const total = mean(cells.values) * reading.returns.length;
  t?.({
    id: 'airflow.hood.sum',
    equation: 'V̇ = ΣV̇ᵢ',
    puts: cells.values.map((value, i) => amount(`V̇${subscript(i + 1)}`, 'volumeFlow', value)),
    gives: amount('V̇', 'volumeFlow', total),
    source: 'californiaAirflow',
  });
  const causes: readonly Cause[] = [
    { name: 'hood.instrument', ...hoodError[hood] },
    { name: 'hood.leaks', u: ductsTight ? 0 : leaks, basis: 'commonPractice' },
    { name: 'hood.uncovered', u: covers ? 0 : uncovered, basis: 'commonPractice' },
    ...missingCause('hood.missing', cells.values, cells.missing),
  ];
  const remarks = [
    ...(hood === 'plain' ? [remark('hoodBackPressure', 'doubt', amount('u', 'fraction', hoodError.plain.u))] : []),
    ...(covers ? [] : [remark('hoodTooSmall', 'doubt')]),
    ...(ductsTight ? [] : [remark('leaksAfterGrille', 'note', amount('u', 'fraction', leaks))]),
  ];
  const flow = flowShown(total, shownAs, air, t);
  const { problems, missing } = cells;
  return found({ method: 'hood', ...flow, causes, remarks, problems, partial: missing > 0, speed }, t);
}

/** A small number below the line. */
function subscript(n: number): string {
  return [...String(n)].map((digit) => String.fromCodePoint(0x2080 + Number(digit))).join('');
}
