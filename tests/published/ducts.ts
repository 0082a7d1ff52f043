/** What ducts in an attic take from the cooling: worked examples of ASHRAE 152, and attic temperatures. */
import {
  atticTemperatures,
  btuPerHour,
  btuPerPound,
  ductGain,
  fahrenheitDegree,
  foot,
  fromFahrenheit,
  poundPerHour,
  toFahrenheit,
} from '../../src/calc/index.ts';
import type { Check } from './check.ts';

const source = 'ASHRAE 152, equation 6-25, worked out from an open building-energy library';

/** 300 and 100 ft² of duct, 1200 cfm, 34 000 Btu/h; attic at 130 °F and 46.86 Btu/lb, room at 75 °F and 28.07, supply at 56 °F. */
function example(insulation: number, leakage: number) {
  const resistance = (insulation * foot ** 2 * fahrenheitDegree) / btuPerHour;
  const around = { dryBulb: fromFahrenheit(130), enthalpy: 46.86 * btuPerPound };
  const run = (area: number) => ({ area: area * foot ** 2, resistance, leakage, around });
  return ductGain({
    supply: run(300),
    return: run(100),
    dryAirFlow: 1200 * 60 * 0.075 * poundPerHour,
    total: 34000 * btuPerHour,
    supplyDryBulb: fromFahrenheit(56),
    room: { dryBulb: fromFahrenheit(75), enthalpy: 28.07 * btuPerPound },
  });
}

/** Insulation in ft²·h·°F/Btu, leakage of each side: what is left of a difference after supply and return, effectiveness. */
const examples = [
  [6, 0, 0.96215, 0.98722, 0.8665],
  [8, 0, 0.97148, 0.9904, 0.8994],
  [6, 0.05, 0.96215, 0.98722, 0.6826],
  [6, 0.1, 0.96215, 0.98722, 0.514],
] as const;

const attics = [
  ['ventedDarkShingle', 130],
  ['ventedLightShingle', 120],
  ['ventedDarkShingleRadiantBarrier', 120],
  ['ventedLightShingleRadiantBarrier', 110],
  ['darkClayTile', 110],
  ['reflectiveMetal', 95],
  ['unvented', 150],
  ['unventedRadiantBarrier', 130],
] as const;

export const checks: readonly Check[] = [
  ...examples.flatMap(([insulation, leakage, supply, back, effectiveness]): Check[] => {
    const figure = (name: string, expected: number, tolerance: number, ours: () => number): Check => ({
      title: `Ducts of R-${insulation}, ${leakage * 100} % leaks a side: ${name}`,
      expected,
      tolerance,
      unit: '1',
      source,
      known: 'second-hand',
      ours,
    });
    return [
      figure('left after the supply', supply, 1e-4, () => example(insulation, leakage).supplyLeft),
      figure('left after the return', back, 1e-4, () => example(insulation, leakage).returnLeft),
      figure('effectiveness', effectiveness, 0.001, () => example(insulation, leakage).effectiveness),
    ];
  }),
  ...attics.map(
    ([name, expected]): Check => ({
      title: `Attic at cooling design conditions: ${name}`,
      expected,
      tolerance: 1e-9,
      unit: '°F',
      source: 'atticTemperatures',
      known: 'second-hand',
      ours: () => toFahrenheit(atticTemperatures[name]),
    }),
  ),
];
