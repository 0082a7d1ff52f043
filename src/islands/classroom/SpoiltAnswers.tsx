import { lastSet } from '~/job/classroom/sets.ts';
import type { SpoiltTest } from '~/job/classroom/spoiltTypes.ts';
import { href } from '~/parts/href.ts';
import { setHeading } from '~/words/en/exercises.ts';
import * as words from '~/words/en/spoilt.ts';
import { percent } from '../show.ts';
import { makeSpoilt } from './make.ts';
import { SetBar } from './SetBar.tsx';
import { SpoiltSheet } from './SpoiltSheet.tsx';
import { factText } from './said.ts';
import { useSet } from './useSet.ts';

function Solved({ test }: { test: SpoiltTest }) {
  const { name, why } = test.mistake === null ? words.nothing : words.mistakes[test.mistake];
  const giveaways = test.facts.filter((fact) => test.giveaways.includes(fact.name));
  return (
    <>
      <p>
        <b>{name}.</b> {why}
      </p>
      {giveaways.length > 0 && (
        <>
          <p>{words.giveaway}:</p>
          <ul>
            {giveaways.map((fact) => (
              <li key={fact.name}>
                {words.facts[fact.name]}: <b>{factText(fact)}</b>
              </li>
            ))}
          </ul>
          <p>{test.without === null ? words.lost : words.without(percent(test.without.share))}</p>
        </>
      )}
    </>
  );
}

/** The answer sheet: what was wrong with each test, and the test. */
export function SpoiltAnswers({ first }: { first: readonly SpoiltTest[] }) {
  const set = useSet(first, makeSpoilt, lastSet);
  return (
    <div class="set">
      <SetBar of={set} last={lastSet} other={{ address: href('/classroom/spoilt/'), name: words.toTests }} />
      <h2>{setHeading(set.set)}</h2>
      <SpoiltSheet tests={set.content} under={(test) => <Solved test={test} />} />
    </div>
  );
}
