/** What the makers of questions share. */

import { coilLoad } from '../../../calc/coilLoad.ts';
import { dryAirFlow } from '../../../calc/dryAirFlow.ts';
import { moistAir } from '../../../calc/moistAir.ts';
import type { CoilLoad } from '../../../calc/types.ts';
import { cubicFootPerMinute, fromFahrenheit } from '../../../calc/units.ts';
import type { Tell, TellName } from './types.ts';

export const tell = (name: TellName, kind: Tell['kind'], value: number): Tell => ({ name, kind, value });

/** Two airs and the actual air that passes at the return, in the figures in which they are spoken of: °F, per cent, cfm. */
export interface Readings {
  readonly room: number;
  readonly roomHumidity: number;
  readonly supply: number;
  readonly supplyHumidity: number;
  readonly airflow: number;
}

/** Air of a temperature, °F, and a humidity, %. */
export const airOf = (fahrenheit: number, percent: number, pressure?: number) =>
  moistAir({
    dryBulb: fromFahrenheit(fahrenheit),
    relativeHumidity: percent / 100,
    ...(pressure === undefined ? {} : { pressure }),
  });

/** What the coil between two readings does, at a pressure, Pa. */
export function loadOf(of: Readings, pressure?: number): CoilLoad {
  const entering = airOf(of.room, of.roomHumidity, pressure);
  const leaving = airOf(of.supply, of.supplyHumidity, pressure);
  const flow = dryAirFlow({ volumeFlow: of.airflow * cubicFootPerMinute, at: entering });
  return coilLoad({ entering, leaving, dryAirFlow: flow });
}

export const toldReadings = (of: Readings): readonly Tell[] => [
  tell('airflow', 'volumeFlow', of.airflow * cubicFootPerMinute),
  tell('room', 'temperature', fromFahrenheit(of.room)),
  tell('roomHumidity', 'fraction', of.roomHumidity / 100),
  tell('supply', 'temperature', fromFahrenheit(of.supply)),
  tell('supplyHumidityTold', 'fraction', of.supplyHumidity / 100),
];

/** The readings that most lessons speak of. */
export const usualReadings: Readings = { room: 75, roomHumidity: 50, supply: 56, supplyHumidity: 88, airflow: 1200 };
