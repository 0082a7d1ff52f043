/** What a job says of how sure its readings are, and what its test makes of that. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assess, type Test } from '../../src/calc/index.ts';
import { allQuantities } from '../../src/job/allKeys.ts';
import { demoJob } from '../../src/job/demo.ts';
import { applyEdits, typed as typedField } from '../../src/job/edit.ts';
import { typedCell } from '../../src/job/gridCells.ts';
import { readEdits, readJob } from '../../src/job/schema.ts';
import { comparedIn, type PairAir, pairGrid } from '../../src/job/sure/pairs.ts';
import { standardsGrid } from '../../src/job/sure/standards.ts';
import { supplyGrid } from '../../src/job/sure/supplyPoints.ts';
import { toTest } from '../../src/job/toTest.ts';
import type { Entered, Job, UnitKey } from '../../src/job/types.ts';
import { withLimit } from '../../src/job/withLimit.ts';

const fahrenheitDegree = 5 / 9;
const typed = (text: string, unit: UnitKey): Entered => ({ text, unit, origin: 'typed' });
const checked: Job = { ...demoJob, chosen: { ...demoJob.chosen, sideBySide: 'yes' } };

/** One line of readings: return probe's temperature and humidity, then the supply probe's. */
function withPairs(job: Job, air: PairAir, rows: readonly (readonly [string, string, string, string])[]): Job {
  const columns = ['enteringDryBulb', 'enteringRelativeHumidity', 'leavingDryBulb', 'leavingRelativeHumidity'];
  return rows.reduce(
    (whole, texts, row) =>
      texts.reduce((made, text, at) => {
        const column = columns[at] as string;
        const time = { time: `2026-08-12T14:${String(row + 10)}:00Z` };
        const unit = column.endsWith('DryBulb') ? 'degF' : 'percent';
        return applyEdits(made, [typedCell(made, pairGrid(air), { row, column }, text, unit, time)]);
      }, whole),
    job,
  );
}

const fiveRows = [
  ['75.0', '50', '75.4', '51'],
  ['75.1', '50', '75.5', '51'],
  ['75.0', '50', '75.4', '51'],
  ['74.9', '50', '75.3', '51'],
  ['75.0', '50', '75.4', '51'],
] as const;

describe('a side-by-side check', () => {
  test('that was not made, or of which nothing is typed, leaves the test as it was', () => {
    expect(toTest(demoJob).test.sideBySide).toBeNull();
    expect(toTest(checked).test.sideBySide).toBeNull();
  });

  test('typed as what the supply probe shows more, is the return probe less the supply probe', () => {
    const entered = {
      ...checked.entered,
      'sideBySide.dryBulb': typed('0.9', 'degFStep'),
      'sideBySide.humidity': typed('-2', 'percent'),
    };
    const { sideBySide } = toTest({ ...checked, entered }).test;
    expect(sideBySide?.returnAir.dryBulb).toBeCloseTo(-0.5, 12);
    expect(sideBySide?.returnAir.humidity).toBeCloseTo(0.02, 12);
    expect(sideBySide?.reference).toBe('neither');
  });

  test('of readings outranks what is typed, and moves each reading by half', () => {
    const job = withPairs(
      { ...checked, entered: { ...checked.entered, 'sideBySide.dryBulb': typed('5', 'degFStep') } },
      'return',
      fiveRows,
    );
    const { test: made } = toTest(job);
    expect(made.sideBySide?.returnAir.dryBulb).toBeCloseTo(-0.4 * fahrenheitDegree, 9);
    const [before, after] = [assess(toTest(demoJob).test), assess(made)];
    if (!before.entering.ok || !after.entering.ok || !before.leaving.ok || !after.leaving.ok) throw new Error('no air');
    expect(after.entering.value.dryBulb - before.entering.value.dryBulb).toBeCloseTo(0.2 * fahrenheitDegree, 9);
    expect(after.leaving.value.dryBulb - before.leaving.value.dryBulb).toBeCloseTo(-0.2 * fahrenheitDegree, 9);
  });

  test('of readings narrows the range of the share', () => {
    const width = (job: Job) => {
      const { ratio } = assess(toTest(job).test);
      if (!ratio.ok) throw new Error('no ratio');
      return ratio.value.interval.high - ratio.value.interval.low;
    };
    const inBoth = withPairs(withPairs(checked, 'return', fiveRows), 'supply', fiveRows);
    expect(width(inBoth)).toBeLessThan(0.75 * width(demoJob));
    const drifted = withPairs(inBoth, 'end', [['75', '50', '76.4', '51']]);
    expect(width(drifted)).toBeGreaterThan(width(inBoth));
  });

  test('by exchanging the probes in the ducts finds the difference in each air', () => {
    // The supply probe shows 0.4 °F and 1 % more in both airs: 75 °F and 50 %, 56 °F and 88 % on the return probe.
    const rows = [
      ['75', '50', '56.4', '89'],
      ['75.4', '51', '56', '88'],
    ] as const;
    const swapped = { ...checked, chosen: { ...checked.chosen, 'probes.how': 'swapped' } };
    const { sideBySide } = toTest(withPairs(swapped, 'swap', rows)).test;
    for (const found of [sideBySide?.returnAir, sideBySide?.supplyAir]) {
      expect(found?.dryBulb).toBeCloseTo(-0.4 * fahrenheitDegree, 9);
      expect(found?.humidity).toBeCloseTo(-0.01, 9);
    }
    expect(toTest(withPairs(swapped, 'swap', rows.slice(0, 1))).test.sideBySide).toBeNull();
  });

  test('says the same whatever the unit in which it was typed', () => {
    const inCelsius = fiveRows.map(
      ([one, first, other, second]) =>
        [String((Number(one) - 32) / 1.8), first, String((Number(other) - 32) / 1.8), second] as const,
    );
    const made = inCelsius.reduce(
      (job, texts, row) =>
        texts.reduce((whole, text, at) => {
          const column = ['enteringDryBulb', 'enteringRelativeHumidity', 'leavingDryBulb', 'leavingRelativeHumidity'][
            at
          ];
          const unit = at % 2 === 0 ? 'degC' : 'percent';
          return applyEdits(whole, [
            typedCell(whole, pairGrid('return'), { row, column: column as string }, text, unit),
          ]);
        }, job),
      checked,
    );
    const [ip, si] = [comparedIn(withPairs(checked, 'return', fiveRows), 'return'), comparedIn(made, 'return')];
    expect(si?.difference.dryBulb).toBeCloseTo(ip?.difference.dryBulb ?? Number.NaN, 9);
    expect(si?.difference.humidity).toBeCloseTo(ip?.difference.humidity ?? Number.NaN, 12);
  });

  test('leaves out lines that cannot be read, and keeps their text', () => {
    const job = withPairs(checked, 'return', [
      ['75', '50', 'warm', '51'],
      ['75', '', '75.4', '51'],
    ]);
    expect(comparedIn(job, 'return')).toMatchObject({ pairs: 1, difference: { humidity: null } });
    expect(JSON.stringify(job.tables['pairs.return'])).toContain('warm');
  });

  test('against a standard leaves less of what both share', () => {
    const job = withPairs(checked, 'return', fiveRows);
    const held = { ...job, chosen: { ...job.chosen, 'probes.humidityStandard': 'salt', 'probes.iceBath': 'yes' } };
    expect(toTest(job).test.sideBySide?.shared).toBeNull();
    const { shared } = toTest(held).test.sideBySide ?? {};
    expect(shared?.humidity).toBeLessThan(0.03);
    expect(shared?.dryBulb).toBeLessThan(0.5);
    expect(shared?.error).toEqual({ dryBulb: 0, humidity: 0 });
  });

  test('with what a probe showed of the standard, is moved by it where it is more than the standard can be out', () => {
    const compared = withPairs(checked, 'return', fiveRows);
    const chosen = { ...compared.chosen, 'probes.humidityStandard': 'salt', 'probes.iceBath': 'yes' };
    const cells = [
      ['leavingRelativeHumidity', '78.3', 'percent'],
      ['enteringDryBulb', '32.1', 'degF'],
      ['leavingDryBulb', '32.1', 'degF'],
    ] as const;
    const held = cells.reduce<Job>(
      (job, [column, text, unit]) => applyEdits(job, [typedCell(job, standardsGrid, { row: 0, column }, text, unit)]),
      { ...compared, chosen },
    );
    const { test: made } = toTest(held);
    // The taped probe shows 1 % more than the other, and 3 % too much over the salt: both together 2.5 % too much.
    expect(made.sideBySide?.shared?.error.humidity).toBeCloseTo(0.025, 6);
    expect(made.sideBySide?.shared?.humidity).toBeCloseTo(0.01 + 0.025 / 4, 6);
    // A tenth of a degree is within what an ice bath is known to.
    expect(made.sideBySide?.shared?.error.dryBulb).toBe(0);
    expect(made.sideBySide?.shared?.dryBulb).toBeCloseTo(0.3 * fahrenheitDegree, 6);
    const figure = (job: Job) => {
      const { measured } = assess(toTest(job).test);
      return measured.ok ? measured.value.total : Number.NaN;
    };
    expect(figure(held)).toBeLessThan(figure(compared));
    expect(toTest({ ...held, chosen: compared.chosen }).test.sideBySide?.shared).toBeNull();
    expect(readJob(JSON.parse(JSON.stringify(held)))).toEqual({ ok: true, job: held });
  });

  test('beside an aspirated wet bulb needs what that said', () => {
    const compared = withPairs(checked, 'return', fiveRows);
    const chosen = { ...compared.chosen, 'probes.humidityStandard': 'wetBulb' };
    const typedIn = (job: Job, column: string, text: string) =>
      applyEdits(job, [typedCell(job, standardsGrid, { row: 0, column }, text, 'percent')]);
    const shown = typedIn({ ...compared, chosen }, 'enteringRelativeHumidity', '52');
    expect(toTest(shown).test.sideBySide?.shared).toMatchObject({ humidity: 0.01, error: { humidity: 0 } });
    const known = typedIn(shown, 'knownRelativeHumidity', '49');
    expect(toTest(known).test.sideBySide?.shared?.error.humidity).toBeCloseTo(0.035, 6);
  });
});

describe('a ± of what is read beside the probes', () => {
  const limitedBy = (key: 'outdoorDryBulb' | 'barometer' | 'blower.power', limit: string, unit: UnitKey): Job =>
    applyEdits(demoJob, [withLimit(demoJob, key, limit, unit)]);

  test.each([
    ['outdoorDryBulb', '3.6', 'degF', 'outdoorDryBulb', 2],
    ['barometer', '0.1', 'inHg', 'pressure', 338.6389],
    ['blower.power', '60', 'watt', 'blowerPower', 60],
  ] as const)(
    'of %s reaches the test, and its cause of the budget has that half-width',
    (key, text, unit, name, si) => {
      const { test: made, problems } = toTest(limitedBy(key, text, unit));
      expect(problems).toEqual([]);
      expect(made.otherLimits?.[name]).toBeCloseTo(si, 3);
      const uOf = (of: Test) => {
        const { ratio } = assess(of);
        const cause = name === 'blowerPower' ? /^blower/ : new RegExp(`^${name}$`);
        return ratio.ok ? ratio.value.shares.find((one) => cause.test(one.name))?.u : undefined;
      };
      const twice = { ...made, otherLimits: { ...made.otherLimits!, [name]: 2 * si } };
      expect(uOf(twice)! / uOf(made)!).toBeCloseTo(2, 2);
    },
  );

  test('that none can have is a problem of its own and does not count; the reading keeps its ± when it is typed anew', () => {
    const bad = toTest(limitedBy('outdoorDryBulb', 'some', 'degF'));
    expect(bad.problems.map(({ key }) => key)).toEqual(['outdoorDryBulb.limit']);
    expect(bad.test.otherLimits?.outdoorDryBulb).toBeNull();
    const job = limitedBy('outdoorDryBulb', '2', 'degF');
    const again = applyEdits(job, [typedField(job, 'outdoorDryBulb', '95', 'degF')]);
    expect(toTest(again).test.otherLimits?.outdoorDryBulb).toBeCloseTo(2 * fahrenheitDegree, 9);
    expect(withLimit(again, 'outdoorDryBulb', '', 'degF')).toMatchObject({ to: { text: '95' } });
  });
});

test('whatever is typed into its cells, nothing throws, and the job can be kept', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.string(), fc.string(), fc.string(), fc.string()), { maxLength: 4 }), (rows) => {
      const job = withPairs(checked, 'return', rows);
      expect(() => assess(toTest(job).test)).not.toThrow();
      const kept = rows.flat().every((text) => text.length <= 200);
      expect(readJob(structuredClone(job)).ok).toBe(kept);
    }),
    { numRuns: 60 },
  );
});

test('points of the supply plane reach the test; one that is no temperature does not', () => {
  const job = ['55.4', 'cold', '56.4'].reduce(
    (made, text, row) => applyEdits(made, [typedCell(made, supplyGrid, { row, column: 'dryBulb' }, text, 'degF')]),
    demoJob,
  );
  expect(toTest(job).test.supplyPoints).toHaveLength(2);
  expect(toTest(job).test.supplyPoints[0]).toBeCloseTo(13, 9);
});

test('the kind of probe sets the limits that nobody typed; a typed one outranks it', () => {
  const better = { ...demoJob, chosen: { ...demoJob.chosen, 'probes.class': 'better' } };
  expect(toTest(better).test.probeLimits.relativeHumidity).toBe(0.02);
  const own = { ...typed('75.0', 'degF'), limit: '1.8' };
  const both = { ...better, entered: { ...better.entered, 'entering.dryBulb': own, 'leaving.dryBulb': own } };
  expect(toTest(both).test.probeLimits.dryBulb).toBeCloseTo(1, 9);
});

test('a limit of the airflow and the chances asked for reach the test', () => {
  const job = {
    ...demoJob,
    entered: { ...demoJob.entered, 'airflow.limit': typed('4', 'percent') },
    chosen: { ...demoJob.chosen, 'sure.confidence': 'nineteen' },
  };
  expect(toTest(job).test.airflow.limit).toBeCloseTo(0.04, 12);
  expect(toTest(job).test.confidence).toBe(0.95);
});

test('its keys are keys of a record that may be kept', () => {
  expect(Object.keys(allQuantities)).toContain('airflow.limit');
  const edits = [typedCell(demoJob, pairGrid('end'), { row: 0, column: 'leavingDryBulb' }, '75', 'degF')];
  expect(readEdits(edits)).toEqual(edits);
});
