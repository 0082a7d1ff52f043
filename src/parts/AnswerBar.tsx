import type { ComponentChildren } from 'preact';
import { parts } from '~/words/en/parts.ts';

export interface AnswerBarProps {
  /** The mark of a verdict, drawn before its words. */
  readonly mark?: ComponentChildren;
  readonly big: ComponentChildren;
  /** A sentence is set smaller than a figure. */
  readonly sentence: boolean;
  readonly small: string;
  readonly next: string;
  readonly onAnswer: () => void;
  readonly onNext: () => void;
}

/** The answer so far, always in view above the keyboard, and the one key that leads on. */
export function AnswerBar({ mark, big, sentence, small, next, onAnswer, onNext }: AnswerBarProps) {
  return (
    <div class="answer-bar" role="region" aria-label={parts.answerSoFar}>
      <div>
        {mark}
        <button type="button" class="answer-key" onClick={onAnswer}>
          <b class={sentence ? 'sentence' : undefined}>{big}</b>
          <span>{small}</span>
        </button>
        <button type="button" class="next" onClick={onNext}>
          {next}
        </button>
      </div>
    </div>
  );
}
