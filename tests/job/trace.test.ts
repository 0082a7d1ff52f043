/** What a job keeps of a record: enough to draw how steady it was, and nothing that a link carries. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Log, steady } from '../../src/calc/confidence/steady.ts';
import { assess } from '../../src/calc/index.ts';
import { demoJob } from '../../src/job/demo.ts';
import { applyEdits, typed } from '../../src/job/edit.ts';
import { forLink } from '../../src/job/forLink.ts';
import { judged } from '../../src/job/log/judgeLog.ts';
import { traceEdit, traceOf } from '../../src/job/log/trace.ts';
import { readJob } from '../../src/job/schema.ts';
import { meansEdits } from '../../src/job/sure/steadyMeans.ts';
import { toTest } from '../../src/job/toTest.ts';
import type { Job } from '../../src/job/types.ts';

/** A start-up that falls to its end within some minutes: a row each `step` seconds for `minutes`. */
function startUp(from: number, minutes: number, step: number): Log {
  const time = Array.from({ length: Math.floor((minutes * 60) / step) + 1 }, (_, i) => from + i * step);
  const flat = (value: number) => time.map(() => value);
  return {
    time,
    columns: {
      'entering.dryBulb': flat(24),
      'entering.humidity': flat(0.5),
      'leaving.dryBulb': time.map((t) => 13 + 6 * Math.exp(-(t - from) / 200)),
      'leaving.humidity': flat(0.88),
    },
    measure: 'relativeHumidity',
    startedAt: null,
  };
}

function taken(log: Log): Job {
  const found = judged(log, [], true);
  if (typeof found === 'string') throw new Error(found);
  const { steadiness, trace } = found;
  const stamp = String(steadiness.window.to);
  return applyEdits(demoJob, [
    ...meansEdits(demoJob, steadiness, { stamp, at: null, measure: log.measure, system: 'ip' }),
    traceEdit(trace, steadiness, log.measure),
  ]);
}

test('the static pressure of the supply in a record becomes a figure of the fan table, as it was read', () => {
  const log = startUp(0, 60, 30);
  const found = judged({ ...log, columns: { ...log.columns, supplyStatic: log.time.map(() => 74.7246) } }, [], true);
  if (typeof found === 'string') throw new Error(found);
  const how = { stamp: '1', at: null, measure: log.measure } as const;
  const fieldIn = (system: 'ip' | 'si') =>
    applyEdits(demoJob, meansEdits(demoJob, found.steadiness, { ...how, system })).entered['fanTable.supplyStatic'];
  // 0.3 in. w.c.: 249.082 Pa are one inch of water.
  expect(fieldIn('ip')).toEqual({ text: '0.300', unit: 'inwcDuct', origin: 'from sheet' });
  expect(fieldIn('si')).toEqual({ text: '74.7', unit: 'paDuct', origin: 'from sheet' });
});

describe('the trace of a job', () => {
  test('holds the last hour of any record in sixty rows at most, can be kept, and is not in a link, which gives every figure all the same', () => {
    const record = fc.record({
      from: fc.constantFrom(0, 43_200, 1_786_543_200),
      minutes: fc.integer({ min: 12, max: 400 }),
      step: fc.constantFrom(7, 30, 60),
    });
    fc.assert(
      fc.property(record, ({ from, minutes, step }) => {
        const log = startUp(from, minutes, step);
        const job = taken(log);
        const trace = traceOf(job)!;
        const to = log.time.at(-1)!;
        expect(trace.rows.length).toBeLessThanOrEqual(60);
        expect(trace.rows.length).toBeGreaterThan(6);
        expect(trace.rows.at(-1)?.time).toBe(to);
        expect(trace.rows[0]!.time).toBeGreaterThanOrEqual(to - 3600);
        expect(trace.window).toEqual({ from: Math.max(trace.rows[0]!.time, to - 600), to });
        expect(trace.since).toBe(steady(log).since === null ? null : Math.round(steady(log).since!));
        expect(readJob(JSON.parse(JSON.stringify(job)))).toEqual({ ok: true, job });
        const carried = forLink(job);
        expect(carried.tables).not.toHaveProperty(['log.trace']);
        expect(carried.tables).toHaveProperty(['steady.batches']);
        expect(assess(toTest(carried).test)).toEqual(assess(toTest(job).test));
      }),
      { numRuns: 25 },
    );
  });

  test('has the readings and the capacity of its moments, and the trend over its window', () => {
    const log = startUp(0, 60, 60);
    const { rows, trend, dated, measure } = traceOf(taken(log))!;
    expect([dated, measure]).toEqual([false, 'relativeHumidity']);
    const moment = rows.find(({ time }) => time === 600)!;
    expect(moment.readings['leaving.dryBulb']).toBeCloseTo(13 + 6 * Math.exp(-3), 3);
    // Air that is still warmer gives up less.
    expect(moment.capacity!).toBeLessThan(-0.005);
    expect(rows.at(-1)?.capacity).toBeCloseTo(0, 3);
    expect(trend).toBeCloseTo(steady(log).trend!, 3);
  });

  test('says whether its humidities are wet bulbs', () => {
    const base = startUp(0, 30, 60);
    const wet = { ...base.columns, 'entering.humidity': base.time.map(() => 17) };
    const log: Log = {
      ...base,
      columns: { ...wet, 'leaving.humidity': base.time.map(() => 12) },
      measure: 'wetBulb',
    };
    expect(traceOf(taken(log))?.measure).toBe('wetBulb');
  });

  test('is gone once every reading that its record gave was typed anew, and comes back with the record', () => {
    const job = taken(startUp(0, 30, 60));
    const retyped = (['entering.dryBulb', 'entering.relativeHumidity', 'leaving.dryBulb'] as const).map((key) =>
      typed(job, key, '60', key.endsWith('dryBulb') ? 'degF' : 'percent'),
    );
    expect(traceOf(applyEdits(job, retyped))).not.toBeNull();
    const last = typed(job, 'leaving.relativeHumidity', '90', 'percent');
    expect(traceOf(applyEdits(job, [...retyped, last]))).toBeNull();
    expect(traceOf(demoJob)).toBeNull();
  });

  test('of any texts at all gives finite figures in the order of their times, or nothing', () => {
    const job = taken(startUp(0, 30, 60));
    const { columns } = job.tables['log.trace']!;
    const cell = fc.oneof(fc.string(), fc.double().map(String), fc.constantFrom('', '1e999', 'NaN', '-5', '600'));
    fc.assert(
      fc.property(fc.array(fc.array(cell, { maxLength: 8 }), { maxLength: 60 }), (rows) => {
        const found = traceOf({ ...job, tables: { ...job.tables, 'log.trace': { columns, rows } } });
        const times = found?.rows.map(({ time }) => time) ?? [];
        expect(times).toEqual([...times].sort((a, b) => a - b));
        const figures = found?.rows.flatMap(({ capacity, readings }) => [capacity ?? 0, ...Object.values(readings)]);
        expect(figures?.every(Number.isFinite) ?? true).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});
