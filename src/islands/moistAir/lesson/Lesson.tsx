import { useEffect } from 'preact/hooks';
import { lesson } from '~/words/en/moistAirLesson.ts';
import { predict } from '~/words/en/predict.ts';
import { Hands } from '../../predict/Hands.tsx';
import { LessonTools } from '../../predict/LessonTools.tsx';
import { leaveFullScreen, useLarge } from '../../predict/large.ts';
import { percent, temperature } from '../../show.ts';
import { spokenAir } from '../said.ts';
import { inClass, large } from '../view.ts';
import { Guess } from './Guess.tsx';
import { LessonChart } from './LessonChart.tsx';
import { answerAir, ask, guess, hands, question, seed, shown } from './model.ts';
import { figureOf, type Question } from './questions.ts';

/** Predict first: the question, the ordinary control to answer with, and after "Show" guess and result together. */
export function Lesson() {
  useEffect(() => {
    ask(inClass.value ?? 1);
    return () => {
      large.value = false;
    };
  }, []);
  useLarge(large.value, () => {
    large.value = false;
  });
  const now = question.value;
  return (
    <div class="lesson">
      <section class="lesson-ask" aria-labelledby="lesson-ask">
        <p class="label quiet">{predict.number(seed.value)}</p>
        <h2 id="lesson-ask">{asked(now)}</h2>
        {shown.value ? <Result of={now} /> : <Guess of={now} />}
        <Hands
          counts={hands.value}
          onCount={(counts) => {
            hands.value = counts;
          }}
        />
        <LessonTools
          isLarge={large.value}
          onLarge={(isLarge) => {
            large.value = isLarge;
          }}
          onAnother={() => ask(seed.value + 1)}
        >
          <button
            type="button"
            class="plain-button"
            onClick={() => {
              leaveFullScreen();
              inClass.value = null;
            }}
          >
            {lesson.leave}
          </button>
        </LessonTools>
      </section>
      <LessonChart />
    </div>
  );
}

function asked({ kind, given, share, end }: Question): string {
  const [first, second] = given.map(({ dryBulb, relativeHumidity }) =>
    lesson.air(whole(temperature(dryBulb)), percent(relativeHumidity)),
  );
  if (kind === 'wetBulb') return lesson.ask.wetBulb(first ?? '');
  if (kind === 'heating') return lesson.ask.heating(first ?? '', whole(temperature(end)));
  if (kind === 'mixing') return lesson.ask.mixing(percent(share / 100), first ?? '', second ?? '');
  return lesson.ask.lessAir(percent(share / 100));
}

/** The questions have whole figures in their own system. */
const whole = (text: string) => text.replace('.0', '');

/** Guess and result in one sentence, and why. */
function Result({ of }: { of: Question }) {
  const said = guess.value;
  const answer = inWords(of, answerAir(of));
  return (
    <div class="lesson-result" role="status">
      <p>
        <b>{said ? predict.youSaid(inWords(of, said), answer) : predict.itIs(answer)}</b>
      </p>
      <p>{lesson.why[of.kind]}</p>
    </div>
  );
}

function inWords({ kind }: Question, air: Parameters<typeof spokenAir>[0]): string {
  if (figureOf[kind] === 'wetBulb') return temperature(air.dryBulb);
  return figureOf[kind] === 'relativeHumidity' ? percent(air.relativeHumidity) : spokenAir(air, 'relativeHumidity');
}
