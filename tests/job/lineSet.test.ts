import { describe, expect, test } from 'vitest';
import { assess, foot, fromFahrenheit, tonOfRefrigeration } from '../../src/calc/index.ts';
import { demoJob } from '../../src/job/demo.ts';
import { linesOf, meteringOf } from '../../src/job/lineSet.ts';
import { readJob } from '../../src/job/schema.ts';
import { toTest } from '../../src/job/toTest.ts';
import type { Job } from '../../src/job/types.ts';
import { jobWith } from './jobs.ts';

const tubes = { refrigerant: 'R-410A', 'lineSet.vaporTube': '3/4' } as const;
const typed = { nominalCapacity: ['3', 'ton'], 'lineSet.length': ['80', 'ft'] } as const;
const close = (value: number) => expect.closeTo(value, 9);

describe('the lines of a job', () => {
  test('are nothing while four figures are missing, and each is named', () => {
    expect(linesOf(jobWith({}))).toEqual({
      input: null,
      needs: ['refrigerant', 'nominalCapacity', 'lineSet.vaporTube', 'lineSet.length'],
      bad: null,
    });
    expect(linesOf(jobWith(typed, { refrigerant: 'R-32' })).needs).toEqual(['lineSet.vaporTube']);
  });

  test('need no more than these four: the rest is taken for granted until somebody says it', () => {
    expect(linesOf(jobWith(typed, tubes)).input).toEqual({
      equipment: 'split',
      metering: 'indoors',
      maker: { factor: null, maximumLength: null, maximumLift: null },
      run: {
        refrigerant: 'R-410A',
        capacity: close(3 * tonOfRefrigeration),
        evaporating: close(fromFahrenheit(45)),
        superheat: close(10 / 1.8),
        liquidTemperature: close(fromFahrenheit(100)),
        subcooling: close(10 / 1.8),
        vaporTube: '3/4',
        ratedVaporTube: '3/4',
        liquidTube: '3/8',
        length: close(80 * foot),
        ratedLength: close(25 * foot),
        fittings: 0,
        lift: 0,
      },
    });
  });

  test('take what was said in its place, in whatever unit it was typed', () => {
    const said = { ...tubes, 'lineSet.ratedVaporTube': '7/8', 'lineSet.liquidTube': '1/2' } as const;
    const job = jobWith({ ...typed, 'lineSet.lift': ['-6 m', 'ft'], 'lineSet.superheat': ['8 K', 'degFStep'] }, said);
    expect(linesOf(job).input?.run).toMatchObject({ ratedVaporTube: '7/8', liquidTube: '1/2', lift: -6, superheat: 8 });
  });

  test('are not worked out around a figure that cannot be read, which is named', () => {
    expect(linesOf(jobWith({ ...typed, 'lineSet.lift': ['up', 'ft'] }, tubes))).toMatchObject({
      input: null,
      bad: 'lineSet.lift',
    });
    expect(linesOf(jobWith({ ...typed, 'lineSet.length': ['9000', 'ft'] }, tubes)).bad).toBe('lineSet.length');
  });

  test('have the maker’s word alone where nothing else is known', () => {
    const { input } = linesOf(jobWith({ 'lineSet.makerFactor': ['97', 'percent'] }));
    expect(input).toMatchObject({ run: null, maker: { factor: close(0.97) } });
  });

  test('know a packaged unit, and where a ducted mini-split mostly has its metering device', () => {
    expect(linesOf(jobWith(typed, { ...tubes, 'equipment.kind': 'packaged' })).input?.equipment).toBe('packaged');
    expect(meteringOf(jobWith({}, { 'equipment.kind': 'ductedMiniSplit' }))).toBe('outdoors');
    expect(meteringOf(jobWith({}, { 'equipment.kind': 'ductedMiniSplit', 'lineSet.meteringAt': 'indoors' }))).toBe(
      'indoors',
    );
    expect(meteringOf(jobWith({}, { 'lineSet.meteringAt': 'unsure' }))).toBe('indoors');
  });
});

describe('in the assessment of a job', () => {
  const isLine = (key: string) => key === 'refrigerant' || key.startsWith('lineSet.');
  const without = <Map extends object>(map: Map) =>
    Object.fromEntries(Object.entries(map).filter(([key]) => !isLine(key))) as Map;
  /** The demo with nothing said of its lines. */
  const bare: Job = { ...demoJob, entered: without(demoJob.entered), chosen: without(demoJob.chosen) };
  const withLines = (typedLines: Parameters<typeof jobWith>[0], chosen: Job['chosen'] = {}): Job => {
    const lines = jobWith(typedLines, chosen);
    return {
      ...bare,
      entered: { ...bare.entered, ...lines.entered },
      chosen: { ...bare.chosen, ...lines.chosen },
    };
  };
  const assessed = (job: Job) => assess(toTest(job).test);
  const totalOf = (job: Job) => {
    const { expected } = assessed(job);
    return expected.ok ? expected.value.total : Number.NaN;
  };
  const stepOf = (job: Job) => {
    const { expected } = assessed(job);
    return expected.ok ? expected.value.derates.find(({ cause }) => cause === 'lineSet') : undefined;
  };

  test('no known lines: the step is shown as one that does not apply', () => {
    expect(toTest(bare).test.lineSet).toBeNull();
    expect(stepOf(bare)).toMatchObject({ applies: false, factor: 1 });
  });

  test('long lines lower what it should make, with a band, and the step says whose figure it is', () => {
    const job = withLines({ 'lineSet.length': ['120', 'ft'] }, tubes);
    const step = stepOf(job);
    expect(step).toMatchObject({ applies: true, source: 'suctionLoss' });
    expect(step?.factor).toBeLessThan(0.99);
    expect(step?.band).toBeGreaterThan(0);
    expect(totalOf(job)).toBeLessThan(totalOf(bare));
  });

  test('the maker’s factor is taken as it is', () => {
    const job = withLines({ 'lineSet.makerFactor': ['96', 'percent'], 'lineSet.length': ['120', 'ft'] }, tubes);
    expect(stepOf(job)).toMatchObject({ factor: close(0.96), source: 'makersTable' });
  });

  test('lines beyond what the maker allows withhold the verdict', () => {
    const job = withLines({ 'lineSet.length': ['120', 'ft'], 'lineSet.maximumLength': ['80', 'ft'] }, tubes);
    expect(assessed(job).remarks).toContainEqual(expect.objectContaining({ code: 'linesBeyondMaker', weight: 'stop' }));
    expect(assessed(withLines({ 'lineSet.length': ['60', 'ft'] }, tubes)).remarks).not.toContainEqual(
      expect.objectContaining({ code: 'linesBeyondMaker' }),
    );
  });

  test('lines through which so much cannot flow are a problem by name, never a figure', () => {
    const job = withLines({ 'lineSet.length': ['400', 'ft'] }, { ...tubes, 'lineSet.vaporTube': '1/2' });
    const { expected } = assessed(job);
    expect(expected).toMatchObject({ ok: false, problem: { code: 'outOfRange', quantity: 'lineSet.vaporDrop' } });
  });
});

test('a tube or a refrigerant that nobody sells here is dropped on the way in', () => {
  const read = readJob({ ...jobWith(typed), chosen: { refrigerant: 'R-12', 'lineSet.vaporTube': '9/8' } });
  expect(read.ok && read.job.chosen).toEqual({});
});
