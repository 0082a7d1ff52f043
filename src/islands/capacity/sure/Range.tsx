import { useEffect } from 'preact/hooks';
import { ShareScale } from '~/charts/ShareScale.tsx';
import { results } from '~/words/en/results.ts';
import { rangeWords, shareWords, verdictNames } from '~/words/en/verdict.ts';
import { draws } from '../../drawOptions.ts';
import { percent } from '../../show.ts';
import { edit } from '../../store.ts';
import { isDesk } from '../model.ts';
import { keepDrawing } from './draws.ts';
import { endsText, shown, verdict } from './verdict.ts';

/** The share and its range on a scale with the line, what the range is, and the key for the other confidence. */
export function Range() {
  useEffect(keepDrawing, []);
  const range = shown.value;
  if (!range) return null;
  const share = percent(range.value);
  const line = percent(range.line);
  const found = verdict.value;
  const name = found ? verdictNames[found.outcome](line) : shareWords.withheld.replace(/\.$/, '');
  const words = {
    line: results.scaleLine(line),
    should: results.scaleShould,
    summary: rangeWords.summary(share, ...endsText(range), line, name),
  };
  const nineteen = range.confidence > 0.92;
  return (
    <>
      <ShareScale share={range.value} line={range.line} range={range} width={isDesk.value ? 600 : 358} words={words} />
      <p class="answer-note">
        {nineteen ? rangeWords.nineteen : rangeWords.nine}{' '}
        <button
          type="button"
          class="plain-button"
          onClick={() => edit({ slot: 'chosen', key: 'sure.confidence', to: nineteen ? undefined : 'nineteen' })}
        >
          {nineteen ? rangeWords.backToNine : rangeWords.askNineteen}
        </button>
      </p>
      {found?.by === 'monteCarlo' && <p class="answer-note">{rangeWords.byDraws(draws.toLocaleString('en-US'))}</p>}
    </>
  );
}
