/** The working of an expectation: which steps each case has, and that every capacity in it comes from the step before. */
import { describe, expect, test } from 'vitest';
import {
  btuPerHour,
  type ExpectationConditions,
  expectedCapacity,
  fromFahrenheit,
  type Installation,
  noMultipliers,
  type RatingOptions,
  type RatingRow,
  ratingTable,
  type Step,
} from '../../src/calc/index.ts';

const flow = 0.68;
const row = (wetBulb: number, total: number, sensible: number): RatingRow => ({
  outdoorDryBulb: 35,
  enteringWetBulb: fromFahrenheit(wetBulb),
  enteringDryBulb: fromFahrenheit(80),
  dryAirFlow: flow,
  total: total * btuPerHour,
  sensible: sensible * btuPerHour,
});
/** An invented table whose lowest row is dry. */
const rows = [row(57, 32500, 32500), row(62, 32700, 31700), row(67, 35500, 26200)];
const wet: ExpectationConditions = {
  outdoorDryBulb: 35,
  enteringWetBulb: fromFahrenheit(65),
  enteringDryBulb: fromFahrenheit(80),
  dryAirFlow: flow,
};
const dry = { ...wet, enteringWetBulb: fromFahrenheit(58), enteringDryBulb: fromFahrenheit(85) };
const line = { factor: 0.95, low: 0.94, high: 0.96, source: 'suctionLoss' } as const;
const matched = { multipliers: { ...noMultipliers, indoorMatch: 0.97 } };

interface Case {
  readonly conditions?: Partial<ExpectationConditions>;
  readonly installation?: Partial<Installation>;
  readonly options?: Partial<RatingOptions>;
}

function working({ conditions, installation, options }: Case) {
  const steps: Step[] = [];
  const table = ratingTable(rows, { basis: 'net', blowerPower: 300, ...options });
  const found = expectedCapacity(table, { ...wet, ...conditions }, { blowerPower: 430, ...installation }, (step) =>
    steps.push(step),
  );
  return { steps, found };
}

const read = ['rated.share.enteringWetBulb', 'rated.total'];
const ends = ['expectation.gross', 'expectation.net'];
const thin = { installation: { pressure: 85e3 } };

const cases: readonly (readonly [string, Case, readonly string[]])[] = [
  ['at the airflow of the table', {}, [...read, ...ends]],
  ['of another indoor unit', { options: matched }, [...read, 'expectation.indoorMatch', ...ends]],
  [
    'at another airflow',
    { conditions: { dryAirFlow: 0.6 } },
    [...read, 'expectation.flowRatio', 'expectation.airflow', ...ends],
  ],
  [
    'behind a line set',
    { installation: { lineSet: line } },
    [...read, 'expectation.gross', 'expectation.lineSet', 'expectation.net'],
  ],
  [
    'in thin air, for a volume that the table would call 0.81 kg/s',
    thin,
    [
      'expectation.seaLevelFlow',
      ...read,
      'expectation.flowRatio',
      'expectation.airflow',
      'expectation.gross',
      'expectation.altitude',
      'expectation.net',
    ],
  ],
  [
    'of all at once',
    { options: matched, installation: { ...thin.installation, lineSet: line } },
    [
      'expectation.seaLevelFlow',
      ...read,
      'expectation.indoorMatch',
      'expectation.flowRatio',
      'expectation.airflow',
      'expectation.gross',
      'expectation.lineSet',
      'expectation.altitude',
      'expectation.net',
    ],
  ],
  [
    'with a dry coil',
    { conditions: dry },
    [...read, 'dryOut.surface', 'dryOut.wetBulb', 'expectation.dryCoil', ...ends],
  ],
  [
    'with a dry coil of another indoor unit',
    { conditions: dry, options: matched },
    [...read, 'dryOut.surface', 'dryOut.wetBulb', 'expectation.dryCoil', 'expectation.indoorMatch', ...ends],
  ],
  [
    'with a dry coil, at the airflow that the table states because none is known here',
    { conditions: { ...dry, dryAirFlow: undefined } },
    [...read, 'dryOut.surface', 'dryOut.wetBulb', 'expectation.dryCoil', ...ends],
  ],
];

describe.each(cases)('the working %s', (_, one, ids) => {
  test('has the steps that apply, and no other', () => {
    expect(working(one).steps.map(({ id }) => id)).toEqual(ids);
  });

  test('takes every capacity from the step that gave it, and ends in the answer', () => {
    const { steps, found } = working(one);
    const known = new Map<string, number>();
    for (const { id, puts, gives } of steps) {
      for (const { symbol, value } of puts) {
        // Printed corners have two figures, Q₁₁ and so on; a change has its Δ; the capacity of a dry coil is that of the whole chain.
        if (!/^Q[₀-₆]?$/.test(symbol) || id === 'rated.total' || id === 'dryOut.surface') continue;
        expect([id, symbol, value]).toEqual([id, symbol, known.get(symbol)]);
      }
      known.set(gives.symbol, gives.value);
    }
    expect(known.get('Q₆')).toBe(found.total);
  });
});

test('the volume is shown as the mass that it would hold at sea level', () => {
  const [first] = working(thin).steps;
  expect(first?.gives.value).toBeCloseTo((flow * 101_325) / 85e3, 12);
});
