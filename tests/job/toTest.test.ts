import { describe, expect, it, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { applyEdits, emptyJob } from '../../src/job/edit.ts';
import { toTest } from '../../src/job/toTest.ts';
import type { Job } from '../../src/job/types.ts';
import { atFahrenheit, jobWith } from './jobs.ts';

/** The conversions by hand: 5/9 K a degree, 0.3048 m a foot, 1055.05585262 J a Btu, 1.2014 kg/m³ of standard air. */
const close = (value: number) => expect.closeTo(value, 9);
const celsius = (fahrenheit: number) => close(((fahrenheit - 32) * 5) / 9);
const cfm = 0.3048 ** 3 / 60;
const thousandBtu = 1055.05585262 / 3.6;

test('the demo is this test', () => {
  const row = (outdoor: number, wetBulb: number, airflow: number, total: number) => ({
    outdoorDryBulb: celsius(outdoor),
    enteringWetBulb: celsius(wetBulb),
    enteringDryBulb: celsius(80),
    dryAirFlow: close(airflow * cfm * 1.2014),
    total: close(total * thousandBtu),
  });
  expect(toTest(demoJob)).toEqual({
    test: {
      entering: { dryBulb: celsius(75), relativeHumidity: close(0.5), wetBulb: null },
      leaving: { dryBulb: celsius(56), relativeHumidity: close(0.88), wetBulb: null },
      airflow: { volumeFlow: close(1180 * cfm), place: 'entering', kind: 'actual', limit: 0.07, sources: null },
      altitude: null,
      barometer: null,
      outdoorDryBulb: celsius(91),
      fullSpeed: 'oneSpeed',
      rating: {
        rows: [row(85, 62, 1200, 32.9), row(95, 62, 1200, 31.3), row(85, 67, 1200, 35.0), row(95, 67, 1200, 33.2)],
        basis: 'net',
        blowerPower: 300,
        blowerKind: null,
        beyond: 'refuse',
        from: 'table',
        stage: null,
        certified: null,
        generic: { unit: 'airConditioner', stage: 'one', dryAirFlow: null },
        multipliers: { airflow: [], indoorMatch: null, lineLength: null },
      },
      lineSet: {
        equipment: 'split',
        metering: 'indoors',
        maker: { factor: null, maximumLength: null, maximumLift: null },
        run: {
          refrigerant: 'R-410A',
          capacity: close(36 * thousandBtu),
          evaporating: celsius(45),
          superheat: close(10 / 1.8),
          liquidTemperature: celsius(100),
          subcooling: close(10 / 1.8),
          vaporTube: '7/8',
          ratedVaporTube: '7/8',
          liquidTube: '3/8',
          length: close(45 * 0.3048),
          ratedLength: close(25 * 0.3048),
          fittings: close(8 * 0.3048),
          lift: close(10 * 0.3048),
        },
      },
      blower: { place: 'after coil', power: 430, kind: null },
      nominalCapacity: close(36 * thousandBtu),
      line: close(0.9),
      probeLimits: { dryBulb: 0.5, relativeHumidity: 0.03, wetBulb: 0.5 },
      otherLimits: { outdoorDryBulb: null, pressure: null, blowerPower: null },
      sideBySide: null,
      supplyPoints: [],
      scatter: [],
      confidence: 0.9,
    },
    problems: [],
    assumed: [
      'altitude',
      'airflow.place',
      'airflow.kind',
      'blower.place',
      'probeLimits.dryBulb',
      'probeLimits.relativeHumidity',
    ],
  });
});

test('an empty job is a test of nothing, with everything assumed that can be', () => {
  const nothing = { dryBulb: null, relativeHumidity: null, wetBulb: null };
  expect(toTest(emptyJob('a'))).toEqual({
    test: {
      entering: nothing,
      leaving: nothing,
      airflow: { volumeFlow: null, place: 'unsure', kind: 'unsure', limit: 0.15, sources: null },
      altitude: null,
      barometer: null,
      outdoorDryBulb: null,
      fullSpeed: null,
      rating: null,
      lineSet: null,
      blower: { place: 'after coil', power: null, kind: null },
      nominalCapacity: null,
      line: 0.9,
      probeLimits: { dryBulb: 0.5, relativeHumidity: 0.03, wetBulb: 0.5 },
      otherLimits: { outdoorDryBulb: null, pressure: null, blowerPower: null },
      sideBySide: null,
      supplyPoints: [],
      scatter: [],
      confidence: 0.9,
    },
    problems: [],
    assumed: [
      'altitude',
      'airflow.place',
      'airflow.kind',
      'blower.place',
      'line',
      'probeLimits.dryBulb',
      'probeLimits.relativeHumidity',
    ],
  });
});

test('nonsense keeps its text, counts as not given, and is a problem with the range that is possible', () => {
  const job = jobWith({ 'leaving.relativeHumidity': ['880', 'percent'], altitude: ['high', 'ft'] });
  const { test: made, problems, assumed } = toTest(job);
  expect(job.entered['leaving.relativeHumidity']?.text).toBe('880');
  expect([made.leaving.relativeHumidity, made.altitude]).toEqual([null, null]);
  expect(problems).toEqual([
    { key: 'leaving.relativeHumidity', code: 'above', min: 0.01, max: 1 },
    { key: 'altitude', code: 'notANumber', min: -650, max: 5500 },
  ]);
  expect(assumed).toContain('altitude');
});

test.each([
  ['readout', 'unsure', 'unsure', 0.1],
  ['fanTable', 'unsure', 'actual', 0.1],
  ['flowGrid', 'entering', 'actual', 0.07],
  ['hood', 'entering', 'actual', 0.1],
  ['traverse', 'entering', 'actual', 0.1],
  ['hotWireTraverse', 'entering', 'standard', 0.1],
  ['temperatureRise', 'entering', 'standard', 0.1],
  ['unsure', 'unsure', 'unsure', 0.15],
  ['guessed', 'unsure', 'unsure', 0.15],
])('airflow from %s counts as %s, %s, within %d, until someone says', (method, place, kind, limit) => {
  const made = toTest(jobWith({}, { 'airflow.method': method }));
  expect(made.test.airflow).toEqual({ volumeFlow: null, place, kind, limit, sources: null });
  expect(made.assumed).toEqual(expect.arrayContaining(['airflow.place', 'airflow.kind']));
});

test.each([
  ['airHandler', 'after coil'],
  ['furnaceCoil', 'before coil'],
  ['packaged', 'after coil'],
  ['ductedMiniSplit', 'after coil'],
])('the blower of equipment %s stands %s', (equipment, place) => {
  const made = toTest(jobWith({}, { 'equipment.kind': equipment }));
  expect(made.test.blower.place).toBe(place);
  expect(made.assumed).toContain('blower.place');
});

test('what was said outranks what would be assumed', () => {
  const job = jobWith(
    {
      altitude: ['1,000', 'ft'],
      line: ['95', 'percent'],
      'entering.dryBulb': ['75', 'degF', '0.36'],
      'leaving.dryBulb': ['56', 'degF', '0.36'],
      'entering.relativeHumidity': ['50', 'percent', '2'],
      'leaving.relativeHumidity': ['88', 'percent', '2'],
    },
    {
      'airflow.method': 'flowGrid',
      'airflow.place': 'leaving',
      'airflow.kind': 'unsure',
      'blower.place': 'outside probes',
      'equipment.kind': 'airHandler',
    },
  );
  const { test: made, assumed } = toTest(job);
  expect(assumed).toEqual([]);
  expect(made).toMatchObject({
    altitude: close(304.8),
    line: close(0.95),
    airflow: { place: 'leaving', kind: 'unsure' },
    blower: { place: 'outside probes' },
    probeLimits: { dryBulb: close(0.2), relativeHumidity: close(0.02), wetBulb: 0.5 },
  });
});

test('a barometer on the spot leaves no height to assume', () => {
  const { test: made, assumed } = toTest(jobWith({ barometer: ['29.921', 'inHg'] }));
  expect(made.barometer).toBeCloseTo(101324, -1);
  expect(assumed).not.toContain('altitude');
});

test('with wet bulbs, the relative humidities are neither used nor judged', () => {
  const job = jobWith(
    {
      'entering.dryBulb': ['75', 'degF'],
      'entering.relativeHumidity': ['wet', 'percent'],
      'entering.wetBulb': ['62.6', 'degF'],
      'leaving.wetBulb': ['damp', 'degF'],
    },
    { humidityAs: 'wetBulb' },
  );
  const { test: made, problems, assumed } = toTest(job);
  expect(made.entering).toEqual({ dryBulb: celsius(75), relativeHumidity: null, wetBulb: celsius(62.6) });
  expect(problems.map(({ key }) => key)).toEqual(['leaving.wetBulb']);
  expect(assumed).toContain('probeLimits.wetBulb');
  expect(assumed).not.toContain('probeLimits.relativeHumidity');
});

test('a bad ±, a bad listed reading and a bad figure are problems under their own keys', () => {
  const job: Job = {
    ...atFahrenheit('95', '67', { 'leaving.dryBulb': ['56', 'degF', 'small'] }),
    tables: {
      'entering.readings': { columns: [{ key: 'dryBulb', unit: 'degF' }], rows: [['80'], ['880']] },
      rating: {
        columns: [
          { key: 'outdoorDryBulb', unit: 'degF' },
          { key: 'enteringWetBulb', unit: 'degF' },
          { key: 'total', unit: 'btuh' },
        ],
        rows: [['95', '67', 'x']],
      },
    },
  };
  expect(toTest(job).problems).toEqual([
    { key: 'leaving.dryBulb.limit', code: 'notANumber', min: 0.01, max: 5 },
    { key: 'entering.readings/1/dryBulb', code: 'above', min: -5, max: 55 },
    { key: '35/19.444444/1/total', code: 'notANumber', min: close(3 * thousandBtu), max: close(480 * thousandBtu) },
  ]);
});

describe('the rating', () => {
  const columns = [
    { key: 'outdoorDryBulb', unit: 'degF' },
    { key: 'enteringWetBulb', unit: 'degF' },
    { key: 'block', unit: 'count' },
    { key: 'total', unit: 'btuh' },
    { key: 'sensible', unit: 'btuh' },
  ] as const;
  const at = (typed: Parameters<typeof jobWith>[0], chosen: Job['chosen'] = {}): Job => ({
    ...atFahrenheit('95', '67', typed, chosen),
    tables: {
      rating: {
        columns,
        rows: [
          ['95', '67', '1', '33.5', '25.0'],
          ['95', '67', '2', '35.0', '27.0'],
          ['85', '67', '1', '35', ''],
        ],
      },
    },
  });
  const rows = (job: Job) => toTest(job).test.rating?.rows;
  const figure = { outdoorDryBulb: celsius(95), enteringWetBulb: celsius(67) };

  it('holds the figures at the heads that are shown, and figures not typed yet as null', () => {
    expect(rows(at({}))).toEqual([{ ...figure, total: close(33.5 * thousandBtu) }]);
    expect(rows(atFahrenheit('91', '67'))).toEqual([
      { ...figure, outdoorDryBulb: celsius(85), total: null },
      { ...figure, total: null },
    ]);
  });

  it('holds the sensible figures when they are asked for', () => {
    const sensible = { 'rating.withSensible': 'yes' };
    expect(rows(at({}, sensible))).toEqual([
      { ...figure, total: close(33.5 * thousandBtu), sensible: close(25 * thousandBtu) },
    ]);
    expect(rows(atFahrenheit('95', '67', {}, sensible))).toEqual([{ ...figure, total: null, sensible: null }]);
  });

  it('takes two blocks when both airflows are known and differ, else the one that is', () => {
    const two = { 'rating.blocks': 'two' };
    const flows = (job: Job) => rows(job)?.map(({ dryAirFlow, total }) => [dryAirFlow, total]);
    const low = [close(1000 * cfm * 1.2014), close(33.5 * thousandBtu)];
    const high = [close(1200 * cfm * 1.2014), close(35 * thousandBtu)];
    expect(flows(at({ 'rating.airflow': ['1000', 'cfm'], 'rating.airflowSecond': ['1200', 'cfm'] }, two))).toEqual([
      low,
      high,
    ]);
    expect(flows(at({ 'rating.airflow': ['1000', 'cfm'] }, two))).toEqual([low]);
    expect(flows(at({ 'rating.airflowSecond': ['1200', 'cfm'] }, two))).toEqual([high]);
    expect(flows(at({}, two))).toEqual([[undefined, close(33.5 * thousandBtu)]]);
    const same = at({ 'rating.airflow': ['1000', 'cfm'], 'rating.airflowSecond': ['1,000', 'cfm'] }, two);
    expect(flows(same)).toEqual([low]);
    expect(toTest(same).problems).toEqual([{ key: 'rating.airflowSecond', code: 'equal' }]);
  });

  it('leaves the second airflow alone while one block is asked for', () => {
    expect(toTest(at({ 'rating.airflowSecond': ['x', 'cfm'] })).problems).toEqual([]);
  });

  it('is net or gross as the page says, and not sure until then', () => {
    expect(toTest(at({}, { 'rating.basis': 'gross' })).test.rating?.basis).toBe('gross');
    const unsaid = toTest(at({}));
    expect(unsaid.test.rating?.basis).toBe('unsure');
    expect(unsaid.assumed).toContain('rating.basis');
    expect(toTest(at({}, { 'rating.basis': 'unsure' })).assumed).not.toContain('rating.basis');
  });

  it('names two heads that are the same', () => {
    const job = atFahrenheit('91', '67', {
      'rating.outdoorLow': ['95', 'degF'],
      'rating.outdoorHigh': ['95.0', 'degF'],
    });
    expect(toTest(job).problems).toEqual([{ key: 'rating.outdoorHigh', code: 'equal' }]);
    expect(rows(job)).toEqual([{ ...figure, total: null }]);
  });
});

test('a job means the same whatever the order of its edits', () => {
  const edits = Object.entries(demoJob.entered).map(
    ([key, to]) => ({ slot: 'entered', key, to }) as Parameters<typeof applyEdits>[1][number],
  );
  const backwards = applyEdits({ ...demoJob, entered: {} }, edits.reverse());
  expect(toTest(backwards)).toEqual(toTest(demoJob));
});

describe('what stands in for a table', () => {
  const said = (chosen: Job['chosen'], typed: Parameters<typeof jobWith>[0] = {}) =>
    toTest(jobWith(typed, chosen)).test;

  test('is the certified capacity and what the published curves have to be told', () => {
    const { rating } = said(
      { 'rating.from': 'generic', 'equipment.stages': 'two', 'equipment.heatPump': 'yes' },
      { 'rating.certified': ['34.6', 'mbh'], 'rating.certifiedAirflow': ['1150', 'cfm'] },
    );
    expect(rating).toMatchObject({
      from: 'generic',
      rows: [],
      certified: close(34.6 * thousandBtu),
      generic: { unit: 'heatPump', stage: 'high', dryAirFlow: close(1150 * cfm * 1.2014) },
    });
  });

  test.each([
    [{ 'equipment.stages': 'one' }, 'one'],
    [{ 'equipment.stages': 'variable' }, 'variable'],
    [{ 'equipment.stages': 'variable', fullSpeed: 'oneSpeed' }, 'variable'],
    [{ fullSpeed: 'oneSpeed' }, 'one'],
    [{ fullSpeed: 'highStage' }, 'high'],
    [{ fullSpeed: 'held' }, undefined],
    [{}, undefined],
  ])('knows the stage from %o', (chosen, stage) => {
    expect(said({ 'rating.from': 'generic', ...chosen }).rating?.generic?.stage).toBe(stage);
  });

  test('takes a maker’s factors as they are typed', () => {
    const { rating } = said(
      { 'rating.from': 'generic' },
      { 'rating.indoorMatch': ['0.97', 'fraction'], 'rating.lineLength': ['0.985', 'fraction'] },
    );
    expect(rating?.multipliers).toEqual({ airflow: [], indoorMatch: 0.97, lineLength: 0.985 });
  });
});

describe('the blowers that nobody has measured', () => {
  test.each([
    [{ 'blower.motor': 'electronic' }, 'electronic', null],
    [{ 'blower.motor': 'unsure', 'equipment.kind': 'ductedMiniSplit' }, 'ductedMiniSplit', null],
    [{ 'rating.era': 'seer2', 'equipment.kind': 'furnaceCoil' }, null, 'ratedCoilOnlySeer2'],
    [{ 'rating.era': 'seer', 'equipment.kind': 'airHandler' }, null, 'ratedWithBlower'],
    [{ 'rating.era': 'seer' }, null, null],
    [{ 'rating.era': 'unsure', 'equipment.kind': 'packaged' }, null, null],
  ])('are of the kinds that %o says', (chosen, here, rated) => {
    const made = toTest(jobWith({}, { 'rating.from': 'generic', ...chosen })).test;
    expect([made.blower.kind, made.rating?.blowerKind]).toEqual([here, rated]);
  });
});
