import { within } from '../errors.ts';
import type { RatingHere } from '../expectedHere.ts';
import type { Measured } from '../measured.ts';
import { noRanges } from '../measuredRanges.ts';
import { attempt, failureOf, lacking, orNull, waitingFor } from '../outcome.ts';
import type { BareRatio } from '../ratio.ts';
import { given } from '../readings.ts';
import type {
  CoilLoad,
  Expectation,
  Improvement,
  Outcome,
  Ranged,
  Ranges,
  Ratio,
  Remark,
  Test,
  Verdict,
} from '../types.ts';
import { combined, confidenceRange } from './budget.ts';
import { type Effect, effectsOf } from './effects.ts';
import { improvementsOf, thisVisit } from './improvements.ts';
import { type SourceFacts, testSources } from './testSources.ts';
import { testInputs, testResults, testWork } from './testWork.ts';
import { verdictOn } from './verdict.ts';

/** How sure a test is: its ratio with a budget, the ranges of what was measured, and what would make the ratio surer. */
export interface Sure {
  readonly ratio: Outcome<Ratio>;
  readonly ranges: Ranges;
  readonly improvements: readonly Improvement[];
}

/** The results of a test that its certainty is worked out from. */
export interface Results extends Measured {
  readonly rating: Outcome<RatingHere>;
  readonly expected: Outcome<Expectation>;
  readonly ratio: Outcome<BareRatio>;
}

/** How sure the results of a test are, to first order and at once. */
export function sureOf(test: Test, results: Results): Sure {
  const facts = sourceFacts(results);
  const { load, ratio: bare } = results;
  if (!load.ok || !facts) return { ratio: failureOf(load, bare), ranges: noRanges, improvements: [] };
  const found = attempt(() => worked(test, load.value, orNull(bare), facts));
  if (!found.ok) return { ratio: lacking(bare) ?? found, ranges: noRanges, improvements: [] };
  const { ratio, ranges, improvements } = found.value;
  return { ratio: ratio ? { ok: true, value: ratio } : failureOf(bare), ranges, improvements };
}

/** What the errors of a test are worked out from; `null` while its load is not known. Without a ratio, without a rating. */
export function sourceFacts({ pressure, flow, blower, rating, expected, ratio }: Results): SourceFacts | null {
  if (!pressure.ok || !flow.ok || !blower.ok) return null;
  const measured = { pressure: pressure.value, flow: flow.value, blower: blower.value };
  const whole = rating.ok && expected.ok && ratio.ok;
  return whole
    ? { ...measured, rating: rating.value, derates: expected.value.derates }
    : { ...measured, rating: null, derates: [] };
}

interface Worked {
  readonly ratio: Ratio | null;
  readonly ranges: Ranges;
  readonly improvements: readonly Improvement[];
}

/** What each cause of error does to the ratio and to the load, each with its sign; no ratio without a rating. */
export interface TestEffects {
  readonly ratio: { readonly value: number; readonly effects: readonly Effect[] } | null;
  readonly total: { readonly value: number; readonly effects: readonly Effect[] };
}

/** The effects that the ranges of a test are made of. Throws a `CalcError` for a cause that no sum can be made with. */
export function testEffects(test: Test, results: Results): Outcome<TestEffects> {
  const facts = sourceFacts(results);
  const { load, ratio: bare } = results;
  if (!load.ok || !facts) return failureOf(load, bare);
  const { value, effects } = effectsIn(test, load.value, orNull(bare), facts);
  const of = (index: number) => ({ value: value[index] as number, effects: effects[index] as readonly Effect[] });
  const total = of(testResults.indexOf('total'));
  return { ok: true, value: { ratio: bare.ok ? of(0) : null, total } };
}

/** Every result of a test as it was found, and what each cause does to it. */
function effectsIn(test: Test, load: CoilLoad, bare: BareRatio | null, facts: SourceFacts) {
  const sources = testSources(test, facts);
  const { at, work } = testWork(test, facts);
  const value = new Float64Array(testResults.length);
  work(at, value);
  testResults.forEach((result, i) => {
    value[i] = figureOf(result, load, bare) ?? (value[i] as number);
  });
  return { sources, at, work, value, effects: effectsOf(work, testInputs, at, value, sources) };
}

function worked(test: Test, load: CoilLoad, bare: BareRatio | null, facts: SourceFacts): Worked {
  within('confidence', test.confidence, confidenceRange);
  const { sources, at, work, value, effects } = effectsIn(test, load, bare, facts);
  const ranges = Object.fromEntries(
    testResults.flatMap((result, i) => {
      const around = rangeOf(value[i] as number, effects[i] as Effect[], test.confidence);
      return result === 'ratio' ? [] : [[result, around]];
    }),
  ) as Ranges;
  const ofRatio = effects[0] as Effect[];
  const budget = bare && rangeOf(bare.value, ofRatio, test.confidence);
  if (!bare || !budget) return { ratio: null, ranges, improvements: [] };
  const improvements = improvementsOf({ test, value: bare.value, sources, effects: ofRatio, work, at });
  return { ratio: { ...bare, ...budget }, ranges, improvements };
}

function rangeOf(value: number, effects: readonly Effect[], confidence: number) {
  const usable = Number.isFinite(value) && effects.every(({ u }) => Number.isFinite(u));
  return usable ? combined(value, effects, confidence) : null;
}

/** The figure as it was found; `null` where it is no part of the load. */
function figureOf(result: Ranged | 'ratio', load: CoilLoad, bare: BareRatio | null): number | null {
  if (result === 'ratio') return bare?.value ?? null;
  if (result === 'apparatusDewPoint') return load.apparatus?.dewPoint ?? null;
  if (result === 'bypassFactor') return load.apparatus?.bypassFactor ?? null;
  return result === 'temperatureDrop' || result === 'supplyHumidity' ? null : load[result];
}

/**
 * No verdict: something is missing, or a remark withholds it.
 */
export function verdictOf(
  test: Test,
  { ratio, improvements }: Sure,
  rating: Outcome<RatingHere>,
  remarks: readonly Remark[],
): Outcome<Verdict> {
  const speed: Outcome<unknown> = given(test.fullSpeed) ? { ok: true, value: test.fullSpeed } : waitingFor('fullSpeed');
  const lack = lacking(ratio, speed);
  if (lack || !ratio.ok) return lack ?? waitingFor();
  if (remarks.some(({ weight }) => weight === 'stop')) return waitingFor();
  const estimateOnly = orNull(rating)?.table.from === 'generic';
  const { line } = test;
  return attempt(() =>
    verdictOn({ ratio: ratio.value, line, improvements, thisVisit, by: 'firstOrder', estimateOnly }),
  );
}
