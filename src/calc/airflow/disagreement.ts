import type { AirflowFound } from './found.ts';
import type { Matrix } from './leastSquares.ts';
import type { AirflowMethod } from './methods.ts';

/** What usually explains that one method finds more than another. */
export type DisagreementCode =
  /** The area factor does not fit grille, instrument or hand. */
  | 'areaFactor'
  /** The motor does not reach what it reports, or its report was never checked. */
  | 'readoutUnchecked'
  /** Air comes in behind the grilles, or the hood's resistance held some back. */
  | 'leaksOrBackPressure'
  /** The supply probe saw something hot or stood in a hot streak. */
  | 'probeTooHot'
  /** The coil was dry, the heat less than thought, or the supply probe stood in a cool streak. */
  | 'dryCoilOrCoolStreak'
  /** Air went past the plate instead of through it. */
  | 'airPastPlate'
  /** The return was not shut off, so that air went past the fan. */
  | 'returnNotShut'
  /** A dirty wheel, a low voltage, or a filter or coil that the table does not count. */
  | 'blowerNotAsTable'
  /** The wrong column, or holes where the pressure is not that of the whole. */
  | 'wrongColumnOrHoles'
  /** Too little straight duct before the section. */
  | 'disturbedSection';

type Who = AirflowMethod | 'any';

type Reason = readonly [high: Who, low: Who, code: DisagreementCode];

/** Who finds more, who less, and why; the first row that fits counts, and one fits every pair. Common practice, no source. */
const reasons: readonly Reason[] = [
  ['grille', 'any', 'areaFactor'],
  ['any', 'grille', 'areaFactor'],
  ['readout', 'any', 'readoutUnchecked'],
  ['any', 'readout', 'readoutUnchecked'],
  ['any', 'hood', 'leaksOrBackPressure'],
  ['any', 'temperatureRise', 'probeTooHot'],
  ['temperatureRise', 'any', 'dryCoilOrCoolStreak'],
  ['any', 'flowGrid', 'airPastPlate'],
  ['any', 'pressureMatch', 'returnNotShut'],
  ['fanTable', 'any', 'blowerNotAsTable'],
  ['any', 'fanTable', 'wrongColumnOrHoles'],
  ['any', 'traverse', 'disturbedSection'],
];

/** What usually explains that `high` finds more than `low`. */
export function usualReason(high: AirflowMethod, low: AirflowMethod): DisagreementCode {
  const fits = (who: Who, method: AirflowMethod) => who === 'any' || who === method;
  const [, , code] = reasons.find(([more, less]) => fits(more, high) && fits(less, low)) as Reason;
  return code;
}

/** Two answers farther apart than their uncertainties, and what usually explains it. */
export interface Disagreement {
  readonly high: AirflowMethod;
  readonly low: AirflowMethod;
  /** Their difference over the mean, and how many of its standard uncertainties that is. */
  readonly gap: number;
  readonly apart: number;
  readonly usual: DisagreementCode;
}

/** Two figures this many standard uncertainties apart disagree: 95 % of a normal distribution. */
const farApart = 1.96;

/** Every pair that disagrees, the farthest apart first; `off` is each answer over the mean, less one. */
export function disagreementsOf(
  answers: readonly AirflowFound[],
  off: readonly number[],
  covariance: Matrix,
): readonly Disagreement[] {
  const pairs = answers.flatMap((_, i) => answers.slice(i + 1).map((__, k) => [i, i + 1 + k] as const));
  const found = pairs.map(([i, j]): Disagreement => {
    const [high, low] = (off[i] as number) >= (off[j] as number) ? [i, j] : [j, i];
    const gap = (off[high] as number) - (off[low] as number);
    const u = Math.sqrt(covariance[i]![i]! + covariance[j]![j]! - 2 * covariance[i]![j]!);
    const [more, less] = [answers[high]!.method, answers[low]!.method];
    return { high: more, low: less, gap, apart: gap / u, usual: usualReason(more, less) };
  });
  return found.filter(({ apart }) => apart > farApart).sort((a, b) => b.apart - a.apart);
}
