/** What the height above the sea does: the pressure, and through it the mass in a volume of air. */
import {
  expectedCapacity,
  foot,
  ratingTable,
  standardPressure,
  standardPressureAtSeaLevel,
} from '../../src/calc/index.ts';
import type { Check } from './check.ts';
import {
  capacityFactors,
  designGuide,
  designManual,
  lapsedDensities,
  manualFactors,
  pressureRatios,
} from './data/altitudeRows.ts';
import type { NotOurs } from './notOurs.ts';

const ratioAt = (feet: number) => standardPressure(feet * foot) / standardPressureAtSeaLevel;

/** The altitude step of a table at one airflow, the fan moving the volume that the table is for. */
function altitudeFactor(feet: number): number {
  const row = { outdoorDryBulb: 35, enteringWetBulb: 19, dryAirFlow: 0.68, total: 10e3 };
  const table = ratingTable([row], { basis: 'gross', blowerPower: 0 });
  const conditions = { ...row, dryAirFlow: 0.68 * ratioAt(feet) };
  const { derates } = expectedCapacity(table, conditions, { blowerPower: 0, pressure: standardPressure(feet * foot) });
  return derates.find(({ cause }) => cause === 'altitude')?.factor ?? Number.NaN;
}

const atmosphere = 'standard atmosphere of ASHRAE Fundamentals (2009), as carried by an open building-energy library';

export const checks: readonly Check[] = [
  ...pressureRatios.map(
    ([feet, expected]): Check => ({
      title: `Pressure ratio at ${feet} ft`,
      expected,
      tolerance: 0.0002,
      unit: '1',
      source: atmosphere,
      known: 'second-hand',
      ours: () => ratioAt(feet),
    }),
  ),
  ...designGuide.map(
    ([feet, expected]): Check => ({
      title: `Relative density at one temperature at ${feet} ft`,
      expected,
      tolerance: 0.0006,
      unit: '1',
      source: 'Design Guide for HVAC Systems (2006), table 6a',
      known: 'read',
      ours: () => ratioAt(feet),
    }),
  ),
  ...capacityFactors.map(
    ([feet, expected]): Check => ({
      title: `Capacity behind a blower of constant volume at ${feet} ft`,
      expected,
      tolerance: 0.02,
      unit: '1',
      source: 'published flow curve of NREL/TP-5500-56354 read at the pressure ratio',
      known: 'computed',
      why: 'published flow curves differ, and the outdoor coil is not in it',
      ours: () => altitudeFactor(feet),
    }),
  ),
];

const lapsed = 'air indoors is as warm up there as at sea level: its density goes with the pressure alone';

export const notOurs: readonly NotOurs[] = [
  ...lapsedDensities.map(([feet, figure]) => ({
    what: `density ratio of the standard atmosphere at ${feet} ft, colder with the height: ${figure}`,
    source: atmosphere,
    why: lapsed,
  })),
  ...designManual.map(([feet, figure]) => ({
    what: `air density ratio at ${feet} ft: ${figure}`,
    source: 'US Department of Veterans Affairs, HVAC Design Manual, table 1-7',
    why: lapsed,
  })),
  ...manualFactors.map(([feet, figure]) => ({
    what: `altitude correction factor at ${feet} ft: ${figure}`,
    source: 'ACCA Manual J, 8th edition, table 10A, as carried by an open building-energy library',
    why: 'between the two density ratios, for sizing by volume; here the mass is worked out from the pressure',
  })),
];
