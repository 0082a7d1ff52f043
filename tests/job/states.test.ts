import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { moistAir, saturationHumidityRatio } from '../../src/calc/index.ts';
import { applyEdits, emptyJob } from '../../src/job/edit.ts';
import { addReading } from '../../src/job/readings.ts';
import { readJob } from '../../src/job/schema.ts';
import { addState, giveAs, isMovable, moveJobAir, moveState, removeState, setState } from '../../src/job/stateEdits.ts';
import { humidityMeasures, jobAir, namedStates } from '../../src/job/states.ts';
import type { Job } from '../../src/job/types.ts';
import { fromSi, toSi } from '../../src/job/units.ts';
import { chartWith } from './charts.ts';
import { jobWith } from './jobs.ts';

const airOf = (job: Job, index = 0) => {
  const air = namedStates(job)[index]?.air;
  if (!air?.ok) throw new Error(JSON.stringify(air));
  return air.value;
};

describe('a named state', () => {
  /** ASHRAE Fundamentals ch. 1 (2021), table 2 and example 1; known: read. Dry bulb °C, the text of its measure, W in g/kg. */
  const given = [
    ['40', 'wetBulb', '20', 6.45, 0.06],
    ['20', 'relativeHumidity', '100', 14.76, 0.01],
    ['30', 'dewPoint', '20', 14.76, 0.01],
    ['25', 'humidityRatio', '9.88', 9.88, 1e-9],
  ] as const;

  it.each(given)('at %s °C with %s %s has the water that the handbook gives', (dryBulb, measure, text, grams, near) => {
    const air = airOf(chartWith([{ dryBulb, [measure]: text }], [], 'si'));
    expect(Math.abs(air.humidityRatio * 1000 - grams)).toBeLessThanOrEqual(near);
  });

  it('keeps its texts as they were typed, nonsense too, and says what is wrong', () => {
    const [state] = namedStates(chartWith([{ name: 'Hot', dryBulb: 'warm', relativeHumidity: '50' }]));
    expect(state).toMatchObject({ key: 'a', name: 'Hot', dryBulb: { text: 'warm', unit: 'degF' } });
    expect(state?.air).toMatchObject({ ok: false, problem: { code: 'notANumber', quantity: 'dryBulb' } });
  });

  it('waits for what is not typed', () => {
    expect(namedStates(chartWith([{}]))[0]?.air).toEqual({
      ok: false,
      waiting: ['dryBulb', 'humidity'],
      problem: null,
    });
    expect(namedStates(chartWith([{ dryBulb: '75' }]))[0]?.air).toMatchObject({ waiting: ['humidity'] });
  });

  it.each([
    [{ dryBulb: '75', wetBulb: '80' }, 'wetBulbAboveDryBulb'],
    [{ dryBulb: '75', dewPoint: '76' }, 'dewPointAboveDryBulb'],
    [{ dryBulb: '50', humidityRatio: '100' }, 'aboveSaturation'],
    [{ dryBulb: '75', relativeHumidity: '101' }, 'above'],
    [{ dryBulb: '300', relativeHumidity: '50' }, 'above'],
    [{ dryBulb: '75', relativeHumidity: '50', wetBulb: '60' }, 'twoHumidities'],
  ])('%j is air that cannot be: %s', (texts, code) => {
    expect(namedStates(chartWith([texts]))[0]?.air).toMatchObject({ ok: false, problem: { code } });
  });

  it('is worked out at the pressure of the job', () => {
    const high = jobWith({ altitude: ['1600', 'm'] });
    const job = chartWith([{ dryBulb: '20', relativeHumidity: '100' }], [], 'si', high);
    // Standard atmosphere, ASHRAE Fundamentals ch. 1, eq. 3; known: read.
    const pressure = 101325 * (1 - 2.25577e-5 * 1600) ** 5.2559;
    expect(airOf(job).pressure).toBeCloseTo(pressure, 0);
    expect(airOf(job).humidityRatio).toBeGreaterThan(0.0147 * (101325 / pressure));
  });

  it('may be typed in the unit of the other system, and means the same', () => {
    const job = chartWith([{ dryBulb: '75', relativeHumidity: '50' }]);
    const typed = applyEdits(job, setState(job, 'a', { dryBulb: '24' }, 'si'));
    expect(airOf(typed).dryBulb).toBeCloseTo(24, 9);
    expect(typed.tables.states?.rows[0]).toContain('24 °C');
  });
});

test('eight states have room, a ninth does not, and the schema holds that number', () => {
  const eight = chartWith(Array(9).fill({ dryBulb: '75', relativeHumidity: '50' }));
  expect(namedStates(eight).map(({ key }) => key)).toEqual(['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h']);
  expect(addState(eight, 'ip')).toEqual([]);
  expect(readJob(eight).ok).toBe(true);
  const { columns, rows } = eight.tables.states!;
  const nine = { ...eight, tables: { states: { columns, rows: [...rows, rows[0]!] } } };
  expect(readJob(nine)).toEqual({ ok: false, reason: 'broken' });
});

test('a state that goes leaves its key free, and its name goes out of the processes', () => {
  const job = chartWith(
    [
      { dryBulb: '75', relativeHumidity: '50' },
      { dryBulb: '56', relativeHumidity: '90' },
    ],
    [{ kind: 'drying', from: 'a', to: 'b', airflow: '1000' }],
  );
  const less = applyEdits(job, removeState(job, 'a'));
  expect(namedStates(less).map(({ key }) => key)).toEqual(['b']);
  expect(less.tables.processes?.rows[0]).toEqual(['p1', 'drying', '', '', 'b', '', '1000', '']);
  expect(namedStates(applyEdits(less, addState(less, 'ip'))).map(({ key }) => key)).toEqual(['b', 'a']);
  expect(applyEdits(less, removeState(less, 'b')).tables.states).toBeUndefined();
});

test('rows without a key, or with one that stands there already, are no states', () => {
  const job = chartWith([{ dryBulb: '75', relativeHumidity: '50' }]);
  const { columns, rows } = job.tables.states!;
  const odd = [['', 'x', '60', '50'], ['z', 'x', '60', '50'], rows[0]!, ['a', 'again', '60', '50'], []];
  expect(namedStates({ ...job, tables: { states: { columns, rows: odd } } }).map(({ name }) => name)).toEqual(['']);
});

test('giving a state by another measure leaves its air where it was, to the digits shown', () => {
  const job = chartWith([{ dryBulb: '75.0', relativeHumidity: '50' }]);
  for (const measure of humidityMeasures) {
    const next = applyEdits(job, giveAs(job, 'a', measure, airOf(job), 'ip'));
    expect(namedStates(next)[0]?.measure).toBe(measure);
    expect(Math.abs(airOf(next).relativeHumidity - 0.5)).toBeLessThan(0.003);
  }
});

describe('moving', () => {
  const spot = fc.record({
    dryBulb: fc.double({ min: -9, max: 54, noNaN: true }),
    humidityRatio: fc.double({ min: 0, max: 0.08, noNaN: true }),
  });
  const measures = fc.constantFrom(...humidityMeasures);
  const systems = fc.constantFrom('ip' as const, 'si' as const);

  it('never carries a state above saturation, wherever it is moved and in whichever measure', () => {
    fc.assert(
      fc.property(spot, measures, systems, fc.integer({ min: 0, max: 3000 }), (to, measure, system, height) => {
        const job = chartWith(
          [{ dryBulb: '20', relativeHumidity: '50' }],
          [],
          system,
          jobWith({ altitude: [String(height), 'm'] }),
        );
        const moved = applyEdits(job, moveState(job, 'a', measure, to, system));
        const one = { ...moved, tables: { states: withOnly(moved, measure) } };
        const air = airOf(one);
        const step = system === 'ip' ? toSi(0.1, 'degFStep') : 0.1;
        expect(Math.abs(air.dryBulb - to.dryBulb)).toBeLessThanOrEqual(step / 2 + 1e-9);
        expect(air.humidityRatio).toBeLessThanOrEqual(saturationHumidityRatio(air.dryBulb, air.pressure) * (1 + 1e-6));
      }),
      { numRuns: 500 },
    );
  });

  it('moved to where it is, a state stays there', () => {
    fc.assert(
      fc.property(fc.integer({ min: 150, max: 1000 }), fc.integer({ min: 50, max: 1000 }), (tenths, humidity) => {
        const texts = { dryBulb: (tenths / 10).toFixed(1), relativeHumidity: (humidity / 10).toFixed(1) };
        const job = chartWith([texts]);
        const again = applyEdits(job, moveState(job, 'a', 'relativeHumidity', airOf(job), 'ip'));
        expect(again.tables.states).toEqual(job.tables.states);
      }),
    );
  });

  const withOnly = (job: Job, measure: string) => {
    const { columns, rows } = job.tables.states!;
    const row = rows[0]!.map((text, index) => {
      const key = columns[index]!.key;
      return (humidityMeasures as readonly string[]).includes(key) && key !== measure ? '' : text;
    });
    return { columns, rows: [row] };
  };

  it('moves the air of the job in the measure of its probes, and puts no time on it', () => {
    const job = jobWith({
      'entering.dryBulb': ['75.0', 'degF', '0.9'],
      'entering.relativeHumidity': ['50', 'percent'],
    });
    const to = moistAir({ dryBulb: toSi(78.04, 'degF'), relativeHumidity: 0.4512 });
    const moved = applyEdits(job, moveJobAir(job, 'entering', to, 'ip'));
    expect(moved.entered['entering.dryBulb']).toEqual({ text: '78.0', unit: 'degF', origin: 'typed', limit: '0.9' });
    expect(moved.entered['entering.relativeHumidity']?.text).toBe('45.2');
    const byWetBulb = { ...job, chosen: { humidityAs: 'wetBulb' } };
    expect(moveJobAir(byWetBulb, 'entering', to, 'si').map(({ key }) => key)).toEqual([
      'entering.dryBulb',
      'entering.wetBulb',
    ]);
    expect(fromSi(to.wetBulb, 'degC').toFixed(1)).toBe(
      applyEdits(byWetBulb, moveJobAir(byWetBulb, 'entering', to, 'si')).entered['entering.wetBulb']?.text,
    );
  });

  it('leaves the mean of several readings alone', () => {
    const job = jobWith({ 'entering.dryBulb': ['75', 'degF'], 'entering.relativeHumidity': ['50', 'percent'] });
    const listed = applyEdits(job, addReading(job, 'entering'));
    expect([isMovable(job, 'entering'), isMovable(listed, 'entering')]).toEqual([true, false]);
    expect(moveJobAir(listed, 'entering', { dryBulb: 20, humidityRatio: 0.01 }, 'ip')).toEqual([]);
    expect(jobAir(listed, 'entering').ok).toBe(true);
  });
});

test('no job makes the states throw', () => {
  const cell = fc.oneof(fc.string({ maxLength: 12 }), fc.constantFrom('75', '50', 'a', 'b', '-5', '1e9', '50 %'));
  const table = fc.record({
    columns: fc.array(
      fc.record({
        key: fc.constantFrom('key', 'name', 'dryBulb', ...humidityMeasures),
        unit: fc.constantFrom('degF' as const, 'percent' as const, 'count' as const, 'gPerKg' as const),
      }),
      { maxLength: 7 },
    ),
    rows: fc.array(fc.array(cell, { maxLength: 8 }), { maxLength: 8 }),
  });
  fc.assert(
    fc.property(table, (states) => {
      expect(Array.isArray(namedStates({ ...emptyJob('x'), tables: { states } }))).toBe(true);
    }),
    { numRuns: 500 },
  );
});
