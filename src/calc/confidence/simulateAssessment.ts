import { assessmentOf, resultsOf } from '../assess.ts';
import { within } from '../errors.ts';
import { attempt, failureOf } from '../outcome.ts';
import { corrected } from '../sideBySide.ts';
import type { Assessment, Budget, Interval, Outcome, Ranged, Ratio, Test, Verdict } from '../types.ts';
import { thisVisit } from './improvements.ts';
import { intervalOf, rangeOf } from './rangeOf.ts';
import { sampler, take } from './sampler.ts';
import { drawRange } from './simulate.ts';
import { type Results, sourceFacts, sureOf } from './sure.ts';
import { testSources } from './testSources.ts';
import { firstResults, testInputs, testResults, testWork } from './testWork.ts';
import { verdictOn } from './verdict.ts';

/** Where the ends of the two ranges differ by more than this, the draws decide. */
const worthDrawing = 0.005;
/** How many of the draws may have no coil temperature before no range is given for it. */
const mostLost = 0.05;
/** The coil’s own two figures take half of the time; they and the lesser ones need no more draws than this for a range. */
const fewerDraws = 20_000;

export interface DrawOptions {
  readonly draws: number;
  /** The same seed gives the same answer. */
  readonly seed: number;
}

/** A range that was counted among draws. */
export type Drawn = Pick<Budget, 'value' | 'u' | 'interval'>;

export interface SimulatedAssessment {
  readonly draws: number;
  /** Draws that could not be (humidity above saturation) and were made again. */
  readonly redrawn: number;
  readonly ratio: Outcome<Drawn>;
  /** Which of the two ranges decides. */
  readonly by: Verdict['by'];
  /** The verdict by the range that decides. */
  readonly verdict: Outcome<Verdict>;
  /** `null` where too few draws have the figure. */
  readonly ranges: Readonly<Record<Ranged, Interval | null>>;
}

/**
 * The whole test by Monte Carlo: every cause drawn once for each draw, through the same work that `assess` goes to first
 * order with. The draws decide where an end of the range of the ratio differs by more than half a percentage point from first
 * order. A bad argument is a `Problem`; a load that is not known is waited for.
 */
export function simulateAssessment(read: Test, options: DrawOptions): Outcome<SimulatedAssessment> {
  const found = attempt(() => {
    const test = corrected(read);
    const results = resultsOf(test);
    if (!results.load.ok) return results.load;
    return { ok: true as const, value: simulated(test, results, options) };
  });
  return found.ok ? found.value : found;
}

function simulated(test: Test, results: Results, options: DrawOptions): SimulatedAssessment {
  within('draws', options.draws, drawRange);
  within('seed', options.seed, [-(2 ** 53), 2 ** 53]);
  const facts = sourceFacts(results);
  if (!facts) throw new Error('a load is known, and what it was worked out from is not');
  const draws = Math.floor(options.draws);
  const assessment = assessmentOf(test, results, sureOf(test, results));
  const { at, work } = testWork(test, facts);
  const draw = sampler(testInputs, at, testSources(test, facts), options.seed);
  const first = facts.rating ? 0 : 1;
  const values = new Float64Array(testInputs.length);
  const whole = new Float64Array(testResults.length);
  const firstOnes = new Float64Array(firstResults);
  const columns = testResults.map((_, i) => new Float64Array(i < firstResults ? draws : Math.min(draws, fewerDraws)));
  const redrawn = take(draw, values, draws, (kept) => {
    const out = kept < fewerDraws ? whole : firstOnes;
    work(values, out);
    if (!Number.isFinite(out[first])) return false;
    for (let i = first; i < out.length; i++) (columns[i] as Float64Array)[kept] = out[i] as number;
    return true;
  });
  const ranges = Object.fromEntries(
    testResults.flatMap((result, i) => {
      if (result === 'ratio') return [];
      const kept = withFigure(columns[i] as Float64Array);
      return [[result, kept && intervalOf(kept, test.confidence)]];
    }),
  ) as SimulatedAssessment['ranges'];
  const { ratio } = assessment;
  const drawn = ratio.ok && first === 0 ? rangeOf(columns[0] as Float64Array, test.confidence) : null;
  if (!ratio.ok || !drawn) {
    return { draws, redrawn, ratio: failureOf(ratio), by: 'firstOrder', verdict: assessment.verdict, ranges };
  }
  const by = differ(ratio.value, drawn) ? 'monteCarlo' : 'firstOrder';
  const verdict =
    by === 'monteCarlo'
      ? byDraws(test, assessment, ratio.value, drawn, columns[0] as Float64Array)
      : assessment.verdict;
  return { draws, redrawn, ratio: { ok: true, value: drawn }, by, verdict, ranges };
}

/** The draws that have the figure, moved together; `null` when many have none. */
function withFigure(column: Float64Array): Float64Array | null {
  let kept = 0;
  for (let i = 0; i < column.length; i++) {
    const one = column[i] as number;
    if (one - one === 0) column[kept++] = one;
  }
  return kept < (1 - mostLost) * column.length ? null : column.subarray(0, kept);
}

function differ(ratio: Ratio, drawn: Drawn): boolean {
  const { low, high } = ratio.interval;
  return Math.abs(low - drawn.interval.low) > worthDrawing || Math.abs(high - drawn.interval.high) > worthDrawing;
}

/** The verdict with the ends of the draws; the figure itself stays the one that was read. */
function byDraws(
  test: Test,
  { verdict, improvements }: Assessment,
  ratio: Ratio,
  drawn: Drawn,
  column: Float64Array,
): Outcome<Verdict> {
  if (!verdict.ok) return verdict;
  const above = column.reduce((count, one) => count + (one >= test.line ? 1 : 0), 0);
  return {
    ok: true,
    value: verdictOn({
      ratio: { ...drawn, value: ratio.value, degreesOfFreedom: ratio.degreesOfFreedom },
      line: test.line,
      improvements,
      thisVisit,
      by: 'monteCarlo',
      estimateOnly: verdict.value.estimateOnly,
      counted: above / column.length,
    }),
  };
}
