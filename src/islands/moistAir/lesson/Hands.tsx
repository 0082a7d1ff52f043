import { handWords } from '~/words/en/moistAirLesson.ts';
import { hands } from './model.ts';

/** Three counters for the teacher: how many hands are up for each answer. They are kept nowhere, and another question clears them. */
export function Hands() {
  return (
    <details class="fold">
      <summary>{handWords.fold}</summary>
      <p class="hint">{handWords.say}</p>
      <div class="lesson-hands">
        {handWords.letters.map((letter, index) => (
          <Counter key={letter} letter={letter} index={index} />
        ))}
      </div>
    </details>
  );
}

function Counter({ letter, index }: { letter: string; index: number }) {
  const count = hands.value[index] ?? 0;
  const add = (more: number) => () => {
    hands.value = hands.value.map((one, at) => (at === index ? Math.max(0, one + more) : one));
  };
  return (
    <div role="group" aria-label={handWords.counter(letter)} class="lesson-counter">
      <b>{letter}</b>
      <button
        type="button"
        class="hands-key"
        aria-label={handWords.less(letter)}
        disabled={count === 0}
        onClick={add(-1)}
      >
        −
      </button>
      <output>{count}</output>
      <button type="button" class="hands-key" aria-label={handWords.more(letter)} onClick={add(1)}>
        +
      </button>
    </div>
  );
}
