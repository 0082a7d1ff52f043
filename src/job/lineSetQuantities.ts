/** What is asked of a line set: a row for each field. */
import { lineSetLimits } from '../calc/lineSetLimits.ts';
import { foot, fromFahrenheit } from '../calc/units.ts';
import type { Quantity } from './types.ts';

const feet = (low: number, high: number) => [low * foot, high * foot] as const;
const fahrenheit = (low: number, high: number) => [fromFahrenheit(low), fromFahrenheit(high)] as const;

const length = {
  kind: 'length',
  ip: 'ft',
  si: 'm',
  decimals: { ip: 0, si: 1 },
  usual: feet(0, 100),
  possible: lineSetLimits.length,
} as const;
const temperature = { kind: 'temperature', ip: 'degF', si: 'degC', decimals: { ip: 1, si: 1 } } as const;
const difference = {
  kind: 'temperatureDifference',
  ip: 'degFStep',
  si: 'degCStep',
  decimals: { ip: 1, si: 1 },
  usual: [2, 12],
} as const;

export const lineSetQuantities = {
  'lineSet.length': { ...length, symbol: 'L' },
  'lineSet.ratedLength': { ...length, symbol: 'Lᵣ' },
  'lineSet.fittings': { ...length, symbol: 'Lₑ' },
  'lineSet.lift': { ...length, symbol: 'z', usual: feet(-50, 50), possible: lineSetLimits.lift },
  'lineSet.maximumLength': { ...length, symbol: 'Lₘ', usual: feet(25, 250) },
  'lineSet.maximumLift': { ...length, symbol: 'zₘ' },
  'lineSet.makerFactor': {
    kind: 'fraction',
    symbol: 'Fₘ',
    ip: 'percent',
    si: 'percent',
    decimals: { ip: 1, si: 1 },
    usual: [0.8, 1],
    possible: lineSetLimits.factor,
  },
  'lineSet.evaporating': {
    ...temperature,
    symbol: 'tₑ',
    usual: fahrenheit(32, 55),
    possible: lineSetLimits.evaporating,
  },
  'lineSet.superheat': { ...difference, symbol: 'Δtₛ', possible: lineSetLimits.superheat },
  'lineSet.liquidTemperature': {
    ...temperature,
    symbol: 't₃',
    usual: fahrenheit(75, 120),
    possible: lineSetLimits.liquidTemperature,
  },
  'lineSet.subcooling': { ...difference, symbol: 'Δtᵤ', possible: lineSetLimits.subcooling },
} as const satisfies Record<string, Quantity>;
