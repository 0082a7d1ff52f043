import { usual } from '../../calc/confidence/defaults.ts';
import type { Test } from '../../calc/types.ts';
import { sitePressure } from '../entered.ts';
import type { Job } from '../types.ts';
import type { OtherLimit } from './otherLimits.ts';

/** What counts where no ± was typed, SI; `null`: a share of a power that is not known here. Common practice, no source. */
export function usualLimit(
  job: Job,
  key: OtherLimit,
  { barometer, blower }: Pick<Test, 'barometer' | 'blower'>,
): number | null {
  if (key === 'outdoorDryBulb') return usual.outdoorDryBulb;
  if (key === 'barometer')
    return (barometer === null ? usual.pressureByHeight : usual.pressureByInstrument) * sitePressure(job);
  return blower.power === null ? null : usual.blowerMeasured * blower.power;
}
