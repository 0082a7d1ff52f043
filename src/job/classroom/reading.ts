/** Exercises on reading: between the rows of a rating table, and over a traverse. */
import { airflowFromTraverse } from '../../calc/airflow/traverse.ts';
import { expectedCapacity } from '../../calc/expectation.ts';
import { ratingTable } from '../../calc/ratingTable.ts';
import type { Step } from '../../calc/types.ts';
import { btuPerHour, footPerMinute, fromFahrenheit, inch } from '../../calc/units.ts';
import type { Draw } from './draw.ts';
import type { Exercise } from './types.ts';

/** Capacity between two outdoor columns and two wet-bulb rows of an invented table. */
export function interpolationExercise(draw: Draw): Exercise {
  const tons = draw.step(2, 5, 0.5);
  const outdoors = [85, 95].map(fromFahrenheit);
  const wetBulbs = [62, 67].map(fromFahrenheit);
  const hundreds = (btuh: number) => 100 * Math.round(btuh / 100) * btuPerHour;
  const base = tons * 12_000 * draw.step(0.94, 1.01, 0.01);
  // A step of the outdoor column costs about 5 %, one of the wet bulb about 9 %.
  const totals = [
    [base * 0.97, base * 1.055],
    [base * 0.92, base],
  ].map((column) => column.map(hundreds));
  const table = ratingTable(
    outdoors.flatMap((outdoorDryBulb, column) =>
      wetBulbs.map((enteringWetBulb, row) => ({ outdoorDryBulb, enteringWetBulb, total: totals[column]![row]! })),
    ),
    { basis: 'gross', blowerPower: 0 },
  );
  const outdoor = fromFahrenheit(draw.step(86, 94, 1));
  const wetBulb = fromFahrenheit(draw.step(62.5, 66.5, 0.5));
  const steps: Step[] = [];
  const { total } = expectedCapacity(
    table,
    { outdoorDryBulb: outdoor, enteringWetBulb: wetBulb },
    { blowerPower: 0 },
    (step) => steps.push(step),
  );
  return {
    kind: 'interpolation',
    given: [
      { name: 'outdoors', kind: 'temperature', value: outdoor },
      { name: 'returnWetBulb', kind: 'temperature', value: wetBulb },
    ],
    grid: {
      name: 'rating',
      columns: outdoors,
      rows: wetBulbs.map((head, row) => ({ head, cells: totals.map((column) => column[row]!) })),
    },
    answers: [{ name: 'total', kind: 'power', value: total }],
    verdict: null,
    steps: steps.filter(({ id }) => id.startsWith('rated')),
  };
}

/** Airflow of a rectangular duct from the velocities of a vane in 25 places, faster in the middle and scattered. */
export function traverseExercise(draw: Draw): Exercise {
  const width = draw.step(14, 24, 1) * inch;
  const height = draw.step(10, 18, 1) * inch;
  const mean = draw.step(550, 850, 10);
  const shape = [0.86, 1.02, 1.08, 1.02, 0.86];
  const rows = shape.map((across) =>
    shape.map((along) => 5 * Math.round((mean * across * along * (1 + 0.02 * draw.scatter())) / 5) * footPerMinute),
  );
  const steps: Step[] = [];
  const found = airflowFromTraverse(
    {
      section: { shape: 'rectangular', width, height, lines: 5, points: 5 },
      instrument: 'vane',
      readings: rows,
      air: { density: 1.2, specificVolume: 0.84 },
      straight: null,
    },
    (step) => steps.push(step),
  );
  const places = shape.map((_, index) => index + 1);
  return {
    kind: 'traverse',
    given: [
      { name: 'ductWidth', kind: 'diameter', value: width },
      { name: 'ductHeight', kind: 'diameter', value: height },
    ],
    grid: {
      name: 'velocities',
      columns: places,
      rows: rows.map((cells, index) => ({ head: index + 1, cells })),
    },
    answers: [
      { name: 'meanVelocity', kind: 'velocity', value: found.volumeFlow / (width * height) },
      { name: 'airflow', kind: 'volumeFlow', value: found.volumeFlow },
    ],
    verdict: null,
    steps: steps.filter(({ id }) => /^airflow\.(meanVelocity|flow)$/.test(id)),
  };
}
