import { describe, expect, it, test } from 'vitest';
import { applyEdits } from '../../src/job/edit.ts';
import { limitEdits } from '../../src/job/probeLimitEdits.ts';
import { probeLimit } from '../../src/job/probeLimits.ts';
import { addReading, listedReadings, meanReading, removeReading } from '../../src/job/readings.ts';
import type { Job } from '../../src/job/types.ts';
import { jobWith } from './jobs.ts';

const first = jobWith({
  'entering.dryBulb': ['75.0', 'degF', '0.9'],
  'entering.relativeHumidity': ['50', 'percent'],
});
const again = (job: Job, dryBulb: string, humidity: string, unit: 'degF' | 'degC' = 'degF'): Job => {
  const next = jobWith({ 'entering.dryBulb': [dryBulb, unit], 'entering.relativeHumidity': [humidity, 'percent'] });
  return { ...job, entered: { ...job.entered, ...next.entered } };
};

describe('another reading', () => {
  const listed = applyEdits(first, addReading(first, 'entering'));

  it('moves the fields into the list and keeps the ± of the probe', () => {
    expect(listed.tables['entering.readings']).toEqual({
      columns: [
        { key: 'time', unit: 'count' },
        { key: 'probe', unit: 'count' },
        { key: 'dryBulb', unit: 'degF' },
        { key: 'relativeHumidity', unit: 'percent' },
        { key: 'wetBulb', unit: 'degF' },
      ],
      rows: [['', '', '75.0', '50', '']],
    });
    expect(listed.entered).toEqual({ 'entering.dryBulb': { text: '', unit: 'degF', origin: 'typed', limit: '0.9' } });
  });

  it('still counts before the next is typed', () => {
    expect(meanReading(listed, 'entering').dryBulb).toBeCloseTo(23.888889, 6);
  });

  it('is averaged with the earlier ones', () => {
    const mean = meanReading(again(listed, '76.0', '52'), 'entering');
    expect(mean.dryBulb).toBeCloseTo((75.5 - 32) / 1.8, 9);
    expect(mean.relativeHumidity).toBeCloseTo(0.51, 9);
    expect(mean.wetBulb).toBeNull();
  });

  it('may be typed in another unit', () => {
    const second = again(listed, '24', '52', 'degC');
    const both = applyEdits(second, addReading(second, 'entering'));
    expect(both.tables['entering.readings']?.rows[1]).toEqual(['', '', '24 °C', '52', '']);
    expect(meanReading(both, 'entering').dryBulb).toBeCloseTo((23.8888889 + 24) / 2, 6);
  });

  it('is left out of the mean where it is nonsense', () => {
    expect(meanReading(again(listed, 'warm', '52'), 'entering').dryBulb).toBeCloseTo(23.888889, 6);
  });

  it('carries its time and its probe', () => {
    const timed: Job = {
      ...first,
      entered: { 'entering.dryBulb': { text: '75', unit: 'degF', origin: 'typed', at: '2025-07-15T14:31:00Z' } },
      notes: { 'entering.probe': 'A' },
    };
    const [reading] = listedReadings(applyEdits(timed, addReading(timed, 'entering')), 'entering');
    expect(reading).toMatchObject({ time: '2025-07-15T14:31:00Z', probe: 'A', reads: { dryBulb: { number: 75 } } });
  });

  it('is nothing while the fields are empty', () => {
    expect(addReading(listed, 'entering')).toEqual([]);
    expect(addReading(first, 'leaving')).toEqual([]);
  });

  it('can be taken out again', () => {
    const second = again(listed, '76.0', '52');
    const both = applyEdits(second, addReading(second, 'entering'));
    expect(applyEdits(both, removeReading(both, 'entering', 0)).tables['entering.readings']?.rows).toEqual([
      ['', '', '76.0', '52', ''],
    ]);
    expect(applyEdits(listed, removeReading(listed, 'entering', 0)).tables).toEqual({});
    expect(removeReading(first, 'leaving', 0)).toEqual([]);
  });
});

test('only the humidity that is asked for counts; the other is kept and never converted', () => {
  const both = jobWith(
    {
      'entering.dryBulb': ['75', 'degF'],
      'entering.relativeHumidity': ['50', 'percent'],
      'entering.wetBulb': ['62', 'degF'],
    },
    { humidityAs: 'wetBulb' },
  );
  expect(meanReading(both, 'entering').relativeHumidity).toBeNull();
  expect(meanReading(both, 'entering').wetBulb).toBeCloseTo(16.666667, 6);
  const other = { ...both, chosen: {} };
  expect(meanReading(other, 'entering').relativeHumidity).toBe(0.5);
  expect(meanReading(other, 'entering').wetBulb).toBeNull();
});

describe('the limit of the probes', () => {
  it('is ±0.9 °F and ±3 % until someone says', () => {
    expect(probeLimit(first, 'relativeHumidity')).toEqual({ si: 0.03, assumed: true });
    expect(probeLimit(jobWith({}), 'dryBulb')).toEqual({ si: 0.5, assumed: true });
    expect(probeLimit(jobWith({}), 'wetBulb')).toEqual({ si: 0.5, assumed: true });
  });

  it('is the wider of the two', () => {
    const job = jobWith({ 'entering.dryBulb': ['75', 'degF', '0.9'], 'leaving.dryBulb': ['56', 'degF', '1.8'] });
    expect(probeLimit(job, 'dryBulb')).toEqual({ si: 1, assumed: false });
    const one = jobWith({ 'entering.dryBulb': ['75', 'degF', '0.36'], 'leaving.dryBulb': ['56', 'degF'] });
    expect(probeLimit(one, 'dryBulb')).toEqual({ si: 0.5, assumed: true });
  });

  it('is typed once for both probes, before or after their readings and in any unit', () => {
    const job = jobWith({ 'entering.dryBulb': ['24', 'degC'] });
    const narrowed = applyEdits(job, limitEdits(job, 'dryBulb', '0.36', 'degF'));
    expect(narrowed.entered).toEqual({
      'entering.dryBulb': { text: '24', unit: 'degC', origin: 'typed', limit: '0.36 °F' },
      'leaving.dryBulb': { text: '', unit: 'degF', origin: 'typed', limit: '0.36' },
    });
    expect(probeLimit(narrowed, 'dryBulb')).toEqual({ si: expect.closeTo(0.2, 12), assumed: false });
    expect(applyEdits(narrowed, limitEdits(narrowed, 'dryBulb', '', 'degF'))).toEqual(job);
  });
});
