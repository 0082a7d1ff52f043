/** Every calculation on tables and records, with arguments by chance. */
import * as calc from '../../src/calc/index.ts';
import { rows as soundRows, wholeTest } from '../calc/testCase.ts';
import type { Chance } from './chance.ts';

type Call = (c: Chance) => unknown;

const orNull = (c: Chance, value: () => number) => (c.next() < 0.1 ? null : value());

/** A grid of a few rows and columns, now and then with a hole, a slip or a line of it missing. */
function ratingRows(c: Chance): readonly calc.RatingRow[] {
  const isSound = c.next() < 0.7;
  const outdoors = isSound ? [20, 30, 40, 50] : c.list(1 + Math.floor(c.next() * 4), () => c.inRange(15, 50));
  const wetBulbs = isSound ? [10, 15, 20, 25] : c.list(1 + Math.floor(c.next() * 4), () => c.inRange(10, 25));
  const dryBulbs = c.next() < 0.5 ? [undefined] : isSound ? [20, 26, 32] : c.list(2, () => c.inRange(20, 32));
  const rows = outdoors.flatMap((outdoorDryBulb) =>
    wetBulbs.flatMap((enteringWetBulb) =>
      dryBulbs.map((enteringDryBulb) => ({
        outdoorDryBulb,
        enteringWetBulb,
        ...(enteringDryBulb === undefined ? {} : { enteringDryBulb }),
        total: orNull(c, () => c.inRange(5e3, 15e3)),
        sensible: orNull(c, () => c.inRange(2e3, 12e3)),
      })),
    ),
  );
  return c.next() < 0.95 ? rows : rows.slice(1);
}

const options = (c: Chance): calc.RatingOptions => ({
  basis: c.oneOf(['net', 'gross'] as const),
  blowerPower: c.inRange(0, 800),
});
const conditions = (c: Chance) => ({
  outdoorDryBulb: c.inRange(15, 50),
  enteringWetBulb: c.inRange(10, 25),
  enteringDryBulb: c.inRange(20, 32),
  dryAirFlow: c.inRange(0.3, 1.2),
});

function someTest(c: Chance): calc.Test {
  const reading = () => ({
    dryBulb: orNull(c, () => c.inRange(5, 35)),
    relativeHumidity: orNull(c, () => c.inRange(0.1, 1)),
    wetBulb: null,
  });
  return {
    ...wholeTest,
    entering: c.next() < 0.6 ? wholeTest.entering : reading(),
    leaving: c.next() < 0.6 ? wholeTest.leaving : reading(),
    airflow: {
      ...wholeTest.airflow,
      volumeFlow: orNull(c, () => c.inRange(0.2, 1)),
      limit: orNull(c, () => c.inRange(0, 0.5)),
    },
    altitude: orNull(c, () => c.inRange(-100, 3000)),
    outdoorDryBulb: orNull(c, () => c.inRange(20, 45)),
    rating:
      c.next() < 0.1
        ? null
        : {
            ...(wholeTest.rating as NonNullable<calc.Test['rating']>),
            rows: c.next() < 0.7 ? soundRows : ratingRows(c),
          },
    line: c.inRange(0.7, 1),
    probeLimits: { dryBulb: c.inRange(0, 2), relativeHumidity: c.inRange(0, 0.1), wetBulb: c.inRange(0, 2) },
    supplyPoints: c.next() < 0.5 ? [] : c.list(4, () => c.inRange(10, 16)),
  };
}

function someLog(c: Chance): calc.Log {
  const length = Math.floor(c.next() * 400);
  let time = 0;
  const column = (low: number, high: number) => c.list(length, () => c.inRange(low, high));
  return {
    time: c.list(length, () => {
      time += c.next() < 0.97 ? 10 : c.inRange(-1000, 5000);
      return time;
    }),
    columns: {
      'entering.dryBulb': column(23, 25),
      'entering.humidity': column(0.48, 0.52),
      'leaving.dryBulb': column(12, 14),
      'leaving.humidity': column(0.85, 0.95),
      ...(c.next() < 0.5 ? {} : { outdoorDryBulb: column(33, 34) }),
    },
    measure: 'relativeHumidity',
    startedAt: orNull(c, () => c.inRange(0, 1000)),
  };
}

function probeLog(c: Chance): calc.ProbeLog {
  const length = 1 + Math.floor(c.next() * 60);
  return {
    time: Array.from({ length }, (_, i) => 30 * i),
    dryBulb: Array.from({ length }, (_, i) => 20 + 5 * Math.sin(i / 5) + c.inRange(-0.1, 0.1)),
    humidity: c.list(length, () => orNull(c, () => c.inRange(0.4, 0.6))),
  };
}

const cells = (c: Chance, length: number) => c.list(length, () => orNull(c, () => c.inRange(0.5, 8)));
const air = (c: Chance): calc.AirThere => ({ specificVolume: c.inRange(0.7, 1.2), density: c.inRange(0.8, 1.4) });

export const tablesAndLogs: Readonly<Record<string, Call>> = {
  rated: (c) =>
    calc.rated(calc.ratingTable(ratingRows(c), options(c)), conditions(c), {
      beyond: c.oneOf(['refuse', 'extend'] as const),
    }),
  tableRemarks: (c) => calc.tableRemarks(calc.ratingTable(ratingRows(c), options(c))),
  expectedCapacity: (c) =>
    calc.expectedCapacity(calc.ratingTable(ratingRows(c), options(c)), conditions(c), {
      pressure: c.inRange(70e3, 102e3),
      blowerPower: c.inRange(0, 1000),
    }),
  expectedTotal: (c) =>
    calc.expectedTotal(calc.ratingTable(ratingRows(c), options(c)), conditions(c), {
      pressure: c.inRange(70e3, 102e3),
      blowerPower: c.inRange(0, 1000),
    }),
  genericRating: (c) =>
    calc.genericRating({
      ...options(c),
      total: c.inRange(1000, 30e3),
      unit: c.oneOf(['airConditioner', 'heatPump'] as const),
      stage: c.oneOf(['one', 'low', 'high', 'variable'] as const),
      ...(c.next() < 0.5 ? {} : { dryAirFlow: c.inRange(0.1, 3) }),
      ...(c.next() < 0.5 ? {} : { sensibleHeatRatio: c.inRange(0.4, 1) }),
    }),
  assess: (c) => calc.assess(someTest(c)),
  explanations: (c) => calc.explanations(calc.assess(someTest(c))),
  simulateAssessment: (c) => calc.simulateAssessment(someTest(c), { draws: 200, seed: 1 }),
  compareProbes: (c) =>
    calc.compareProbes(
      c.list(Math.floor(c.next() * 30), () => ({
        time: c.inRange(0, 1000),
        entering: { dryBulb: c.inRange(20, 25), humidity: orNull(c, () => c.inRange(0.4, 0.6)) },
        leaving: { dryBulb: c.inRange(20, 25), humidity: orNull(c, () => c.inRange(0.4, 0.6)) },
      })),
      { measure: 'relativeHumidity' },
    ),
  alignClocks: (c) => calc.alignClocks(probeLog(c), probeLog(c)),
  pairLogs: (c) => calc.pairLogs(probeLog(c), probeLog(c), { shift: c.inRange(-300, 300), apart: c.inRange(0, 60) }),
  steady: (c) => calc.steady(someLog(c)),
  airflowFromTraverse: (c) =>
    calc.airflowFromTraverse({
      section: { shape: 'rectangular', width: c.inRange(0.1, 1), height: c.inRange(0.1, 1), lines: 5, points: 5 },
      instrument: c.oneOf(['pitot', 'vane', 'thermal', 'thermalActual'] as const),
      readings: c.list(5, () => cells(c, 5)),
      air: air(c),
      straight: c.next() < 0.3 ? null : { length: c.inRange(0, 10), after: c.oneOf(['fan', 'other'] as const) },
    } as Parameters<typeof calc.airflowFromTraverse>[0]),
  airflowFromFlowGrid: (c) =>
    calc.airflowFromFlowGrid({
      plates: cells(c, 4).map((one) => (one === null ? null : one / 10)),
      shownAs: c.oneOf(['actual', 'standard', 'uncorrected'] as const),
      pressureNormal: c.inRange(1, 200),
      pressureWithGrid: c.inRange(1, 200),
      air: air(c),
    }),
  airflowFromHood: (c) =>
    calc.airflowFromHood({
      returns: cells(c, 3).map((one) => (one === null ? null : one / 10)),
      hood: 'plain',
      shownAs: c.oneOf(['actual', 'standard', 'uncorrected'] as const),
      covers: c.next() < 0.5,
      ductsTight: c.next() < 0.5,
      air: air(c),
    }),
  airflowFromGrille: (c) =>
    calc.airflowFromGrille({
      grilles: c.list(2, () => ({
        readings: cells(c, 9),
        width: c.inRange(0.1, 1),
        height: c.inRange(0.1, 1),
        areaFactor: c.inRange(0.5, 1),
      })),
      factorFrom: 'guess',
      air: air(c),
    }),
};
