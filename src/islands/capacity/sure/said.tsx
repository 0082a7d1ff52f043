import type { Verdict } from '~/calc/types.ts';
import { VerdictMark } from '~/parts/VerdictMark.tsx';
import { shareWords as say, verdictNames, verdictReasons, verdictSentences } from '~/words/en/verdict.ts';
import type { BarWords } from '../../SheetBar.tsx';
import { percent } from '../../show.ts';
import { estimateBand } from '../estimate.ts';
import type { Sentences } from '../said.ts';
import { deciding, narrowing } from './improvement.ts';
import { endsText, isAsked, type Reason, reasonOf, shown, verdict } from './verdict.ts';

/** What the bar says of the share: the verdict with its mark, or what it still waits for; `null` without a share. */
export function barOfVerdict(): BarWords | null {
  const range = shown.value;
  if (!range) return null;
  const share = percent(range.value);
  const found = verdict.value;
  const marked = (small: string) => (estimateBand.value === null ? small : say.barEstimate(small));
  if (!found || !isAsked.value) {
    const small = isAsked.value ? say.barSpeedUnasked : say.barUnasked;
    return { big: share, after: say.ofWhatItShould, sentence: false, small: marked(small) };
  }
  return {
    mark: <VerdictMark of={found.outcome} />,
    big: nameOf(found),
    sentence: true,
    small: marked(
      found.because === 'higherThanItCanMake' ? say.barTooHigh(share) : say.barRange(share, ...endsText(range)),
    ),
  };
}

const nameOf = ({ outcome, line }: Verdict) => verdictNames[outcome](percent(line));

/** The sentences of the answer; `null` without a share. */
export function sentencesOfVerdict(): Sentences | null {
  const range = shown.value;
  if (!range) return null;
  const third = estimateBand.value === null ? undefined : say.estimate(estimateBand.value);
  const found = verdict.value;
  if (!found || !isAsked.value) {
    const first = say.makes(percent(range.value));
    const ends = endsText(range);
    const second = isAsked.value ? `${say.between(...ends)} ${say.speedUnasked}` : say.unasked(...ends);
    return { first, second, ...(third && { third }) };
  }
  const [name, between] = say.marked(nameOf(found), percent(range.value), ...endsText(range));
  return {
    mark: (
      <p class="answer-verdict">
        <VerdictMark of={found.outcome} />
        <span>
          <b>{name}</b> {between}
        </span>
      </p>
    ),
    first: verdictSentences[reasonOf(found)],
    second: secondOf(found, percent(range.value)),
    ...(third && { third }),
  };
}

function secondOf(found: Verdict, share: string): string {
  const ends = endsText(found);
  const low = percent(found.low);
  const reasons: Readonly<Record<Reason, () => string>> = {
    meets: () => verdictReasons.meets(share, low, percent(found.line)),
    short: () => verdictReasons.short(share, percent(found.high)),
    improvable: () => {
      const check = deciding.value;
      return verdictReasons.improvable(share, ...ends, check ? narrowing(check) : '');
    },
    tooNear: () => verdictReasons.tooNear(low),
    higherThanItCanMake: () => verdictReasons.higherThanItCanMake,
  };
  return reasons[reasonOf(found)]();
}
