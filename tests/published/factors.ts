/** The factors by which trade and handbook turn a volume flow of standard air into heat. */
import {
  btu,
  cubicFootPerMinute,
  fahrenheitDegree,
  heatDryAir,
  heatVapor,
  heatWater,
  hour,
  pound,
  standardAirDensity,
  standardPressure,
  vaporEnthalpy,
} from '../../src/calc/index.ts';
import type { Check } from './check.ts';

const density = 'standard air is 1.2 kg/m³ in the book and 1.2014 here, and c_pv 1.84 there and 1.86 here';

/** W per m³/s and K, at humidity ratio W. */
const sensible = (W: number) => standardAirDensity * (heatDryAir + W * heatVapor);
/** W per m³/s and kg/kg: vapour at 24 °C less water at 10 °C. */
const latent = standardAirDensity * (vaporEnthalpy + heatVapor * 24 - heatWater * 10);
/** kg/s of dry air in a volume flow of standard air, W in Btu/h. */
const poundsPerHour = (standardAirDensity * cubicFootPerMinute * hour) / pound;
const btuPerHourFahrenheit = (W: number) => (sensible(W) * cubicFootPerMinute * fahrenheitDegree * hour) / btu;
const btuPerHourWater = (latent * cubicFootPerMinute * hour) / btu;

type Figure = readonly [
  title: string,
  expected: number,
  tolerance: number,
  unit: string,
  ours: () => number,
  why?: string,
];

const handbook: readonly Figure[] = [
  ['Total heat factor of standard air', 1.2, 0.05, 'kW/(m³/s) per kJ/kg', () => standardAirDensity],
  ['Sensible heat factor of standard air', 1.23, 0.005, 'kW/(m³/s) per K', () => sensible(0.01) / 1000],
  ['Latent heat factor of standard air', 3010, 5, 'kW/(m³/s) per kg/kg', () => latent / 1000],
  ['Sensible heat factor at W 0', 1.21, 0.005, 'kW/(m³/s) per K', () => sensible(0) / 1000],
  ['Sensible heat factor at W 0.01', 1.23, 0.005, 'kW/(m³/s) per K', () => sensible(0.01) / 1000],
  ['Sensible heat factor at W 0.02', 1.25, 0.005, 'kW/(m³/s) per K', () => sensible(0.02) / 1000],
  ['Sensible heat factor at W 0.03', 1.27, 0.007, 'kW/(m³/s) per K', () => sensible(0.03) / 1000, density],
  ...[
    { altitude: 1194, total: 1.04, sensible: 1.07, latent: 2608 },
    { altitude: 1619, total: 0.99, sensible: 1.01, latent: 2475 },
  ].flatMap(({ altitude, ...expected }): Figure[] => {
    const share = () => standardPressure(altitude) / standardPressure(0);
    return [
      [`Total heat factor at ${altitude} m`, expected.total, 0.005, 'kW/(m³/s) per kJ/kg', () => 1.2 * share()],
      [`Sensible heat factor at ${altitude} m`, expected.sensible, 0.005, 'kW/(m³/s) per K', () => 1.23 * share()],
      [`Latent heat factor at ${altitude} m`, expected.latent, 1, 'kW/(m³/s) per kg/kg', () => 3010 * share()],
    ];
  }),
];

const trade: readonly Figure[] = [
  ['4.5: pounds of air an hour in a cfm', 4.5, 0.0005, 'lb·min/(h·ft³)', () => poundsPerHour, density],
  [
    '1.08: sensible heat of a cfm of dry air',
    1.08,
    0.002,
    'Btu·min/(h·ft³·°F)',
    () => btuPerHourFahrenheit(0),
    density,
  ],
  ['1.10: the same at W 0.01', 1.10025, 0.002, 'Btu·min/(h·ft³·°F)', () => btuPerHourFahrenheit(0.01), density],
  ['4840: latent heat of a cfm', 4842, 5, 'Btu·min/(h·ft³)', () => btuPerHourWater, density],
  ['0.69: the same for a grain', 0.6914, 0.001, 'Btu·min/(h·ft³·gr/lb)', () => btuPerHourWater / 7000, density],
];

const toCheck =
  (source: Check['source'], known: Check['known']) =>
  ([title, expected, tolerance, unit, ours, why]: Figure): Check => ({
    title,
    expected,
    tolerance,
    unit,
    source,
    known,
    ...(why === undefined ? {} : { why }),
    ours,
  });

export const checks: readonly Check[] = [
  ...handbook.map(toCheck('handbookLoads', 'read')),
  ...trade.map(toCheck('commonPractice', 'memory, recomputed')),
];
