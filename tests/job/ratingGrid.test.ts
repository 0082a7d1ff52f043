import { describe, expect, it, test } from 'vitest';
import { applyEdits } from '../../src/job/edit.ts';
import { setCell } from '../../src/job/ratingEdits.ts';
import { type Grid, ratingGrid } from '../../src/job/ratingGrid.ts';
import type { Job, System } from '../../src/job/types.ts';
import { atFahrenheit, jobWith } from './jobs.ts';

function gridOf(job: Job, system?: System): Grid {
  const grid = ratingGrid(job, system);
  if (grid.state !== 'ready') throw new Error(`waits for ${grid.needs.join(', ')}`);
  return grid;
}
const labels = (heads: Grid['outdoors']) => heads.map(({ label }) => label).join(' ');
const heads = (job: Job, system?: System) => {
  const grid = gridOf(job, system);
  return [labels(grid.outdoors), labels(grid.wetBulbs), grid.cells.length];
};
const fill = (job: Job, texts: Readonly<Record<string, string>>): Job =>
  Object.entries(texts).reduce((before, [key, text]) => {
    const cell = gridOf(before).cells.find((one) => one.key === key);
    if (cell === undefined) throw new Error(`no cell ${key}`);
    return applyEdits(before, setCell(before, cell, text));
  }, job);

describe('the heads for readings in °F', () => {
  it.each([
    ['91', '62.6', '57', '85 95', '62 67', 4, 'between'],
    ['91', '62.6', '59', '85 95', '59 63', 4, 'the other series'],
    ['95', '62.6', '57', '95', '62 67', 2, 'on a column'],
    ['95.5', '62.6', '57', '95', '62 67', 2, 'just on a column'],
    ['95.6', '62.6', '57', '95 105', '62 67', 4, 'just off a column'],
    ['94.4', '62.6', '57', '85 95', '62 67', 4, 'just off it on the other side'],
    ['91', '67.2', '57', '85 95', '67', 2, 'just on a row'],
    ['91', '67.3', '57', '85 95', '67 72', 4, 'just off a row'],
    ['95', '67', '57', '95', '67', 1, 'on both'],
    ['130', '62.6', '57', '115 125', '62 67', 4, 'beyond the columns'],
    ['125.4', '62.6', '57', '125', '62 67', 2, 'on the last column'],
    ['50', '62.6', '57', '65 75', '62 67', 4, 'before the columns'],
    ['91', '75', '57', '85 95', '67 72', 4, 'beyond the rows'],
    ['91', '50', '59', '85 95', '59 63', 4, 'before the rows'],
    ['91', '62.6', '14', '86 95', '60.8 64.4', 4, 'a series in °C'],
    ['91', '62.6', '15', '86 95', '62.6', 2, 'on a row of a series in °C'],
  ] as const)(
    '%s outdoors and %s wet bulb in series %s: %s by %s (%d figures: %s)',
    (outdoors, wetBulb, series, ...expected) => {
      const [columns, rows, figures] = expected;
      expect(heads(atFahrenheit(outdoors, wetBulb, {}, { 'rating.series': series }))).toEqual([columns, rows, figures]);
    },
  );

  it('are of the usual series until one is chosen', () => {
    expect(gridOf(atFahrenheit('91', '62.6')).series).toBe('57');
  });
});

describe('the heads for readings in °C', () => {
  const inCelsius = (outdoors: string, wetBulb: string, chosen: Job['chosen'] = {}) =>
    jobWith(
      { 'entering.dryBulb': ['24', 'degC'], 'entering.wetBulb': [wetBulb, 'degC'], outdoorDryBulb: [outdoors, 'degC'] },
      { humidityAs: 'wetBulb', ...chosen },
    );

  it('are round in °C, and a bare figure is in kW', () => {
    expect(heads(inCelsius('33', '17'))).toEqual(['30 35', '16 18', 4]);
    expect(heads(inCelsius('35.2', '19.1'))).toEqual(['35', '19', 1]);
    expect(gridOf(inCelsius('33', '17')).unit).toBe('kw');
    expect(heads(inCelsius('33', '18', { 'rating.series': '15' }))).toEqual(['30 35', '17 19', 4]);
  });

  it('are round in °F where the table is, and written in the system shown', () => {
    const job = inCelsius('33', '17', { 'rating.series': '57' });
    expect(heads(job)).toEqual(['29.4 35', '16.7 19.4', 4]);
    expect(heads(job, 'ip')).toEqual(['85 95', '62 67', 4]);
  });
});

describe('typed heads', () => {
  it('outrank the series, the other one coming from the far side of the reading', () => {
    expect(heads(atFahrenheit('91', '62.6', { 'rating.outdoorLow': ['82', 'degF'] }))[0]).toBe('82 95');
    expect(heads(atFahrenheit('91', '62.6', { 'rating.outdoorHigh': ['100', 'degF'] }))[0]).toBe('85 100');
    expect(heads(atFahrenheit('91', '62.6', { 'rating.outdoorLow': ['100', 'degF'] }))[0]).toBe('85 100');
    expect(
      heads(
        atFahrenheit('91', '62.6', { 'rating.wetBulbLow': ['61', 'degF'], 'rating.wetBulbHigh': ['66', 'degF'] }),
      )[1],
    ).toBe('61 66');
  });

  it('stand in ascending order, each with the field that changes it', () => {
    const job = atFahrenheit('91', '62.6', {
      'rating.outdoorLow': ['100', 'degF'],
      'rating.outdoorHigh': ['80', 'degF'],
    });
    expect(gridOf(job).outdoors).toMatchObject([
      { key: 'rating.outdoorHigh', label: '80', from: 'typed' },
      { key: 'rating.outdoorLow', label: '100', from: 'typed' },
    ]);
  });

  it('need no other when the reading is on one of them', () => {
    const job = atFahrenheit('91', '62.6', {
      'rating.outdoorLow': ['91.4', 'degF'],
      'rating.outdoorHigh': ['100', 'degF'],
    });
    expect(gridOf(job).outdoors).toMatchObject([{ key: 'rating.outdoorLow', onPrintedLine: true }]);
  });

  it('replace the printed column that the reading was on', () => {
    expect(heads(atFahrenheit('95.2', '62.6', { 'rating.outdoorLow': ['97', 'degF'] }))[0]).toBe('85 97');
  });

  it('say so when both are the same, and ask for no figure at the second', () => {
    const job = atFahrenheit('91', '62.6', {
      'rating.outdoorLow': ['95', 'degF'],
      'rating.outdoorHigh': ['35', 'degC'],
    });
    const { outdoors, cells } = gridOf(job);
    expect(outdoors.map(({ problem }) => problem)).toEqual([null, 'equal']);
    expect(cells.map((cell) => cell.outdoors)).toEqual([0, 0]);
  });

  it('that cannot be read leave the series in place and say why', () => {
    const { outdoors, cells } = gridOf(atFahrenheit('91', '62.6', { 'rating.outdoorLow': ['hot', 'degF'] }));
    expect(outdoors).toMatchObject([
      { key: 'rating.outdoorLow', label: '85', from: 'series', problem: 'notANumber' },
      { key: 'rating.outdoorHigh', label: '95', problem: null },
    ]);
    expect(cells.map((cell) => cell.outdoors)).toEqual([1, 1]);
  });

  it('are all there is where the rows are of no usual series', () => {
    const other = { 'rating.series': 'other' };
    expect(ratingGrid(atFahrenheit('91', '62.6', {}, other))).toEqual({
      state: 'waiting',
      needs: ['rating.wetBulbLow', 'rating.wetBulbHigh'],
    });
    expect(ratingGrid(atFahrenheit('91', '62.6', { 'rating.wetBulbLow': ['60', 'degF'] }, other))).toEqual({
      state: 'waiting',
      needs: ['rating.wetBulbHigh'],
    });
    expect(heads(atFahrenheit('91', '62.6', { 'rating.wetBulbLow': ['62.5', 'degF'] }, other))).toEqual([
      '85 95',
      '62.5',
      2,
    ]);
  });
});

test('the grid waits for the return air and for the outdoor temperature', () => {
  const needs = (job: Job) => ratingGrid(job);
  expect(needs(jobWith({}))).toEqual({
    state: 'waiting',
    needs: ['entering.dryBulb', 'entering.relativeHumidity', 'outdoorDryBulb'],
  });
  expect(needs(jobWith({ outdoorDryBulb: ['91', 'degF'] }, { humidityAs: 'wetBulb' }))).toEqual({
    state: 'waiting',
    needs: ['entering.dryBulb', 'entering.wetBulb'],
  });
  expect(needs(jobWith({ 'entering.dryBulb': ['75', 'degF'], outdoorDryBulb: ['hot', 'degF'] }))).toEqual({
    state: 'waiting',
    needs: ['entering.relativeHumidity', 'outdoorDryBulb'],
  });
});

test('the entering wet bulb comes from the humidity, at the pressure of the site', () => {
  const at = (typed: Parameters<typeof jobWith>[0]) =>
    gridOf(
      jobWith({
        'entering.dryBulb': ['75', 'degF'],
        'entering.relativeHumidity': ['50', 'percent'],
        outdoorDryBulb: ['91', 'degF'],
        ...typed,
      }),
    ).at;
  // CoolProp 8.0.0 (HAPropsSI) at 101 325 Pa: 16.9704 °C. Known: computed.
  expect(at({}).enteringWetBulb).toBeCloseTo(16.9704, 2);
  expect(at({}).outdoorDryBulb).toBeCloseTo(32.7778, 4);
  expect(at({ altitude: ['5,000', 'ft'] }).enteringWetBulb).toBeLessThan(at({}).enteringWetBulb - 0.2);
  expect(at({ altitude: ['5,000', 'ft'], barometer: ['29.921', 'inHg'] }).enteringWetBulb).toBeCloseTo(16.9704, 2);
});

describe('figures', () => {
  const job = atFahrenheit('91', '62.6');

  it('are asked for in the order in which a table is read', () => {
    expect(gridOf(job).cells.map(({ key }) => key)).toEqual([
      '29.444444/16.666667/1/total',
      '35/16.666667/1/total',
      '29.444444/19.444444/1/total',
      '35/19.444444/1/total',
    ]);
    const both = atFahrenheit('95', '62.6', {}, { 'rating.withSensible': 'yes', 'rating.blocks': 'two' });
    expect(gridOf(both).cells.map(({ key }) => key)).toEqual([
      '35/16.666667/1/total',
      '35/16.666667/1/sensible',
      '35/19.444444/1/total',
      '35/19.444444/1/sensible',
      '35/16.666667/2/total',
      '35/16.666667/2/sensible',
      '35/19.444444/2/total',
      '35/19.444444/2/sensible',
    ]);
  });

  it('keep their text, are read as thousands of Btu/h, and keep the series with the first of them', () => {
    const filled = fill(job, { '35/16.666667/1/total': '30.5' });
    expect(filled.tables.rating).toEqual({
      columns: [
        { key: 'outdoorDryBulb', unit: 'degC' },
        { key: 'enteringWetBulb', unit: 'degC' },
        { key: 'block', unit: 'count' },
        { key: 'total', unit: 'btuh' },
        { key: 'sensible', unit: 'btuh' },
      ],
      rows: [['35', '16.666667', '1', '30.5', '']],
    });
    expect(filled.chosen['rating.series']).toBe('57');
    expect(gridOf(filled).cells[1]).toMatchObject({
      text: '30.5',
      read: { state: 'read', number: 30500, plain: false },
    });
  });

  it('stay in the table when the readings move, and come back with them', () => {
    const filled = fill(job, { '29.444444/16.666667/1/total': '32.3', '35/16.666667/1/total': '30.5' });
    const moved = { ...filled, entered: { ...filled.entered, ...atFahrenheit('98', '62.6').entered } };
    expect(gridOf(moved).cells.map(({ text }) => text)).toEqual(['30.5', '', '', '']);
    const back = { ...moved, entered: { ...moved.entered, ...job.entered } };
    expect(gridOf(back).cells.map(({ text }) => text)).toEqual(['32.3', '30.5', '', '']);
  });

  it('that are nonsense keep their text and say what is wrong', () => {
    const filled = fill(job, { '35/16.666667/1/total': '3o.5' });
    expect(gridOf(filled).cells[1]).toMatchObject({ text: '3o.5', read: { state: 'bad', code: 'notANumber' } });
  });

  it('leave no row when they are taken back', () => {
    const filled = fill(job, { '35/16.666667/1/total': '30.5', '29.444444/16.666667/1/total': '32.3' });
    const cleared = fill(filled, { '35/16.666667/1/total': '' });
    expect(cleared.tables.rating?.rows).toEqual([['29.444444', '16.666667', '1', '32.3', '']]);
    expect(fill(cleared, { '29.444444/16.666667/1/total': '' }).tables.rating).toBeUndefined();
  });

  it('of a sensible column are read beside their total', () => {
    const withSensible = atFahrenheit('95', '67', {}, { 'rating.withSensible': 'yes' });
    const filled = fill(withSensible, { '35/19.444444/1/total': '33.5', '35/19.444444/1/sensible': '0.76' });
    expect(gridOf(filled).cells[1]?.read).toMatchObject({
      state: 'read',
      si: expect.closeTo(0.76 * 33500 * 0.29307107, 2),
    });
  });

  it('mean what the unit chosen for the page says', () => {
    const filled = fill(job, { '35/16.666667/1/total': '9.1' });
    const inKw = { ...filled, chosen: { ...filled.chosen, 'rating.unit': 'kw' } };
    expect(gridOf(inKw).cells[1]?.read).toMatchObject({ state: 'read', si: 9100 });
    const more = fill(inKw, { '29.444444/16.666667/1/total': '9.5' });
    expect(more.tables.rating?.columns[3]).toEqual({ key: 'total', unit: 'kw' });
  });

  it('are found in a table whose columns stand otherwise, in its own units', () => {
    const columns = [
      { key: 'total', unit: 'kw' as const },
      { key: 'enteringWetBulb', unit: 'degF' as const },
      { key: 'outdoorDryBulb', unit: 'degF' as const },
    ];
    const pasted: Job = {
      ...job,
      tables: {
        rating: {
          columns,
          rows: [
            ['9.1', '62', '95'],
            ['9.5', '62', '85'],
          ],
        },
      },
    };
    expect(gridOf(pasted).cells.map(({ text }) => text)).toEqual(['9.5', '9.1', '', '']);
    expect(gridOf(pasted).unit).toBe('kw');
    const more = fill(pasted, { '35/16.666667/1/total': '9.2' });
    expect(more.tables.rating?.rows).toEqual([
      ['9.2', '62', '95', '1', ''],
      ['9.5', '62', '85', '1', ''],
    ]);
  });
});
