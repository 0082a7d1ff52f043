/** Air in words: as the fields show it, and with all its properties. */
import type { MoistAir } from '~/calc/types.ts';
import type { ChartFrame } from '~/charts/moistAir/frame.ts';
import { format, withUnit } from '~/job/format.ts';
import { quantityOf, unitOf } from '~/job/quantities.ts';
import type { HumidityMeasure } from '~/job/states.ts';
import type { UnitKey } from '~/job/types.ts';
import { displayUnit, fromSi } from '~/job/units.ts';
import { airChart, readingWords } from '~/words/en/moistAir.ts';
import { system } from '../jobStore.ts';
import { inUnitOf, type Shown } from '../show.ts';

/** A figure of a state to the digits of its field. */
export function figure(measure: 'dryBulb' | HumidityMeasure, si: number): string {
  const key = `state.${measure}` as const;
  const unit = unitOf(key, system.value);
  return withUnit(format(si, unit, quantityOf(key).decimals[system.value]), unit);
}

/** The two figures that give a point. */
export const spokenAir = (air: MoistAir, measure: HumidityMeasure) =>
  `${figure('dryBulb', air.dryBulb)}, ${figure(measure, air[measure])}${measure === 'relativeHumidity' ? '' : ` ${readingWords.properties[measure].toLowerCase()}`}`;

/** A temperature as the number of a slider. */
export const degrees = (si: number) => Math.round(fromSi(si, displayUnit.temperature[system.value]) * 10) / 10;

/** How a shape that keys move says what it is, where it stands and how far it goes. */
export const slider = (name: string, said: string, { dryBulb }: ChartFrame) => ({
  'aria-label': name,
  'aria-roledescription': airChart.pointRole,
  'aria-valuemin': degrees(dryBulb[0]),
  'aria-valuemax': degrees(dryBulb[1]),
  'aria-valuetext': said,
});

export type Property = keyof typeof readingWords.properties;

/** Digits as on a good chart: enough to work on with. */
const digits: Readonly<Record<Property, readonly [ip: number, si: number]>> = {
  dryBulb: [1, 1],
  relativeHumidity: [1, 1],
  wetBulb: [1, 1],
  dewPoint: [1, 1],
  humidityRatio: [1, 2],
  enthalpy: [2, 1],
  specificVolume: [2, 3],
  vaporPressure: [3, 2],
};

const kinds = {
  dryBulb: 'temperature',
  relativeHumidity: 'fraction',
  wetBulb: 'temperature',
  dewPoint: 'temperature',
  humidityRatio: 'humidityRatio',
  enthalpy: 'enthalpy',
  specificVolume: 'specificVolume',
  vaporPressure: 'pressure',
} as const;

export const properties = Object.keys(kinds) as readonly Property[];

export const unitOfProperty = (property: Property): UnitKey => displayUnit[kinds[property]][system.value];

/** One property of the air, number and unit apart. */
export function propertyOf(air: MoistAir, property: Property): Shown {
  const [ip, si] = digits[property];
  return inUnitOf(air[property], unitOfProperty(property), system.value === 'ip' ? ip : si);
}

/** All properties of the air in one sentence, for those who listen. */
export const allSaid = (air: MoistAir): string =>
  properties
    .map((property) => {
      const { number, unit } = propertyOf(air, property);
      return `${readingWords.properties[property]} ${number}\u00a0${unit}`;
    })
    .join(', ');

/** A pressure as a barometer shows it. */
export const pressureText = (si: number): string => {
  const unit: UnitKey = system.value === 'ip' ? 'inHg' : 'kpa';
  return withUnit(format(si, unit, system.value === 'ip' ? 2 : 1), unit);
};
