/** Which causes of error a test has, how large each is taken, and what it moves. Limits are the half-widths that the texts state. */
import { describe, expect, test } from 'vitest';
import { resultsOf } from '../../src/calc/assess.ts';
import { moistAir, type Test } from '../../src/calc/index.ts';
import { causesOf, close, degree, some, sourcesOf } from './causesOf.ts';
import { wholeTest } from './testCase.ts';

/** W that an unknown blower is taken to draw: 365 W for each 1000 cfm of standard air, 1.2014 kg/m³. */
function assumedPower(): number {
  const { specificVolume } = moistAir({ dryBulb: wholeTest.entering.dryBulb as number, relativeHumidity: 0.5 });
  return (365 * 1.2 * (1 / specificVolume)) / 1.2014;
}
const rating = wholeTest.rating as NonNullable<Test['rating']>;

describe('the causes of error of a test', () => {
  test('with two ordinary probes that nobody checked, in the order of the work', () => {
    expect(causesOf({})).toEqual(
      close([
        ['entering.dryBulb', 0.9 * degree, { 'entering.dryBulb': 1 }],
        ['entering.humidity', 0.03, { 'entering.humidity': 1 }],
        ['leaving.dryBulb', 0.9 * degree, { 'leaving.dryBulb': 1 }],
        ['leaving.humidity', 0.03, { 'leaving.humidity': 1 }],
        ['airflow', 0.07, { airflow: 1 }],
        ['pressure', 1013.25, { pressure: 1 }],
        ['supplyMixing', degree, { supplyMixing: 1 }],
        ['outdoorDryBulb', degree, { outdoorDryBulb: 1 }],
        ['rating.interpolation', 0.005, { rating: 1 }],
        ['blower', 21.5, { 'blower.power': 1 }],
      ]),
    );
    expect(new Set(sourcesOf({}).map(({ shape }) => shape))).toEqual(new Set(['rectangular']));
  });

  test('with limits that were typed has those, and a barometer is surer than a height', () => {
    const otherLimits = { outdoorDryBulb: 0.3, pressure: 50, blowerPower: 7 };
    const names = /^(outdoorDryBulb|pressure|blower)$/;
    expect(some({ otherLimits }, names).map(([, size]) => size)).toEqual(
      [50, 0.3, 7].map((size) => expect.closeTo(size, 9)),
    );
    expect(some({ barometer: 100e3 }, /^pressure$/)).toEqual(close([['pressure', 200, { pressure: 1 }]]));
    const lone = { power: null, place: 'after coil', kind: null } as const;
    expect(some({ blower: lone, otherLimits }, /^blower/)).toEqual(
      close([['blower.assumed', 7, { 'blower.power': 1 }]]),
    );
  });

  test('without an airflow limit takes a tenth, and takes the causes of a method under names of their own', () => {
    expect(some({ airflow: { ...wholeTest.airflow, limit: null } }, /^airflow/)).toEqual(
      close([['airflow', 0.1, { airflow: 1 }]]),
    );
    const grid = { name: 'grid.meter', u: 0.02, shape: 'normal', degreesOfFreedom: 6, moves: { airflow: 1 } } as const;
    const found = sourcesOf({ airflow: { ...wholeTest.airflow, sources: [grid] } }).filter(({ name }) =>
      /^airflow/.test(name),
    );
    expect(found).toEqual([{ ...grid, name: 'airflow.grid.meter' }]);
  });

  test('with a volume of which nobody knows the air has half of what that is worth', () => {
    const { specificVolume } = moistAir({ dryBulb: wholeTest.entering.dryBulb as number, relativeHumidity: 0.5 });
    const [here, standard] = [1 / specificVolume, 1.2014];
    const half = Math.abs(here - standard) / (here + standard);
    const airflow = { ...wholeTest.airflow, kind: 'unsure' } as const;
    expect(some({ airflow }, /kind/)).toEqual(close([['airflow.kind', half, { airflow: 1 }]]));
  });

  test('with several points of the supply plane has what their mean is known to: s/√n, n − 1 degrees of freedom', () => {
    // 13, 14, 16: mean 43/3, squares 14/3, s² = 7/3.
    const mixing = (supplyPoints: readonly number[]) =>
      sourcesOf({ supplyPoints }).find(({ name }) => name === 'supplyMixing');
    expect(mixing([13, 14, 16])).toMatchObject({
      u: expect.closeTo(Math.sqrt(7 / 9), 9),
      shape: 'normal',
      degreesOfFreedom: 2,
    });
    expect(mixing([13, 14])).toMatchObject({
      u: expect.closeTo(0.5, 9),
      degreesOfFreedom: 1,
      moves: { supplyMixing: 1 },
    });
    expect(mixing([13])).toEqual(mixing([]));
  });

  test.each([
    ['this system’s own alone', { power: null }, {}, ['blower.assumed']],
    ['that of the rating alone', {}, { blowerPower: null }, ['blower', 'rating.blower']],
    ['both, of no known kind: in a net table they cancel', { power: null }, { blowerPower: null }, ['blower.assumed']],
    [
      'both, one of a known kind',
      { power: null, kind: 'permanentSplit' },
      { blowerPower: null },
      ['blower.assumed', 'rating.blower'],
    ],
    ['none inside a gross table', { power: null }, { blowerPower: null, basis: 'gross' }, ['blower.assumed']],
    ['nothing', {}, {}, ['blower']],
  ] as const)('with a blower power assumed for %s is as unsure as such a power', (_, own, inside, names) => {
    const change = { blower: { ...wholeTest.blower, ...own }, rating: { ...rating, ...inside } } as Partial<Test>;
    const found = some(change, /blower/i);
    expect(found.map(([name]) => name)).toEqual(names);
    for (const [name, size] of found)
      if (name !== 'blower' && !('kind' in own)) expect(size).toBeCloseTo(0.45 * assumedPower(), 6);
  });

  test('of a table that may be net or gross is out by half of the blower inside it', () => {
    expect(some({ rating: { ...rating, basis: 'unsure' } }, /basis/)).toEqual(
      close([['rating.basis', 150, { 'rating.blowerPower': 1 }]]),
    );
    for (const basis of ['net', 'gross'] as const) expect(some({ rating: { ...rating, basis } }, /basis/)).toEqual([]);
  });

  test('has the bands of the steps of an expectation: of the curve 15 % of its step, of thin air what the outdoor coil may lose', () => {
    const rows = rating.rows.map((row) => ({ ...row, dryAirFlow: 0.6 }));
    const flow = 0.2 * (resultsOfFlow() / 0.6 - 1);
    // A net table of 300 W: the curve acts on the gross capacity, the step is what it makes of the net one.
    const [airflow] = some({ rating: { ...rating, rows } }, /^rating\.airflow$/);
    expect(airflow?.[1]).toBeGreaterThan(0.15 * flow);
    expect(airflow?.[1]).toBeLessThan(0.15 * flow * 1.05);
    expect(airflow?.[2]).toEqual({ rating: 1 });
    // 2 % where the air is 16.8 % thinner.
    const thin = some({ barometer: 0.9 * 101_325, rating: { ...rating, beyond: 'extend' } }, /^rating\.altitude$/);
    expect(thin).toEqual(close([['rating.altitude', (0.02 * 0.1) / 0.168, { rating: 1 }]]));
    const own = { ...rating.multipliers, airflow: [{ dryAirFlow: 0.5, total: 0.97, sensible: null }] };
    expect(some({ rating: { ...rating, multipliers: own, beyond: 'extend' } }, /^rating\.airflow$/)).toEqual([]);
  });
  function resultsOfFlow(): number {
    const { flow } = resultsOf(wholeTest);
    return flow.ok ? flow.value.dryAirFlow : Number.NaN;
  }

  test('without a rating has none of its causes, and has the scatter of the readings as it stands', () => {
    const scatter = [
      { name: 'readings', u: 0.1, shape: 'normal', degreesOfFreedom: 4, moves: { airflow: 1 } },
    ] as const;
    const bare = sourcesOf({ rating: null, scatter });
    expect(bare.map(({ name }) => name).filter((name) => /rating|blower|outdoor/.test(name))).toEqual([]);
    expect(bare.at(-1)).toEqual(scatter[0]);
  });
});
