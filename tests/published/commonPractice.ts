/** What the trade expects of an ordinary system: no source is claimed, and the tolerance is that of a habit. */
import {
  btuPerHour,
  cubicFootPerMinute,
  dryAirFlow,
  fromFahrenheit,
  leavingAir,
  type MoistAir,
  moistAir,
  toFahrenheit,
} from '../../src/calc/index.ts';
import type { Check } from './check.ts';

/** 4 tons, 350 cfm per ton, 75 °F and 63 °F wet bulb entering, about 43 000 Btu/h, with a usual bypass factor. */
function supply(bypassFactor: number): MoistAir {
  const entering = moistAir({ dryBulb: fromFahrenheit(75), wetBulb: fromFahrenheit(63) });
  const duty = {
    entering,
    dryAirFlow: dryAirFlow({ volumeFlow: 4 * 350 * cubicFootPerMinute, at: 'standard' }),
    total: 43000 * btuPerHour,
  };
  const air = leavingAir(duty, bypassFactor);
  if (!air) throw new Error('this coil has no apparatus dew point');
  return moistAir({ dryBulb: air.dryBulb, humidityRatio: air.humidityRatio });
}

const bypassFactors = [0.05, 0.12, 0.2] as const;

export const checks: readonly Check[] = bypassFactors.flatMap((bypassFactor): Check[] => [
  {
    title: `A 4-ton system at 350 cfm per ton: leaving wet bulb, bypass factor ${bypassFactor}`,
    expected: 52,
    tolerance: 0.5,
    unit: '°F',
    source: 'commonPractice',
    known: 'common practice',
    why: 'a figure of the trade in whole degrees',
    ours: () => toFahrenheit(supply(bypassFactor).wetBulb),
  },
  {
    title: `A 4-ton system at 350 cfm per ton: leaving humidity, bypass factor ${bypassFactor}`,
    expected: 0.93,
    tolerance: 0.07,
    unit: '1',
    source: 'commonPractice',
    known: 'common practice',
    why: 'the trade says "close to saturation": 86 to 100 %',
    ours: () => supply(bypassFactor).relativeHumidity,
  },
]);
