import { blowerInside } from '../blowerHeat.ts';
import type { RatingHere } from '../expectedHere.ts';
import type { MeasuredFlow } from '../measuredFlow.ts';
import { given } from '../readings.ts';
import type { Derate, ErrorSource, Test, TestInput } from '../types.ts';
import { usual } from './defaults.ts';
import { limited } from './limited.ts';
import { probeSources } from './probeSources.ts';

type Source = ErrorSource<TestInput>;

/** What the errors of a test are worked out from, beside the test itself. */
export interface SourceFacts {
  readonly pressure: number;
  readonly flow: MeasuredFlow;
  /** This system's own blower, W. */
  readonly blower: number;
  readonly rating: RatingHere | null;
  /** The steps of the expectation. */
  readonly derates: readonly Derate[];
}

/** Every cause of error of a test, each named and independent of the others. */
export function testSources(test: Test, facts: SourceFacts): readonly Source[] {
  return [...probeSources(test), ...airSources(test, facts), ...ratingSources(test, facts), ...test.scatter];
}

/** The airflow, the pressure, and the mixing of the supply air. */
function airSources(test: Test, { pressure, flow }: SourceFacts): readonly Source[] {
  const usualPressure = given(test.barometer) ? usual.pressureByInstrument : usual.pressureByHeight;
  const open = (flow.high - flow.low) / 2 / flow.dryAirFlow;
  return [
    ...flowSources(test),
    ...(open > 0 ? [limited('airflow.kind', open, { airflow: 1 })] : []),
    limited('pressure', test.otherLimits?.pressure ?? usualPressure * pressure, { pressure: 1 }),
    mixingSource(test.supplyPoints),
  ];
}

/** The causes of the method that found the airflow, or the limit of its figure. */
function flowSources({ airflow: { limit, sources } }: Test): readonly Source[] {
  return given(sources)
    ? sources.map((source) => ({ ...source, name: `airflow.${source.name}` }))
    : [limited('airflow', limit ?? usual.airflow, { airflow: 1 })];
}

/**
 * How far the mean of the supply plane may lie from the reading: one point for the whole plane is anyone's guess within the
 * usual limit; the mean of several has the uncertainty of a mean, s/√n, with n − 1 degrees of freedom (JCGM 100, 4.2.3).
 */
export function mixingSource(points: readonly number[]): Source {
  const moves = { supplyMixing: 1 };
  if (points.length < 2) return limited('supplyMixing', usual.supplyMixing, moves);
  const mean = points.reduce((sum, point) => sum + point, 0) / points.length;
  const square = points.reduce((sum, point) => sum + (point - mean) ** 2, 0);
  const free = points.length - 1;
  return {
    name: 'supplyMixing',
    u: Math.sqrt(square / free / points.length),
    shape: 'normal',
    degreesOfFreedom: free,
    moves,
  };
}

/** What the expectation adds of its own: where it is read, between which rows, its steps, and the blowers on both sides. */
function ratingSources(test: Test, { blower, rating, derates }: SourceFacts): readonly Source[] {
  if (!rating) return [];
  const { table, blowers } = rating;
  const basisKnown = test.rating?.basis === 'net' || test.rating?.basis === 'gross';
  const { assumed } = blowers;
  const hereAssumed = assumed === 'here' || assumed === 'both' || assumed === 'bothByKind';
  const insideAssumed = assumed === 'inside' || assumed === 'bothByKind';
  const inside = blowerInside(table);
  const known = test.otherLimits?.blowerPower;
  return [
    limited('outdoorDryBulb', test.otherLimits?.outdoorDryBulb ?? usual.outdoorDryBulb, { outdoorDryBulb: 1 }),
    limited('rating.interpolation', usual.interpolation, { rating: 1 }),
    ...derates.flatMap(derateSource),
    hereAssumed
      ? limited('blower.assumed', known ?? usual.blowerAssumed * blower, { 'blower.power': 1 })
      : limited('blower', known ?? usual.blowerMeasured * blower, { 'blower.power': 1 }),
    ...(insideAssumed && inside > 0
      ? [limited('rating.blower', usual.blowerAssumed * inside, { 'rating.blowerPower': 1 })]
      : []),
    ...(basisKnown ? [] : [limited('rating.basis', blowers.inside / 2, { 'rating.blowerPower': 1 })]),
  ];
}

/** A step of the expectation that may be out by a band of its own; that of the airflow has none but where the curves differ. */
function derateSource({ cause, applies, band, factor, source }: Derate): readonly Source[] {
  if (!applies) return [];
  const half = cause === 'airflow' && source === 'flowCurve' ? usual.flowCurve * Math.abs(factor - 1) : band;
  return half > 0 ? [limited(`rating.${cause}`, half, { rating: 1 })] : [];
}
