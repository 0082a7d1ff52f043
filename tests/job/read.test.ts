import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { limits } from '../../src/calc/index.ts';
import { allQuantities as quantities } from '../../src/job/allKeys.ts';
import { format } from '../../src/job/format.ts';
import { type QuantityKey, quantityOf } from '../../src/job/quantities.ts';
import { read, readLimit } from '../../src/job/read.ts';
import { fromSi, toSi, type UnitKey, units } from '../../src/job/units.ts';

/** text, field, unit of the field, number understood, unit understood, plain */
type Row = readonly [string, QuantityKey, UnitKey, number, UnitKey, boolean];

const understood: readonly Row[] = [
  ['75', 'entering.dryBulb', 'degF', 75, 'degF', true],
  ['75.2', 'entering.dryBulb', 'degF', 75.2, 'degF', true],
  [' 75.2 ', 'entering.dryBulb', 'degF', 75.2, 'degF', true],
  ['75.', 'entering.dryBulb', 'degF', 75, 'degF', true],
  ['+75', 'entering.dryBulb', 'degF', 75, 'degF', true],
  ['22,5', 'entering.dryBulb', 'degC', 22.5, 'degC', false],
  ['22.500', 'entering.dryBulb', 'degC', 22.5, 'degC', true],
  ['22,500', 'entering.dryBulb', 'degC', 22.5, 'degC', false],
  ['75.2°', 'entering.dryBulb', 'degF', 75.2, 'degF', false],
  ['72F', 'entering.dryBulb', 'degF', 72, 'degF', false],
  ['72 °F', 'entering.dryBulb', 'degF', 72, 'degF', false],
  ['72 ° f', 'entering.dryBulb', 'degF', 72, 'degF', false],
  ['72℉', 'entering.dryBulb', 'degC', 72, 'degF', false],
  ['72 deg F', 'entering.dryBulb', 'degC', 72, 'degF', false],
  ['22.5 C', 'entering.dryBulb', 'degF', 22.5, 'degC', false],
  ['22,5°C', 'entering.dryBulb', 'degF', 22.5, 'degC', false],
  ['７５．２', 'entering.dryBulb', 'degF', 75.2, 'degF', true],
  ['−3', 'outdoorDryBulb', 'degC', -3, 'degC', true],
  ['-3', 'outdoorDryBulb', 'degC', -3, 'degC', true],
  ['–3', 'outdoorDryBulb', 'degC', -3, 'degC', true],
  ['- 3', 'outdoorDryBulb', 'degC', -3, 'degC', true],
  ['-0', 'outdoorDryBulb', 'degC', 0, 'degC', true],
  ['50', 'entering.relativeHumidity', 'percent', 50, 'percent', true],
  ['50%', 'entering.relativeHumidity', 'percent', 50, 'percent', false],
  ['50 % RH', 'entering.relativeHumidity', 'percent', 50, 'percent', false],
  ['50,5', 'entering.relativeHumidity', 'percent', 50.5, 'percent', false],
  ['100', 'leaving.relativeHumidity', 'percent', 100, 'percent', true],
  ['1', 'leaving.relativeHumidity', 'percent', 1, 'percent', true],
  ['1200', 'airflow.volumeFlow', 'cfm', 1200, 'cfm', true],
  ['1,200', 'airflow.volumeFlow', 'cfm', 1200, 'cfm', false],
  ['1 200', 'airflow.volumeFlow', 'cfm', 1200, 'cfm', false],
  ['1\u00a0200', 'airflow.volumeFlow', 'cfm', 1200, 'cfm', false],
  ['1\u202f200', 'airflow.volumeFlow', 'cfm', 1200, 'cfm', false],
  ["1'200", 'airflow.volumeFlow', 'cfm', 1200, 'cfm', false],
  ['1’200', 'airflow.volumeFlow', 'cfm', 1200, 'cfm', false],
  ['1.200', 'airflow.volumeFlow', 'cfm', 1200, 'cfm', false],
  ['1.200,5', 'airflow.volumeFlow', 'cfm', 1200.5, 'cfm', false],
  ['1,200.5', 'airflow.volumeFlow', 'cfm', 1200.5, 'cfm', false],
  ['1 200,5', 'airflow.volumeFlow', 'cfm', 1200.5, 'cfm', false],
  ['1200 cfm', 'airflow.volumeFlow', 'ls', 1200, 'cfm', false],
  ['1200CFM', 'airflow.volumeFlow', 'cfm', 1200, 'cfm', false],
  ['570 l/s', 'airflow.volumeFlow', 'cfm', 570, 'ls', false],
  ['570 L/s.', 'airflow.volumeFlow', 'cfm', 570, 'ls', false],
  ['2 040 m³/h', 'airflow.volumeFlow', 'ls', 2040, 'm3h', false],
  ['2040 m3/h', 'airflow.volumeFlow', 'ls', 2040, 'm3h', false],
  ['5,280', 'altitude', 'ft', 5280, 'ft', false],
  ["5280'", 'altitude', 'm', 5280, 'ft', false],
  ['1609 m', 'altitude', 'ft', 1609, 'm', false],
  ['1.5', 'altitude', 'm', 1.5, 'm', true],
  ['-86', 'altitude', 'm', -86, 'm', true],
  ['29.92', 'barometer', 'inHg', 29.92, 'inHg', true],
  ['29,921', 'barometer', 'inHg', 29.921, 'inHg', false],
  ['29.92 in. Hg', 'barometer', 'hpa', 29.92, 'inHg', false],
  ['29.92"Hg', 'barometer', 'hpa', 29.92, 'inHg', false],
  ['1013,25 mbar', 'barometer', 'inHg', 1013.25, 'hpa', false],
  ['101.3 kPa', 'barometer', 'inHg', 101.3, 'kpa', false],
  ['3', 'nominalCapacity', 'ton', 3, 'ton', true],
  ['3 ton', 'nominalCapacity', 'kw', 3, 'ton', false],
  ['3.5 tons', 'nominalCapacity', 'kw', 3.5, 'ton', false],
  ['10.5kW', 'nominalCapacity', 'ton', 10.5, 'kw', false],
  ['36000 Btu/h', 'nominalCapacity', 'ton', 36000, 'btuh', false],
  ['36k', 'nominalCapacity', 'ton', 36, 'mbh', false],
  ['430', 'blower.power', 'watt', 430, 'watt', true],
  ['0.43 kW', 'blower.power', 'watt', 0.43, 'kw', false],
  ['0', 'blower.power', 'watt', 0, 'watt', true],
  ['34600', 'rating.total', 'btuh', 34600, 'btuh', true],
  ['34,600', 'rating.total', 'btuh', 34600, 'btuh', false],
  ['34.6', 'rating.total', 'btuh', 34600, 'btuh', false],
  ['34,6', 'rating.total', 'btuh', 34600, 'btuh', false],
  ['32.3', 'rating.total', 'btuh', 32300, 'btuh', false],
  ['346', 'rating.total', 'btuh', 346000, 'btuh', false],
  ['34.6 MBH', 'rating.total', 'kw', 34.6, 'mbh', false],
  ['10.14', 'rating.total', 'kw', 10.14, 'kw', true],
  ['2.9', 'rating.total', 'ton', 2.9, 'ton', true],
  ['90', 'line', 'percent', 90, 'percent', true],
  ['-0.4', 'sideBySide.dryBulb', 'degFStep', -0.4, 'degFStep', true],
  ['-0,4 °F', 'sideBySide.dryBulb', 'degCStep', -0.4, 'degFStep', false],
  ['0.2 K', 'sideBySide.dryBulb', 'degFStep', 0.2, 'degCStep', false],
  ['−2 %', 'sideBySide.humidity', 'percent', -2, 'percent', false],
];

test.each(understood)('%j for %s in %s is %d %s', (text, key, unit, number, understoodUnit, plain) => {
  expect(read(text, key, unit)).toMatchObject({
    state: 'read',
    number,
    unit: understoodUnit,
    plain,
    si: toSi(number, understoodUnit),
  });
});

const refused: readonly (readonly [string, QuantityKey, UnitKey, string])[] = [
  ['--', 'entering.dryBulb', 'degF', 'notANumber'],
  ['-', 'entering.dryBulb', 'degF', 'notANumber'],
  ['.', 'entering.dryBulb', 'degF', 'notANumber'],
  ['warm', 'entering.dryBulb', 'degF', 'notANumber'],
  ['🥵', 'entering.dryBulb', 'degF', 'notANumber'],
  ['72🥵', 'entering.dryBulb', 'degF', 'notANumber'],
  ['Infinity', 'entering.dryBulb', 'degF', 'notANumber'],
  ['NaN', 'entering.dryBulb', 'degF', 'notANumber'],
  ['1e999', 'entering.dryBulb', 'degF', 'notANumber'],
  ['7e1', 'entering.dryBulb', 'degF', 'notANumber'],
  ['0x10', 'entering.dryBulb', 'degF', 'notANumber'],
  ['1_200', 'airflow.volumeFlow', 'cfm', 'notANumber'],
  ['12.05.2024', 'entering.dryBulb', 'degF', 'notANumber'],
  ['1,20,5', 'airflow.volumeFlow', 'cfm', 'notANumber'],
  ['1,20.5', 'airflow.volumeFlow', 'cfm', 'notANumber'],
  ['72½', 'entering.dryBulb', 'degF', 'notANumber'],
  ['__proto__', 'entering.dryBulb', 'degF', 'notANumber'],
  ['9'.repeat(41), 'entering.dryBulb', 'degF', 'notANumber'],
  ['7'.repeat(100000), 'entering.dryBulb', 'degF', 'notANumber'],
  [`7${' '.repeat(100000)}2`, 'entering.dryBulb', 'degF', 'twoNumbers'],
  ['72 50', 'entering.dryBulb', 'degF', 'twoNumbers'],
  ['72/50', 'entering.dryBulb', 'degF', 'twoNumbers'],
  ['72F 50%', 'entering.dryBulb', 'degF', 'twoNumbers'],
  ['72-75', 'entering.dryBulb', 'degF', 'twoNumbers'],
  ['72; 50', 'entering.dryBulb', 'degF', 'twoNumbers'],
  ['50%', 'entering.dryBulb', 'degF', 'wrongUnit'],
  ['72F', 'entering.relativeHumidity', 'percent', 'wrongUnit'],
  ['1200 cfm', 'altitude', 'ft', 'wrongUnit'],
  ['400 cfm/ton', 'airflow.volumeFlow', 'cfm', 'wrongUnit'],
  ['3 ton', 'airflow.volumeFlow', 'cfm', 'wrongUnit'],
  ['0.5', 'entering.relativeHumidity', 'percent', 'below'],
  ['0', 'entering.relativeHumidity', 'percent', 'below'],
  ['-5', 'entering.relativeHumidity', 'percent', 'below'],
  ['101', 'entering.relativeHumidity', 'percent', 'above'],
  ['880', 'leaving.relativeHumidity', 'percent', 'above'],
  ['22,500', 'entering.dryBulb', 'degF', 'above'],
  ['75', 'entering.dryBulb', 'degC', 'above'],
  ['9'.repeat(39), 'entering.dryBulb', 'degF', 'above'],
  ['0.0000000001', 'rating.total', 'btuh', 'below'],
  ['12', 'airflow.volumeFlow', 'cfm', 'below'],
  ['34.6 Btu/h', 'rating.total', 'btuh', 'below'],
  ['1000', 'rating.total', 'btuh', 'below'],
  ['36', 'nominalCapacity', 'ton', 'above'],
  ['36000', 'nominalCapacity', 'ton', 'above'],
  ['29.92', 'barometer', 'hpa', 'below'],
  ['9', 'line', 'percent', 'below'],
];

test.each(refused)('%j for %s in %s is refused: %s', (text, key, unit, code) => {
  const [min, max] = quantityOf(key).possible;
  expect(read(text, key, unit)).toEqual({ state: 'bad', code, min, max });
});

test.each(['', ' ', '\u00a0', '\t\n'])('%j is empty', (text) => {
  expect(read(text, 'entering.dryBulb', 'degF')).toEqual({ state: 'empty' });
});

describe('a sensible figure beside a total', () => {
  const btu = 1055.05585262 / 3600;
  const rows: readonly (readonly [string, UnitKey, number, number])[] = [
    ['25.6', 'btuh', 32300 * btu, 25600 * btu],
    ['25,600', 'btuh', 32300 * btu, 25600 * btu],
    ['0.76', 'btuh', 32300 * btu, 0.76 * 32300 * btu],
    [',76', 'btuh', 32300 * btu, 0.76 * 32300 * btu],
    ['76 %', 'btuh', 32300 * btu, 0.76 * 32300 * btu],
    ['1', 'btuh', 32300 * btu, 32300 * btu],
    ['32.4', 'btuh', 32300 * btu, 32400 * btu],
    ['7.2', 'kw', 9500, 7200],
    ['0.76', 'kw', 9500, 7220],
    ['2.3', 'ton', 36000 * btu, 27600 * btu],
    ['0.76', 'ton', 36000 * btu, 27360 * btu],
    // In tons a share and a capacity are both small numbers: this one is 0.6 of the total, so a capacity.
    ['0.9', 'ton', 18000 * btu, 10800 * btu],
  ];
  it.each(rows)('%j in %s with a total of %d W is %d W', (text, unit, total, expected) => {
    const reading = read(text, 'rating.sensible', unit, { total });
    expect(reading).toMatchObject({ state: 'read', si: expect.closeTo(expected, 6) });
  });

  it('is told from a capacity, so that the page can say which it was taken for', () => {
    const isShare = (text: string) => Reflect.get(read(text, 'rating.sensible', 'btuh', { total: 9500 }), 'isShare');
    expect(['0.76', '76 %', '24.6', '24600'].map(isShare)).toEqual([true, true, undefined, undefined]);
  });

  it('says that it waits for the total when it is a share of one', () => {
    expect(read('0.76', 'rating.sensible', 'btuh')).toMatchObject({ state: 'bad', code: 'needsTotal' });
    expect(read('76 %', 'rating.sensible', 'btuh', { total: null })).toMatchObject({ code: 'needsTotal' });
    expect(read('25.6', 'rating.sensible', 'btuh')).toMatchObject({ state: 'read', number: 25600 });
  });

  it('is refused above the total', () => {
    expect(read('35.0', 'rating.sensible', 'btuh', { total: 32300 * btu })).toMatchObject({
      state: 'bad',
      code: 'above',
    });
    expect(read('110 %', 'rating.sensible', 'btuh', { total: 32300 * btu })).toMatchObject({ code: 'above' });
  });

  it('is no share in any other field', () => {
    expect(read('76 %', 'rating.total', 'btuh', { total: 9500 })).toMatchObject({ state: 'bad', code: 'wrongUnit' });
  });
});

test.each([
  ['0.9', 'degFStep', 0.5],
  ['±0.9', 'degFStep', 0.5],
  ['+/-0.9 °F', 'degCStep', 0.5],
  ['0,5 K', 'degFStep', 0.5],
] as const)('a ± typed as %j in %s is %d K', (text, unit, expected) => {
  expect(readLimit(text, unit, [0.01, 5])).toMatchObject({ state: 'read', si: expect.closeTo(expected, 12) });
});

test('a ± of nothing, of minus something or of another kind is refused', () => {
  expect(readLimit('0', 'degFStep', [0.01, 5])).toMatchObject({ code: 'below' });
  expect(readLimit('-0.9', 'degFStep', [0.01, 5])).toMatchObject({ code: 'below' });
  expect(readLimit('3 %', 'degFStep', [0.01, 5])).toMatchObject({ code: 'wrongUnit' });
});

describe('reading', () => {
  const keys = Object.keys(quantities) as QuantityKey[];
  const anyText = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: fc.constantFrom(..."0123456789.,'’ -−+%°FCkW/hrbtu") }),
  );

  it('never throws, and gives a possible number or none', () => {
    const total = fc.option(fc.double({ min: 1, max: 1e5, noNaN: true }));
    fc.assert(
      fc.property(anyText, fc.constantFrom(...keys), total, (text, key, given) => {
        const reading = read(text, key, quantities[key].ip, { total: given });
        if (reading.state !== 'read') return;
        const [min, max] = quantityOf(key).possible;
        expect(reading.si).toBeGreaterThanOrEqual(min);
        expect(reading.si).toBeLessThanOrEqual(max);
        expect(units[reading.unit].kind).toBe(quantityOf(key).kind);
      }),
      { numRuns: 2000 },
    );
  });

  it('gives back exactly what was typed after the way to SI', () => {
    const cases = fc.constantFrom(...keys).chain((key) => {
      const [min, max] = quantityOf(key).possible;
      return fc.record({
        key: fc.constant(key),
        unit: fc.constantFrom(quantities[key].ip, quantities[key].si),
        si: fc.double({ min, max, noNaN: true }),
        decimals: fc.integer({ min: 0, max: 3 }),
      });
    });
    fc.assert(
      fc.property(cases, ({ key, unit, si, decimals }) => {
        const typed = fromSi(si, unit).toFixed(decimals);
        const reading = read(typed, key, unit);
        if (reading.state !== 'read' || !reading.plain) return;
        expect(format(reading.si, unit, decimals).replace(/,/g, '').replace('−', '-')).toBe(
          typed.replace(/^-(0(\.0+)?)$/, '$1'),
        );
      }),
      { numRuns: 2000 },
    );
  });

  it('accepts nothing that the calculations refuse', () => {
    const within = (key: QuantityKey, [min, max]: readonly [number, number]) => {
      expect(quantityOf(key).possible[0]).toBeGreaterThanOrEqual(min);
      expect(quantityOf(key).possible[1]).toBeLessThanOrEqual(max);
    };
    for (const key of keys) {
      const { kind, usual, possible } = quantityOf(key);
      if (kind === 'temperature') within(key, limits.dryBulb);
      if (kind === 'volumeFlow') within(key, limits.volumeFlow);
      if (key.endsWith('relativeHumidity')) within(key, limits.relativeHumidity);
      expect(usual[0]).toBeGreaterThanOrEqual(possible[0]);
      expect(usual[1]).toBeLessThanOrEqual(possible[1]);
    }
    within('altitude', limits.altitude);
    within('barometer', limits.pressure);
  });
});
