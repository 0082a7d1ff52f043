/** What is asked of the ducts outside the rooms: one row a field. `usual` is common practice, no source. */
import { limits } from '../../calc/limits.ts';
import { foot, fromFahrenheit } from '../../calc/units.ts';
import type { Quantity } from '../types.ts';

type Range = readonly [number, number];
const fahrenheit = (low: number, high: number): Range => [fromFahrenheit(low), fromFahrenheit(high)];

const area = {
  kind: 'area',
  symbol: 'A',
  ip: 'ft2',
  si: 'm2',
  decimals: { ip: 0, si: 1 },
  usual: [0, 600 * foot ** 2],
  possible: [0, 500],
} as const;
const leakage = {
  kind: 'fraction',
  symbol: 'a',
  ip: 'percent',
  si: 'percent',
  decimals: { ip: 0, si: 0 },
  usual: [0, 0.2],
  possible: [0, 0.6],
} as const;
const temperature = {
  kind: 'temperature',
  ip: 'degF',
  si: 'degC',
  decimals: { ip: 0, si: 0 },
} as const;

export const ductQuantities = {
  'ducts.supplyArea': area,
  'ducts.returnArea': area,
  'ducts.supplyLeakage': leakage,
  'ducts.returnLeakage': leakage,
  'ducts.around': { ...temperature, symbol: 'tₐ', usual: fahrenheit(60, 150), possible: limits.dryBulb },
  'ducts.dewPoint': { ...temperature, symbol: 'tᵈ', usual: fahrenheit(30, 80), possible: fahrenheit(-20, 95) },
} as const satisfies Record<string, Quantity>;
