import type { AirReading, Test } from '~/calc/index.ts';
import { example, loadOf } from '~/components/mistakes/index.ts';
import { ahead, dial } from './ahead.ts';

/** The invented test with humidities that are read too high by so much, fractions: total and sensible cooling, W. */
export function misread(supply: number, returned: number): readonly [total: number, sensible: number] {
  const test: Test = {
    ...example,
    entering: more(example.entering, returned),
    leaving: more(example.leaving, supply),
  };
  const { total, sensible } = loadOf(test);
  return [total, sensible];
}

const more = (reading: AirReading, by: number): AirReading => ({
  ...reading,
  relativeHumidity: (reading.relativeHumidity ?? 0) + by,
});

export const wetAir = ahead([dial(-0.05, 0.05, 0.01, 0.03), dial(-0.05, 0.05, 0.01, 0)], misread);
