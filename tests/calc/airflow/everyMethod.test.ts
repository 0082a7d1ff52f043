import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type AirflowFound,
  type AirflowMethod,
  airflowFromFanTable,
  airflowFromFlowGrid,
  airflowFromGrille,
  airflowFromHood,
  airflowFromPressureMatch,
  airflowFromReadout,
  airflowFromTemperatureRise,
  airflowFromTraverse,
  CalcError,
  dryAirFlow,
  type Step,
  sources,
  type Trace,
} from '../../../src/calc/index.ts';
import { airflowSteps } from '../../../src/words/en/airflowWorking.ts';
import { equationSides } from '../equationValue.ts';
import { fanTable } from './support.ts';

/** A sound figure, or in its place one of those that may do harm. */
type Take = (sound: number) => number;
type Cells = readonly (number | null)[];

const air = (take: Take) => ({ specificVolume: take(0.85), density: take(1.18) });

const methods: Readonly<Record<AirflowMethod, (take: Take, cells: Cells, t: Trace) => AirflowFound>> = {
  readout: (take, _, t) =>
    airflowFromReadout(
      { volumeFlow: take(0.5), shows: 'sensed', ways: ['standard', { specificVolume: take(0.85) }] },
      t,
    ),
  fanTable: (take, _, t) =>
    airflowFromFanTable(
      {
        table: fanTable,
        column: 0,
        motor: 'unsure',
        supplyStatic: take(50),
        returnStatic: take(-40),
        pressure: take(95e3),
        air: air(take),
      },
      t,
    ),
  traverse: (take, cells, t) =>
    airflowFromTraverse(
      {
        section: { shape: 'rectangular', width: take(0.5), height: take(0.4), lines: 5, points: 5 },
        instrument: 'pitot',
        readings: Array.from({ length: 5 }, () => cells),
        air: air(take),
        straight: { length: take(3), after: 'fan' },
      },
      t,
    ),
  temperatureRise: (take, _, t) =>
    airflowFromTemperatureRise(
      {
        heat: { kind: 'electric', phases: 3, voltage: take(208), current: take(40), powerFactor: take(1) },
        blower: { power: take(400) },
        enteringDryBulb: take(21),
        leavingDryBulb: take(40),
        humidityRatio: take(0.008),
        probes: 'one',
        probeLimit: take(0.5),
        speed: 'cooling',
      },
      t,
    ),
  flowGrid: (take, cells, t) =>
    airflowFromFlowGrid(
      { plates: cells, shownAs: 'uncorrected', pressureNormal: take(60), pressureWithGrid: take(48), air: air(take) },
      t,
    ),
  pressureMatch: (take, _, t) =>
    airflowFromPressureMatch(
      {
        fanFlow: take(0.5),
        shownAs: 'uncorrected',
        pressureNormal: take(60),
        pressureReached: take(48),
        air: air(take),
      },
      t,
    ),
  hood: (take, cells, t) =>
    airflowFromHood(
      { returns: cells, hood: 'plain', shownAs: 'uncorrected', covers: false, ductsTight: false, air: air(take) },
      t,
    ),
  grille: (take, cells, t) =>
    airflowFromGrille(
      {
        grilles: [{ readings: cells, width: take(0.6), height: take(0.5), areaFactor: take(0.7) }],
        factorFrom: 'guess',
        air: air(take),
      },
      t,
    ),
};

/** Every number in a value, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

const harm = fc.oneof(
  fc.double({ min: -100, max: 1000, noNaN: true }),
  fc.double(),
  fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e-300, 1e300),
);
const orSound = fc.oneof({ weight: 6, arbitrary: fc.constant(null) }, harm);
const cell = fc.oneof({ weight: 4, arbitrary: fc.double({ min: 0.1, max: 20, noNaN: true }) }, fc.constant(null), harm);

describe.each(Object.entries(methods))('%s', (name, method) => {
  test('gives finite figures or throws a CalcError, whatever is put in', () => {
    const takes = fc.array(orSound, { minLength: 8, maxLength: 8 });
    const cells = fc.array(cell, { minLength: 5, maxLength: 5 });
    let answers = 0;
    fc.assert(
      fc.property(takes, cells, (taken, line) => {
        const steps: Step[] = [];
        let next = 0;
        try {
          const answer = method(
            (sound) => taken[next++] ?? sound,
            line,
            (step) => steps.push(step),
          );
          answers++;
          expect(numbersIn([answer, steps]).filter((value) => !Number.isFinite(value))).toEqual([]);
          expect([answer.method, answer.volumeFlow > 0]).toEqual([name, true]);
          expect(answer.dryAirFlow).toBe(dryAirFlow(answer));
          const reached = answer.sources.map(({ u, moves }) => u * (moves.airflow ?? 0));
          expect(Math.abs(Math.hypot(...reached) - answer.u)).toBeLessThanOrEqual(1e-12 * answer.u);
          expect(
            [...answer.sources.map(({ basis }) => basis), ...steps.map(({ source }) => source)].every(
              (key) => key in sources,
            ),
          ).toBe(true);
          expect(structuredClone(answer)).toEqual(answer);
          const nameless = steps.filter(({ id }) => !id.startsWith('dryAirFlow.') && airflowSteps[id] === undefined);
          expect(nameless).toEqual([]);
        } catch (error) {
          if (!(error instanceof CalcError)) throw error;
        }
      }),
      { numRuns: 250 },
    );
    expect(answers).toBeGreaterThan(0);
  });

  const steady = [3.1, 3.4, 2.9, 3.3, 3.2];

  test('takes no figure that is a million million times too large, and none that is as much below nothing', () => {
    let figures = 0;
    method(
      (sound) => {
        figures++;
        return sound;
      },
      steady,
      () => {},
    );
    for (let changed = 0; changed < figures; changed++) {
      for (const wrong of [1e12, -1e12]) {
        let next = 0;
        let sound = Number.NaN;
        const taken = () =>
          method(
            (usual) => {
              if (next++ !== changed) return usual;
              sound = usual;
              return wrong;
            },
            steady,
            () => {},
          );
        const refused = () => {
          try {
            return taken().problems;
          } catch (error) {
            if (error instanceof CalcError) return [error];
            throw error;
          }
        };
        expect(refused(), `${wrong} in place of ${sound}`).not.toHaveLength(0);
      }
    }
  });

  test('shows equations that come to what it says, whatever the figures', () => {
    let worked = 0;
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.85, max: 1.1, noNaN: true }), { minLength: 8, maxLength: 8 }),
        (shares) => {
          const steps: Step[] = [];
          let next = 0;
          try {
            method(
              (sound) => sound * shares[next++ % shares.length]!,
              steady,
              (step) => steps.push(step),
            );
          } catch (error) {
            // Shares may make a pressure of return that is more than that of supply, and the like.
            if (!(error instanceof CalcError)) throw error;
          }
          for (const step of steps) {
            const sides = equationSides(step);
            if (sides === null) continue;
            worked++;
            const [left, right] = sides;
            expect(Math.abs(left - right), step.id).toBeLessThanOrEqual(1e-7 * Math.abs(left));
          }
        },
      ),
      { numRuns: 20 },
    );
    expect(worked).toBeGreaterThan(0);
  });
});
