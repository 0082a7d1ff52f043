import type { Rule } from '../facts.ts';
import { given } from '../readings.ts';
import { humidityCompared, measureOf } from '../sideBySide.ts';
import { amount } from '../trace.ts';
import type { Amount, ProbeDifference, Test } from '../types.ts';
import { usual } from './defaults.ts';
import { driftBeyond } from './probeSources.ts';
import { isTooHigh, tooHigh } from './verdict.ts';

function humidityAmount(symbol: string, test: Test, value: number): Amount {
  const relative = measureOf(test.leaving) === 'relativeHumidity';
  return amount(symbol, relative ? 'fraction' : 'temperatureDifference', value);
}

/** The differences that were found, the one in return air first. */
function differencesOf({ sideBySide }: Test): readonly ProbeDifference[] {
  if (!given(sideBySide)) return [];
  return sideBySide.supplyAir ? [sideBySide.returnAir, sideBySide.supplyAir] : [sideBySide.returnAir];
}

/** What the probes and the plane they stand in say of how sure the readings are. */
export const sureRules: readonly Rule[] = [
  {
    // Further apart than two probes within their limits can be: one of them is out, and half of it is no good guess.
    code: 'probesApart',
    weight: 'doubt',
    about: 'test',
    amounts: ({ test }) => {
      const widest = Math.max(...differencesOf(test).map(({ dryBulb }) => Math.abs(dryBulb)));
      return widest > 2 * test.probeLimits.dryBulb ? [amount('Δt', 'temperatureDifference', widest)] : null;
    },
  },
  {
    code: 'probeHumiditiesApart',
    weight: 'doubt',
    about: 'test',
    amounts: ({ test }) => {
      if (!humidityCompared(test)) return null;
      const widest = Math.max(...differencesOf(test).map(({ humidity }) => Math.abs(humidity ?? 0)));
      return widest > 2 * test.probeLimits[measureOf(test.leaving)] ? [humidityAmount('Δφ', test, widest)] : null;
    },
  },
  {
    // The range is widened by it; a second check would say more.
    code: 'probesDrifted',
    weight: 'doubt',
    about: 'test',
    amounts: ({ test }) => {
      const drift = test.sideBySide?.drift;
      const beyond = driftBeyond(test);
      if (!drift || (!beyond.dryBulb && !beyond.humidity)) return null;
      return [amount('Δt', 'temperatureDifference', drift.dryBulb), humidityAmount('Δφ', test, drift.humidity)];
    },
  },
  {
    // A plane that no laboratory would take: more points, or a place further down.
    code: 'supplyUneven',
    weight: 'doubt',
    about: 'leaving',
    amounts: ({ test: { supplyPoints } }) => {
      if (!given(supplyPoints)) return null;
      const spread = Math.max(...supplyPoints) - Math.min(...supplyPoints);
      if (!(spread > usual.supplySpread)) return null;
      return [
        amount('Δt₂', 'temperatureDifference', spread),
        amount('Δt', 'temperatureDifference', usual.supplySpread),
      ];
    },
  },
  {
    // Airflow overstated, a cold spot at the supply probe, the wrong row or stage come first. That it cannot be told is the verdict.
    code: tooHigh,
    weight: 'doubt',
    about: 'test',
    amounts: ({ ratio }) => (ratio && isTooHigh(ratio) ? [amount('r', 'fraction', ratio.value)] : null),
  },
];
