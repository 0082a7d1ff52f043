/** All properties of the air at one point, in the order in which they are read out. */
import type { Kind, MoistAir } from '../../calc/types.ts';
import type { System } from '../../job/types.ts';
import { moistAirChart } from '../../words/en/moistAirChart.ts';
import { amountText } from './amounts.ts';

export interface Property {
  readonly key:
    | 'dryBulb'
    | 'wetBulb'
    | 'dewPoint'
    | 'relativeHumidity'
    | 'humidityRatio'
    | 'enthalpy'
    | 'specificVolume';
  readonly name: string;
  readonly kind: Kind;
  /** SI. */
  readonly value: number;
}

const kinds: readonly (readonly [Property['key'], Kind])[] = [
  ['dryBulb', 'temperature'],
  ['relativeHumidity', 'fraction'],
  ['wetBulb', 'temperature'],
  ['dewPoint', 'temperature'],
  ['humidityRatio', 'humidityRatio'],
  ['enthalpy', 'enthalpy'],
  ['specificVolume', 'specificVolume'],
];

export function propertiesOf(air: MoistAir): readonly Property[] {
  return kinds.map(([key, kind]) => ({ key, name: moistAirChart.properties[key], kind, value: air[key] }));
}

/** A property as number and unit: "62.6 °F". */
export const propertyText = ({ kind, value }: Property, system: System): string => amountText(kind, value, system);

/** The whole in one sentence: "75.0 °F, relative humidity 50 %, wet bulb 62.6 °F …". */
export function airSentence(air: MoistAir, system: System): string {
  const [first, ...rest] = propertiesOf(air);
  return [propertyText(first!, system), ...rest.map((one) => `${lower(one.name)} ${propertyText(one, system)}`)].join(
    ', ',
  );
}

const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
