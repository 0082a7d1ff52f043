import { given } from '../readings.ts';
import { humidityCompared, measureOf, remainingErrors, weightsOf } from '../sideBySide.ts';
import type { ErrorSource, SideBySide, Test, TestInput } from '../types.ts';
import { usual } from './defaults.ts';
import { limited } from './limited.ts';

type Source = ErrorSource<TestInput>;

function known(name: string, u: number, moves: Source['moves']): Source {
  return { name, u, shape: 'normal', degreesOfFreedom: null, moves };
}

/**
 * Errors of the probes. Unchecked, each errs on its own within its limits: nobody knows what two of one model share. Checked
 * side by side, they share one error within those limits (or within those of a standard that they were held against), and each
 * keeps a small one of its own. What the difference itself is unsure by moves both readings in opposite ways.
 */
export function probeSources(test: Test): readonly Source[] {
  const { sideBySide, probeLimits } = test;
  const measures = { entering: measureOf(test.entering), leaving: measureOf(test.leaving) };
  const compared = given(sideBySide) && humidityCompared(test);
  const each = (['entering', 'leaving'] as const).flatMap((side): Source[] => [
    sideBySide
      ? known(`${side}.dryBulb`, remainingErrors.dryBulb, { [`${side}.dryBulb`]: 1 })
      : limited(`${side}.dryBulb`, probeLimits.dryBulb, { [`${side}.dryBulb`]: 1 }),
    compared
      ? known(`${side}.humidity`, remainingErrors[measures[side]], { [`${side}.humidity`]: 1 })
      : limited(`${side}.humidity`, probeLimits[measures[side]], { [`${side}.humidity`]: 1 }),
  ]);
  if (!sideBySide) return each;
  const shared = (what: 'dryBulb' | 'humidity', limit: number) =>
    limited(`shared.${what}`, sideBySide.shared?.[what] ?? limit, { [`entering.${what}`]: 1, [`leaving.${what}`]: 1 });
  const onlyDry = !given(sideBySide.supplyAir?.humidity) && measures.leaving === 'relativeHumidity';
  return [
    ...each,
    shared('dryBulb', probeLimits.dryBulb),
    ...(compared ? [shared('humidity', probeLimits[measures.entering])] : []),
    ...(compared && onlyDry ? [limited('leaving.humidityGain', usual.supplyHumidity, { 'leaving.humidity': 1 })] : []),
    ...scatterOf(sideBySide, compared),
    ...driftOf(test, compared),
  ];
}

/** The unsureness of the difference: of one that serves both readings, or of one for each air. */
function scatterOf({ returnAir, supplyAir, reference }: SideBySide, humidity: boolean): readonly Source[] {
  const weights = weightsOf(reference);
  const differences = supplyAir
    ? [
        { found: returnAir, entering: weights.entering, leaving: 0 },
        { found: supplyAir, entering: 0, leaving: weights.leaving },
      ]
    : [{ found: returnAir, ...weights }];
  return differences.flatMap(({ found: { scatter }, entering, leaving }): Source[] => {
    if (!scatter) return [];
    const of = (what: 'dryBulb' | 'humidity'): Source => ({
      name: 'sideBySide',
      u: scatter[what],
      shape: 'normal',
      degreesOfFreedom: scatter.degreesOfFreedom,
      moves: { [`entering.${what}`]: -entering, [`leaving.${what}`]: leaving },
    });
    return humidity ? [of('dryBulb'), of('humidity')] : [of('dryBulb')];
  });
}

const noDrift = { dryBulb: 0, humidity: 0 } as const;

/** A difference that moved more than a little while the test went on: the readings may have been taken anywhere on the way. */
function driftOf(test: Test, humidity: boolean): readonly Source[] {
  const drift = test.sideBySide?.drift ?? noDrift;
  const opposite = (what: 'dryBulb' | 'humidity', limit: number) =>
    limited('drift', limit, { [`entering.${what}`]: 0.5, [`leaving.${what}`]: -0.5 });
  const moved = driftBeyond(test);
  return [
    ...(moved.dryBulb ? [opposite('dryBulb', drift.dryBulb)] : []),
    ...(humidity && moved.humidity ? [opposite('humidity', drift.humidity)] : []),
  ];
}

/** Whether the differences moved by more than is too small to count. */
export function driftBeyond({ sideBySide, leaving }: Test): { readonly dryBulb: boolean; readonly humidity: boolean } {
  const drift = sideBySide?.drift ?? noDrift;
  return {
    dryBulb: drift.dryBulb > usual.drift.dryBulb,
    humidity: drift.humidity > usual.drift.humidity[measureOf(leaving)],
  };
}
