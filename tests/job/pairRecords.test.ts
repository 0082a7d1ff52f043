/** Two probes that stood together, out of their own records: one file or two, whatever the clocks say. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { applyEdits, emptyJob } from '../../src/job/edit.ts';
import { type OpenLog, openLog } from '../../src/job/log/openLog.ts';
import { mostPairs, type PairedRecords, pairRecords } from '../../src/job/log/pairRecords.ts';
import { rolesOfTwo } from '../../src/job/log/pairRoles.ts';
import type { ColumnsSaid } from '../../src/job/log/readColumns.ts';
import type { LogRole } from '../../src/job/log/roles.ts';
import { comparedIn } from '../../src/job/sure/pairs.ts';
import { takenPairs } from '../../src/job/sure/pairsTaken.ts';

const opened = (text: string): OpenLog => {
  const log = openLog(text, true);
  if (typeof log === 'string') throw new Error(log);
  return log;
};
const said = (log: OpenLog, roles: readonly LogRole[] = log.heads.map(({ role }) => role)): ColumnsSaid => ({
  roles,
  temperatures: log.temperatures,
  pressures: log.pressures,
  humidityAs: log.humidityAs,
});
const paired = (texts: readonly string[], minutes: number | null = 10, names: readonly string[] = []) => {
  const logs = texts.map(opened);
  const roles =
    logs.length === 2 ? rolesOfTwo(logs.map(({ heads }, i) => ({ name: names[i] ?? '', heads }))) : undefined;
  return pairRecords(logs, { records: logs.map((log, i) => said(log, roles?.[i])), minutes });
};
const found = (result: ReturnType<typeof paired>): PairedRecords => {
  if (typeof result === 'string') throw new Error(result);
  return result;
};

/** The air of a morning in a duct, °F: it swings by some degrees, so that clocks can be told apart. */
const air = (second: number) => 74 + 3 * Math.sin(second / 90) + 0.5 * Math.sin(second / 37);
const stamp = (second: number) => new Date(Date.UTC(2026, 7, 12, 14, 0, 0) + second * 1000).toISOString();
/** One probe's own record: what it reads too high, what its clock is behind, and how often it reads. */
function recordOf({ offset = 0, behind = 0, step = 5, seconds = 1800, title = 'Temp (°F),RH (%)' }): string {
  const rows = Array.from({ length: Math.floor(seconds / step) + 1 }, (_, row) => {
    const at = row * step;
    return `${stamp(at - behind)},${(air(at) + offset).toFixed(2)},${(50 + 2 * offset).toFixed(1)}`;
  });
  return [`Time,${title}`, ...rows].join('\n');
}

const meanDifference = ({ pairs }: PairedRecords) =>
  (pairs.reduce((sum, { entering, leaving }) => sum + leaving.dryBulb - entering.dryBulb, 0) / pairs.length) * 1.8;

describe('the records of two probes', () => {
  test('give their difference, and how far the second clock is behind, whatever both are', () => {
    const clocks = fc.record({
      offset: fc.integer({ min: -10, max: 10 }).map((tenths) => tenths / 10),
      behind: fc.integer({ min: -400, max: 400 }),
    });
    fc.assert(
      fc.property(clocks, ({ offset, behind }) => {
        const both = found(paired([recordOf({}), recordOf({ offset, behind })]));
        expect(both.shift).toBeGreaterThan(behind - 2);
        expect(both.shift).toBeLessThan(behind + 2);
        // The air changes by a thirtieth of a degree a second at most; the readings of a pair may be 3 s apart.
        expect(Math.abs(meanDifference(both) - offset)).toBeLessThan(0.06);
        expect(both.dated).toBe(true);
      }),
      { numRuns: 12 },
    );
  });

  test('agree pair by pair once the clocks are together, in air that moves by a degree while they are apart', () => {
    const { pairs } = found(paired([recordOf({ step: 20 }), recordOf({ step: 20, offset: 0.4, behind: 60 })], 9));
    const apart = pairs.map(({ entering, leaving }) => (leaving.dryBulb - entering.dryBulb) * 1.8 - 0.4);
    expect(Math.max(...apart.map(Math.abs))).toBeLessThan(0.1);
    const believed = pairs.map((_, i) => air(1800 - 20 * i) - air(1740 - 20 * i));
    expect(Math.max(...believed.map(Math.abs))).toBeGreaterThan(1);
  });

  test('of a few readings are those readings, of many the means of five parts over the last minutes', () => {
    const few = found(paired([recordOf({ step: 60 }), recordOf({ step: 60, offset: 0.5 })]));
    expect([few.count, few.areMeans, few.pairs.length]).toEqual([10, false, 10]);
    const many = found(paired([recordOf({}), recordOf({ offset: 0.5 })]));
    expect([many.count, many.areMeans, many.pairs.length]).toEqual([120, true, 5]);
    const all = found(paired([recordOf({}), recordOf({ offset: 0.5 })], null));
    expect(all.count).toBe(361);
    expect(many.count).toBeGreaterThan(mostPairs);
  });

  test('that stood in air at rest are taken as their clocks are, and say so', () => {
    const still = (offset: number) =>
      ['Time,T F', ...Array.from({ length: 60 }, (_, row) => `${stamp(row * 20)},${70 + offset}`)].join('\n');
    expect(found(paired([still(0), still(0.3)])).shift).toBeNull();
  });

  test('in one file are told apart by their titles, else the first is the return probe', () => {
    const rows = Array.from({ length: 20 }, (_, row) => `${stamp(row * 30)},75.0,50,75.4,51.2`).join('\n');
    for (const head of ['Time,T1 (°F),RH1,T2 (°F),RH2', 'Time,Return T (°F),Return RH,Supply T (°F),Supply RH'])
      expect(meanDifference(found(paired([`${head}\n${rows}`])))).toBeCloseTo(0.4, 3);
    const other = 'Time,Taped T (°F),Taped RH,Return T (°F),Return RH';
    expect(meanDifference(found(paired([`${other}\n${rows}`])))).toBeCloseTo(-0.4, 3);
  });

  test('in two files are told apart by their names or titles, else the first is the return probe’s', () => {
    const low = recordOf({});
    const high = recordOf({ offset: 0.5 });
    expect(meanDifference(found(paired([low, high])))).toBeCloseTo(0.5, 1);
    expect(meanDifference(found(paired([low, high], 10, ['taped.csv', 'b.csv'])))).toBeCloseTo(-0.5, 1);
    const titled = recordOf({ title: 'Supply T (°F),Supply RH (%)' });
    expect(meanDifference(found(paired([titled, high])))).toBeCloseTo(-0.5, 1);
  });

  test('are refused where there is nothing to compare, each with its reason', () => {
    expect(paired(['Time,T F,Outdoor F\n0,75,91\n60,75,91\n120,75,91'])).toBe('noProbes');
    const counted = ['Elapsed,T F', ...Array.from({ length: 20 }, (_, row) => `${row * 20},${air(row * 20)}`)].join(
      '\n',
    );
    expect(paired([recordOf({}), counted])).toBe('differentClocks');
    expect(paired([recordOf({}), recordOf({ behind: 86_400 })])).toBe('noPairs');
  });

  test('of any text at all throw nothing', () => {
    const text = fc.array(fc.array(fc.oneof(fc.string(), fc.double().map(String)), { maxLength: 5 }));
    fc.assert(
      fc.property(text, text, (one, other) => {
        const logs = [one, other].flatMap((rows) => {
          const log = openLog(rows.map((row) => row.join(',')).join('\n'), true);
          return typeof log === 'string' ? [] : [log];
        });
        pairRecords(logs, { records: logs.map((log) => said(log)), minutes: 10 });
      }),
      { numRuns: 100 },
    );
  });
});

describe('taken into the lines of an air', () => {
  const taken = (job = emptyJob('test'), measure: 'relativeHumidity' | 'wetBulb' = 'relativeHumidity') => {
    const { pairs, dated } = found(paired([recordOf({}), recordOf({ offset: 0.5 })]));
    return applyEdits(job, takenPairs(job, 'return', pairs, { measure, system: 'ip', dated }));
  };

  test('they give the difference again, known to five means, and count as a side-by-side check', () => {
    const job = taken();
    expect(job.tables['pairs.return']?.rows).toHaveLength(5);
    expect(job.tables['pairs.return']?.rows[0]?.[0]).toMatch(/^2026-08-12T14:\d\d/);
    expect(job.chosen).toMatchObject({ sideBySide: 'yes', humidityAs: 'relativeHumidity' });
    const { difference, pairs } = comparedIn(job, 'return')!;
    expect(pairs).toBe(5);
    expect(difference.dryBulb * 1.8).toBeCloseTo(-0.5, 1);
    expect(difference.humidity).toBeCloseTo(-0.01, 4);
    expect(difference.scatter?.degreesOfFreedom).toBe(4);
  });

  test('humidities of the other kind stay out, and what the job has said stays as it is', () => {
    const wet = applyEdits(demoJob, [
      { slot: 'chosen', key: 'humidityAs', to: 'wetBulb' },
      { slot: 'chosen', key: 'sideBySide', to: 'no' },
    ]);
    const job = taken(wet);
    expect(job.chosen).toMatchObject({ humidityAs: 'wetBulb', sideBySide: 'no' });
    expect(comparedIn(job, 'return')?.difference.humidity).toBeNull();
  });
});
