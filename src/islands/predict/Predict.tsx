import { useEffect, useRef, useState } from 'preact/hooks';
import type { LessonKey } from '~/job/classroom/lessons/types.ts';
import { failed, lessonQuestions, toSay } from '~/words/en/lessonQuestions.ts';
import { handWords, predict } from '~/words/en/predict.ts';
import { followUnits } from '../opening.ts';
import { endText, Guess, guessOf, nothingSaid, saidEarly } from './Guess.tsx';
import { Hands, noHands } from './Hands.tsx';
import { LessonTools } from './LessonTools.tsx';
import { useLarge } from './large.ts';
import type { AskedInWords } from './late.ts';
import { Picture } from './Picture.tsx';
import { Result } from './Result.tsx';
import { ShowKeys } from './ShowKeys.tsx';
import { answerText } from './said.ts';
import { Told } from './Told.tsx';
import { useQuestion } from './useQuestion.ts';

interface Props {
  readonly of: LessonKey;
  /** Question 1, without its answer. */
  readonly first: AskedInWords;
}

/** Predict first: the question of a lesson, one control to answer with, and after “Show” guess and result drawn together. Guesses are kept nowhere. */
export function Predict({ of, first }: Props) {
  const id = `${of}-guess`;
  const box = useRef<HTMLElement>(null);
  const { number, asked, shown, failed: isLost, show, another } = useQuestion(of, first);
  const [said, say] = useState(() => saidEarly(id));
  const [missing, miss] = useState(false);
  const [counts, count] = useState(noHands);
  const [isLarge, setLarge] = useState(false);
  useEffect(followUnits, []);
  useLarge(isLarge, () => setLarge(false));
  useEffect(() => {
    if (!isLarge) return;
    // What stands above it goes, and comes back: the question stays in sight.
    box.current?.scrollIntoView();
    return () => box.current?.scrollIntoView();
  }, [isLarge]);
  const { control, options } = asked;
  const { ask, guess: name } = lessonQuestions[of];
  const guess = guessOf(control, said);
  const isChoice = control.by === 'choice';
  const text = (of: number) => (isChoice ? lettered(options, of) : answerText(control, of));
  const begin = () => {
    say(nothingSaid);
    miss(false);
    count(noHands);
  };
  return (
    <section ref={box} class="predict" aria-labelledby={`${of}-ask`} data-large={isLarge ? '' : undefined}>
      <p class="label quiet">{predict.number(number)}</p>
      <Told of={of} asked={asked} />
      <h3 id={`${of}-ask`}>{ask}</h3>
      {!shown && <p class="predict-paper">{toSay.onPaper}</p>}
      <Picture
        asked={asked}
        ask={ask}
        guess={isChoice ? null : guess}
        answered={shown}
        isLarge={isLarge}
        onGuess={shown || isChoice ? undefined : (si) => say({ text: endText(control, si), chosen: null })}
      />
      {shown ? (
        <Result guess={guess === null ? null : text(guess)} answer={text(shown.answer)} why={shown.why()} />
      ) : (
        <form
          class="lesson-guess"
          onSubmit={(event) => {
            event.preventDefault();
            miss(guess === null);
            if (guess !== null) void show();
          }}
        >
          <Guess
            id={id}
            name={name}
            control={control}
            options={options}
            said={said}
            isMissing={missing}
            onSay={(next) => {
              say(next);
              miss(false);
            }}
          />
          <ShowKeys
            onWithout={() => {
              say(nothingSaid);
              void show();
            }}
          />
        </form>
      )}
      {isLost && <p role="alert">{failed}</p>}
      <Hands counts={counts} onCount={count} {...(isChoice && { say: handWords.sayLetters })} />
      <LessonTools
        isLarge={isLarge}
        onLarge={setLarge}
        onAnother={() => {
          begin();
          void another();
        }}
      />
    </section>
  );
}

const lettered = (options: readonly string[], at: number) =>
  `${handWords.letters[at]}, ${(options[at] ?? '').replace(/^./, (first) => first.toLowerCase())}`;
