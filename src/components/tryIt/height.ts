import { foot, fromFahrenheit, moistAir, standardPressure } from '~/calc/index.ts';
import { compareAt } from '~/islands/factors/compare.ts';
import { ahead, dial } from './ahead.ts';

/**
 * At a height in m: the dry air in a cubic metre of return air at 75 °F and 50 %, kg, and by how much the total is off, relative,
 * that somebody works out with the factor 4.5 and a chart for sea level.
 */
export function atHeight(height: number): readonly [dryAir: number, off: number] {
  const air = moistAir({
    dryBulb: fromFahrenheit(75),
    relativeHumidity: 0.5,
    pressure: standardPressure(height),
  });
  const { rule, exact } = compareAt(height).total;
  return [1 / air.specificVolume, rule / exact - 1];
}

export const height = ahead([dial(0, 10_000 * foot, 250 * foot, 5000 * foot)], atHeight);
