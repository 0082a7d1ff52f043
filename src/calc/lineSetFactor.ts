import type { LineFactor, MakersLineLimits } from './lineSetTypes.ts';
import { amount } from './trace.ts';
import type { Trace } from './types.ts';

/**
 * How much of the loss in density is a loss of capacity. At one evaporating temperature all of it is (1.8 % for each °F of dew
 * point): that is the most. A coil that is drawn less re-balances at a higher evaporating temperature, and two thirds to three
 * quarters are a fair estimate for a system; no publication was found for that share, so the band keeps both ends.
 */
export const shareOfLoss = { least: 2 / 3, taken: 3 / 4, most: 1 } as const;

/**
 * What the line leaves of the capacity: the maker's factor where there is one, else the band around the density ratio of the
 * vapour at the compressor, this line over the one of the rating. `null` when neither is known.
 */
export function lineFactor(maker: MakersLineLimits, densityRatio: number | null, t?: Trace): LineFactor | null {
  const { factor } = maker;
  if (factor !== null) return { factor, low: factor, high: factor, basis: 'maker', source: 'makersTable' };
  if (densityRatio === null) return null;
  const left = (share: number) => 1 - share * (1 - densityRatio);
  const [one, other] = [left(shareOfLoss.most), left(shareOfLoss.least)];
  const taken = left(shareOfLoss.taken);
  t?.({
    id: 'lineSet.factor',
    equation: 'F = 1 − k·(1 − r)',
    puts: [amount('k', 'ratio', shareOfLoss.taken), amount('r', 'ratio', densityRatio)],
    gives: amount('F', 'ratio', taken),
    source: 'suctionLoss',
  });
  return {
    factor: taken,
    low: Math.min(one, other),
    high: Math.max(one, other),
    basis: 'density',
    source: 'suctionLoss',
  };
}
