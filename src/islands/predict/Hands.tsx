import { handWords } from '~/words/en/predict.ts';

/** Hands up for A, B and C. */
export type Counts = readonly number[];
export const noHands: Counts = [0, 0, 0];

interface Props {
  readonly counts: Counts;
  /** What the letters are, where the answers do not carry them. */
  readonly say?: string;
  readonly onCount: (counts: Counts) => void;
}

/** Three counters for the teacher: how many hands are up for each answer. They are kept nowhere, and another question clears them. */
export function Hands({ counts, say = handWords.say, onCount }: Props) {
  const add = (to: number, more: number) => () => {
    onCount(counts.map((count, at) => (at === to ? Math.max(0, count + more) : count)));
  };
  return (
    <details class="fold">
      <summary>{handWords.fold}</summary>
      <p class="hint">{say}</p>
      <div class="lesson-hands">
        {handWords.letters.map((letter, at) => (
          <div key={letter} role="group" aria-label={handWords.counter(letter)} class="lesson-counter">
            <b>{letter}</b>
            <button
              type="button"
              class="hands-key"
              aria-label={handWords.less(letter)}
              disabled={counts[at] === 0}
              onClick={add(at, -1)}
            >
              −
            </button>
            <output>{counts[at]}</output>
            <button type="button" class="hands-key" aria-label={handWords.more(letter)} onClick={add(at, 1)}>
              +
            </button>
          </div>
        ))}
      </div>
    </details>
  );
}
