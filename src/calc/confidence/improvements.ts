import { given } from '../readings.ts';
import { humidityCompared, measureOf } from '../sideBySide.ts';
import type { ErrorSource, Improvement, SideBySide, Test, TestInput } from '../types.ts';
import { combined } from './budget.ts';
import { usual } from './defaults.ts';
import { type Effect, effectsOf, type Work } from './effects.ts';
import { limited } from './limited.ts';
import { driftBeyond, probeSources } from './probeSources.ts';
import { mixingSource } from './testSources.ts';
import { testInputs } from './testWork.ts';
import { decides, outward } from './verdict.ts';

type Source = ErrorSource<TestInput>;

/** A check that a person could still make: which causes it takes away and what it puts in their place. */
interface Possible {
  readonly change: string;
  /** s. Common practice, no source. */
  readonly takes: number;
  readonly instead: (test: Test, sources: readonly Source[]) => readonly Source[] | null;
}

const minutes = (count: number) => count * 60;
/** What can be done while one is there. Our choice. */
export const thisVisit = minutes(120);

/** Airflow limits that another method reaches: a flow grid or its like, and two methods that agree. Common practice, no source. */
const airflowLimits = { better: 0.07, two: 0.05 } as const;
/** What a saturated salt or an aspirated wet bulb leaves of the humidity error that both probes share. Common practice. */
const standardHumidity = 0.01;
/** Nine points of the supply plane, as far apart as a laboratory allows. */
const ninePoints = Array.from({ length: 9 }, (_, i) => ((i - 4) / 8) * usual.supplySpread);

const alike = { dryBulb: 0, humidity: 0, scatter: null } as const;
const probeCauses = /^(entering|leaving|shared)\.|^(sideBySide|drift)$/;

const without = (sources: readonly Source[], cause: string) => sources.filter(({ name }) => name !== cause);
const has = (sources: readonly Source[], name: string) => sources.some((source) => source.name === name);
const limitOf = (sources: readonly Source[], name: string) =>
  (sources.find((source) => source.name === name)?.u ?? 0) * Math.sqrt(3);

/** The probes as a whole check, in both airs, would leave them. */
function checked(test: Test, sources: readonly Source[]): readonly Source[] {
  const shared = test.sideBySide?.shared ?? null;
  const sideBySide: SideBySide = { returnAir: alike, supplyAir: alike, reference: 'neither', drift: null, shared };
  return [...sources.filter(({ name }) => !probeCauses.test(name)), ...probeSources({ ...test, sideBySide })];
}

/** Every cause of the airflow's figure; which air it is a volume of is another question. */
const airflowCauses = /^airflow(?!\.kind$)/;

/** The half-width of the rectangle that the causes of the airflow come to together. */
function airflowLimit(sources: readonly Source[]): number {
  const causes = sources.filter(({ name }) => airflowCauses.test(name));
  return Math.sqrt(3) * Math.hypot(...causes.map(({ u, moves }) => u * (moves.airflow ?? 0)));
}

function airflowWithin(limit: number, sources: readonly Source[]): readonly Source[] {
  return [...sources.filter(({ name }) => !airflowCauses.test(name)), limited('airflow', limit, { airflow: 1 })];
}

const possible: readonly Possible[] = [
  {
    change: 'sideBySide',
    takes: minutes(30),
    instead: (test, sources) => (given(test.sideBySide) ? null : checked(test, sources)),
  },
  {
    // Looked at in one air only, without the humidity, or drifted away since.
    change: 'sideBySideAgain',
    takes: minutes(20),
    instead: (test, sources) => {
      if (!given(test.sideBySide)) return null;
      const drift = driftBeyond(test);
      const whole = humidityCompared(test) && given(test.sideBySide.supplyAir?.humidity);
      return whole && !drift.dryBulb && !drift.humidity ? null : checked(test, sources);
    },
  },
  {
    change: 'supplyPoints',
    takes: minutes(10),
    instead: (_, sources) => {
      const nine = mixingSource(ninePoints);
      const now = sources.find(({ name }) => name === 'supplyMixing');
      return now && now.u > nine.u ? [...without(sources, 'supplyMixing'), nine] : null;
    },
  },
  {
    change: 'airflowKind',
    takes: minutes(5),
    instead: (_, sources) => (has(sources, 'airflow.kind') ? without(sources, 'airflow.kind') : null),
  },
  {
    change: 'airflowMethod',
    takes: minutes(40),
    instead: (_, sources) =>
      airflowLimit(sources) > airflowLimits.better * 1.001 ? airflowWithin(airflowLimits.better, sources) : null,
  },
  {
    change: 'secondAirflow',
    takes: minutes(60),
    instead: (_, sources) => {
      const limit = airflowLimit(sources);
      const reached = limit > airflowLimits.two * 1.001 && limit <= airflowLimits.better * 1.001;
      return reached ? airflowWithin(airflowLimits.two, sources) : null;
    },
  },
  {
    change: 'ratingBasis',
    takes: minutes(5),
    instead: (_, sources) => (has(sources, 'rating.basis') ? without(sources, 'rating.basis') : null),
  },
  {
    change: 'blowerPower',
    takes: minutes(10),
    instead: (_, sources) => {
      if (!has(sources, 'blower.assumed')) return null;
      const limit = (limitOf(sources, 'blower.assumed') * usual.blowerMeasured) / usual.blowerAssumed;
      return [...without(sources, 'blower.assumed'), limited('blower', limit, { 'blower.power': 1 })];
    },
  },
  {
    change: 'makersTable',
    takes: minutes(20),
    instead: (_, sources) => (has(sources, 'rating.temperatures') ? without(sources, 'rating.temperatures') : null),
  },
  {
    // The air over a salt comes to rest overnight.
    change: 'humidityStandard',
    takes: 12 * minutes(60),
    instead: (test, sources) => {
      const known = limitOf(sources, 'shared.humidity');
      const isHeld = given(test.sideBySide?.shared?.humidity);
      if (isHeld || measureOf(test.entering) !== 'relativeHumidity' || known <= standardHumidity * 1.001) return null;
      const moves = { 'entering.humidity': 1, 'leaving.humidity': 1 };
      return [...without(sources, 'shared.humidity'), limited('shared.humidity', standardHumidity, moves)];
    },
  },
];

/** What an improvement is worked out from: the ratio, its causes with their effects, and the test's own work. */
export interface Improvable {
  readonly test: Test;
  readonly value: number;
  readonly sources: readonly Source[];
  readonly effects: readonly Effect[];
  readonly work: Work;
  readonly at: Float64Array;
}

/**
 * Every check that would make the ratio surer, the range that it would give if the figure stayed where it is, and whether that
 * would decide: the surest first, and last, where there are several that can be made on this visit, all of those together.
 */
export function improvementsOf(improvable: Improvable): readonly Improvement[] {
  const { test, sources } = improvable;
  const single = possible.flatMap(({ change, takes, instead }) => {
    const better = instead(test, sources);
    return better ? [improvement(improvable, change, takes, better)] : [];
  });
  single.sort((a, b) => a.u - b.u);
  const here = possible.filter(({ takes }) => takes <= thisVisit);
  let all = sources;
  let takes = 0;
  let count = 0;
  for (const one of here) {
    const better = one.instead(test, all);
    if (!better) continue;
    all = better;
    takes += one.takes;
    count++;
  }
  return count < 2 ? single : [...single, improvement(improvable, 'all', takes, all)];
}

function improvement(
  { test, value, sources, effects, work, at }: Improvable,
  change: string,
  takes: number,
  better: readonly Source[],
): Improvement {
  const fresh = better.filter((source) => !sources.includes(source));
  const kept = effects.filter((_, i) => better.includes(sources[i] as Source));
  const [added = []] = effectsOf(work, testInputs, at, Float64Array.of(value), fresh);
  const { u, interval } = combined(value, [...kept, ...added], test.confidence);
  const { low, high } = outward(interval);
  return { change, u, low, high, decides: decides({ low, high }, test.line), takes };
}
