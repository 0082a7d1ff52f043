/** The curves that stand for a table where there is none: as published, and divided by their own value at the rating point. */
import { coolingCurves, flowFactorOf, fromFahrenheit, temperatureFactor } from '../../src/calc/index.ts';
import type { Check } from './check.ts';
import { asPublished, byFlow, type CurveName, heatPumpRescaled, inputByFlow } from './data/coolingCurveRows.ts';
import { eightSets } from './data/otherModelRows.ts';
import type { NotOurs } from './notOurs.ts';

const factor = (name: CurveName, kind: 'capacity' | 'inputRatio', outdoor: number, wetBulb: number) =>
  temperatureFactor(coolingCurves[name][kind], fromFahrenheit(wetBulb), fromFahrenheit(outdoor));
/** Over its own value at 95/67 °F. */
const scaled = (...[name, kind, outdoor, wetBulb]: Parameters<typeof factor>) =>
  factor(name, kind, outdoor, wetBulb) / factor(name, kind, 95, 67);

const called = { capacity: 'capacity', inputRatio: 'power over capacity' } as const;
/** Curves that are among the eight sets. */
const ofTheEight = ['airConditioner one', 'heatPump one', 'airConditioner low', 'airConditioner high'] as const;
const resdx = 'an open library of residential equipment, which carries the curve divided by its value at 95/67 °F';

export const checks: readonly Check[] = [
  ...asPublished.map(
    ([name, kind, outdoor, wetBulb, expected]): Check => ({
      title: `Curve of ${name} as published: ${called[kind]} at ${outdoor} °F outdoors, ${wetBulb} °F wet bulb`,
      expected,
      tolerance: 5e-5,
      unit: '1',
      source: 'genericCurves',
      known: 'second-hand',
      ours: () => factor(name, kind, outdoor, wetBulb),
    }),
  ),
  ...heatPumpRescaled.map(
    ([kind, outdoor, wetBulb, expected]): Check => ({
      title: `Curve of heatPump one, 1 at 95/67 °F: ${called[kind]} at ${outdoor} °F outdoors, ${wetBulb} °F wet bulb`,
      expected,
      tolerance: 1e-4,
      unit: '1',
      source: resdx,
      known: 'second-hand',
      why: 'the library divided by a value rounded to four places',
      ours: () => scaled('heatPump one', kind, outdoor, wetBulb),
    }),
  ),
  ...byFlow.map(
    ([name, ratio, expected]): Check => ({
      title: `Curve of ${name}: capacity at ${ratio} of the airflow`,
      expected,
      tolerance: 5e-5,
      unit: '1',
      source: 'genericCurves',
      known: 'second-hand',
      ours: () => flowFactorOf(coolingCurves[name].flow, ratio),
    }),
  ),
  ...ofTheEight.flatMap((name) =>
    eightSets.map(
      ([outdoor, wetBulb, expected, farthest]): Check => ({
        title: `Curve of ${name} among eight open sets: capacity at ${outdoor} °F outdoors, ${wetBulb} °F wet bulb`,
        expected,
        tolerance: farthest + 0.0006,
        unit: '1',
        source: 'eight open sets of curves, each divided by its own value at 95/67 °F: mean and largest departure',
        known: 'computed',
        why: 'the sets differ from one another by as much',
        ours: () => scaled(name, 'capacity', outdoor, wetBulb),
      }),
    ),
  ),
];

export const notOurs: readonly NotOurs[] = inputByFlow.map(([name, ratio, expected]) => ({
  what: `Curve of ${name}: power over capacity at ${ratio} of the airflow: ${expected}`,
  source: 'NREL/TP-5500-56354 (2013), as carried by three open building-energy libraries',
  why: 'power is shown at the airflow of the rating only',
}));
