import {
  btuPerHour,
  cubicFootPerMinute,
  dryAirFlow,
  expectedCapacity,
  fromFahrenheit,
  moistAir,
  ratingTable,
  temperatureRise,
} from '~/calc/index.ts';
import { ahead, dial } from './ahead.ts';

const nominal = 3;
/** Of the table, m³/s for each ton. */
export const printed = 400 * cubicFootPerMinute;
const air = moistAir({ dryBulb: fromFahrenheit(75), relativeHumidity: 0.5 });
const massFlow = (perTon: number) => dryAirFlow({ volumeFlow: nominal * perTon, at: 'standard' });

/** Invented: three tons on the day of the other examples, its one block for 400 cfm a ton, the blower left out. */
const conditions = {
  outdoorDryBulb: fromFahrenheit(91),
  enteringWetBulb: air.wetBulb,
  enteringDryBulb: air.dryBulb,
  dryAirFlow: massFlow(printed),
};
const table = ratingTable([{ ...conditions, total: 33_600 * btuPerHour, sensible: 25_200 * btuPerHour }], {
  basis: 'gross',
  blowerPower: 0,
});

/**
 * What a coil makes of its return air at an airflow in m³/s of standard air for each nominal ton: total and sensible
 * capacity, W, and by how many kelvin it cools the air.
 */
export function atPerTon(perTon: number): readonly [total: number, sensible: number, drop: number] {
  const flow = massFlow(perTon);
  const { total, sensible } = expectedCapacity(table, { ...conditions, dryAirFlow: flow }, { blowerPower: 0 });
  if (sensible === null) throw new RangeError('the example has no sensible capacity');
  return [total, sensible, temperatureRise(sensible, flow, air.humidityRatio)];
}

export const perTon = ahead(
  [dial(290 * cubicFootPerMinute, 500 * cubicFootPerMinute, 10 * cubicFootPerMinute, 320 * cubicFootPerMinute)],
  atPerTon,
);
