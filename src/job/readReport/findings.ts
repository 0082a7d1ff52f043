/** What the figures of a report show and what they cannot: one small rule a finding. Figures are judged, and nobody's work. */

import { practice } from '../../calc/airflow/limits.ts';
import { emptyTest } from '../../calc/emptyTest.ts';
import type { SourceKey } from '../../calc/sources.ts';
import { amount } from '../../calc/trace.ts';
import type { Amount } from '../../calc/types.ts';
import type { ReportFacts } from './facts.ts';

/** `shows`: what may be said. `odd`: figures that do not go together, or seldom are so. `cannot`: what they do not say. */
export interface Finding {
  readonly code: string;
  readonly weight: 'shows' | 'odd' | 'cannot';
  readonly amounts: readonly Amount[];
  readonly source: SourceKey;
}

type Rule = (facts: ReportFacts) => Finding | null;

const finding = (
  code: string,
  weight: Finding['weight'],
  amounts: readonly Amount[] = [],
  source: SourceKey = 'definition',
): Finding => ({ code, weight, amounts, source });

const power = (value: number) => amount('Q', 'power', value);
const fraction = (value: number) => amount('r', 'fraction', value);
const isInside = (value: number, [low, high]: readonly [number, number]) => value >= low && value <= high;

/** Two shares that are printed in whole per cents may differ by so much. */
const rounding = 0.015;
/** More than this share of what it should make no system makes. */
const mostShare = 1.1;
/** K: two temperatures and their difference may be rounded to whole degrees. */
const dropRounding = 0.85;

const rules: readonly Rule[] = [
  // The capacity.
  ({ worked }) =>
    worked && finding('worksOut', 'shows', [worked.total, worked.low, worked.high].map(power), 'airEnthalpyMethod'),
  ({ worked, capacity }) => {
    if (!worked || capacity === null) return null;
    const amounts = [capacity, worked.low, worked.high].map(power);
    return isInside(capacity, [worked.low, worked.high])
      ? finding('agrees', 'shows', amounts, 'airEnthalpyMethod')
      : finding('disagrees', 'odd', amounts, 'airEnthalpyMethod');
  },
  ({ capacity, expected, share, absent }) =>
    capacity !== null && expected === null && (share === null || absent.has('expected'))
      ? finding('noExpectation', 'cannot')
      : null,

  // The share.
  (facts) => (isOfNameplate(facts) ? finding('ofNameplate', 'odd', ofNameplate(facts), 'ratingConditions') : null),
  ({ share, capacity, expected, shareOf }) => {
    if (share === null || capacity === null || expected === null || shareOf === 'nameplate') return null;
    const worked = capacity / expected;
    return Math.abs(worked - share) > rounding ? finding('shareDiffers', 'odd', [share, worked].map(fraction)) : null;
  },
  ({ share, capacity, expected }) => {
    if (share !== null || capacity === null || expected === null) return null;
    return finding('shareIs', 'shows', [capacity / expected].map(fraction));
  },
  (facts) => {
    const share = shareHere(facts);
    return share !== null && share > mostShare ? finding('higherThanItCanMake', 'odd', [fraction(share)]) : null;
  },
  ({ range }) => {
    if (!range) return null;
    const amounts = [range.low, range.high, emptyTest.line].map(fraction);
    if (range.low >= emptyTest.line) return finding('allAbove', 'shows', amounts, 'commonPractice');
    return finding(range.high < emptyTest.line ? 'allBelow' : 'lineInside', 'shows', amounts, 'commonPractice');
  },
  ({ share, range, absent }) =>
    share !== null && !range && absent.has('range') ? finding('noRange', 'cannot', [fraction(share)]) : null,

  // The drop in temperature.
  ({ drop, dropWorked }) =>
    drop !== null && dropWorked !== null && Math.abs(drop - dropWorked) > dropRounding
      ? finding('dropDiffers', 'odd', [drop, dropWorked].map(step))
      : null,
  ({ drop, dropWorked, usual }) => {
    const here = drop ?? dropWorked;
    if (here === null) return null;
    const range = usual('temperatureDrop');
    const amounts = [here, ...range].map(step);
    return isInside(here, range)
      ? finding('dropUsual', 'shows', amounts, 'commonPractice')
      : finding(here < range[0] ? 'dropLow' : 'dropHigh', 'odd', amounts, 'commonPractice');
  },
  ({ drop, dropWorked, worked }) => ((drop ?? dropWorked) !== null && !worked ? finding('dropAlone', 'cannot') : null),
  ({ dropWorked, entering, leaving, absent }) =>
    dropWorked !== null && !(entering && leaving) && (absent.has('returnHumidity') || absent.has('supplyHumidity'))
      ? finding('noHumidity', 'cannot')
      : null,
  ({ leaving, usual }) => {
    const range = usual('supplyHumidity');
    if (!leaving || isInside(leaving.relativeHumidity, range)) return null;
    const amounts = [leaving.relativeHumidity, ...range].map((value) => amount('φ₂', 'fraction', value));
    return finding(leaving.relativeHumidity < range[0] ? 'supplyDry' : 'supplyWet', 'odd', amounts, 'commonPractice');
  },

  // The airflow.
  ({ perTon, usual }) => {
    if (perTon === null) return null;
    const range = usual('airflowPerCapacity');
    const amounts = [perTon, ...range].map((value) => amount('V̇/Q', 'volumeFlow', value));
    return isInside(perTon, range)
      ? finding('airflowUsual', 'shows', amounts, 'commonPractice')
      : finding(perTon < range[0] ? 'airflowLow' : 'airflowHigh', 'odd', amounts, 'commonPractice');
  },
  ({ airflow, airflowBy }) =>
    airflow !== null && airflowBy === 'rule' ? finding('airflowByRule', 'cannot', [], 'commonPractice') : null,
  ({ airflow, airflowBy }) => (airflow !== null && airflowBy === 'unsaid' ? finding('airflowUnsaid', 'cannot') : null),
  ({ static: pressure }) => {
    if (pressure === null) return null;
    const amounts = [pressure, practice.highStatic].map((value) => amount('p', 'airPressure', value));
    return pressure < practice.highStatic
      ? finding('staticBelow', 'shows', amounts, 'highStatic')
      : finding('staticHigh', 'odd', amounts, 'highStatic');
  },
  ({ static: pressure, airflow }) =>
    pressure !== null && airflow === null ? finding('staticAlone', 'cannot', [], 'fanLaws') : null,
  ({ compared, entering, leaving }) =>
    (compared === 'no' || compared === 'unsaid') && entering && leaving
      ? finding('notCompared', 'cannot', [], 'uncertaintyGuide')
      : null,
  ({ nominal, capacity, worked }) =>
    nominal !== null && capacity === null && !worked
      ? finding('nameplateAlone', 'cannot', [amount('Qₙ', 'power', nominal)], 'ratingConditions')
      : null,
];

function step(value: number): Amount {
  return amount('Δt', 'temperatureDifference', value);
}

/** The share of what it should make that day, as far as it is one. */
function shareHere(facts: ReportFacts): number | null {
  const { share, capacity, expected } = facts;
  if (capacity !== null && expected !== null) return capacity / expected;
  return isOfNameplate(facts) ? null : share;
}

/** Whether the share of a report is one of the nameplate: as it says, or as its own figures give it. */
export function isOfNameplate({ share, shareOf, capacity, nominal, expected }: ReportFacts): boolean {
  if (share === null || shareOf === 'hereAndNow') return false;
  if (shareOf === 'nameplate') return true;
  if (capacity === null || nominal === null || expected !== null) return false;
  return Math.abs(capacity / nominal - share) <= rounding;
}

const ofNameplate = ({ share }: ReportFacts) => (share === null ? [] : [fraction(share)]);

/** Everything that can be said, in the order of the rules. */
export function findingsOf(facts: ReportFacts): readonly Finding[] {
  return rules.flatMap((rule) => rule(facts) ?? []);
}
