/**
 * How long the certainty of a whole test takes: to first order, as on every key, and by 100 000 draws, as in the worker.
 * `npm run bench`; the fastest of forty counts.
 */
import { assess, simulateAssessment, steady } from '../../src/calc/index.ts';
import { wholeTest } from '../calc/testCase.ts';

function fastest(title: string, times: number, work: (i: number) => unknown): void {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < times; i++) {
    const start = performance.now();
    work(i);
    best = Math.min(best, performance.now() - start);
  }
  console.log(`${title.padEnd(48)} ${best.toFixed(2).padStart(8)} ms`);
}

/** Another airflow each time, so that nothing can be kept. */
const varied = (i: number) => ({
  ...wholeTest,
  airflow: { ...wholeTest.airflow, volumeFlow: 0.56 + 1e-6 * i },
});
fastest('a whole test to first order', 2000, (i) => assess(varied(i)));
fastest('a whole test by 100 000 draws', 40, (i) => simulateAssessment(varied(i), { draws: 100_000, seed: i }));

const rows = 100_000;
const time = Array.from({ length: rows }, (_, i) => i);
const wave = (middle: number, high: number) => time.map((t) => middle + high * Math.sin(t / 37));
const log = {
  time,
  columns: {
    'entering.dryBulb': wave(24, 0.1),
    'entering.humidity': wave(0.5, 0.005),
    'leaving.dryBulb': wave(13, 0.2),
    'leaving.humidity': wave(0.88, 0.01),
    outdoorDryBulb: wave(33, 0.2),
  },
  measure: 'relativeHumidity',
  startedAt: 0,
} as const;
fastest('a log of 100 000 rows judged', 40, () => steady(log));
