import { lastSet } from '~/job/classroom/sets.ts';
import type { SpoiltTest } from '~/job/classroom/spoiltTypes.ts';
import { href } from '~/parts/href.ts';
import { setHeading } from '~/words/en/exercises.ts';
import * as words from '~/words/en/spoilt.ts';
import { makeSpoilt } from './make.ts';
import { SetBar } from './SetBar.tsx';
import { SpoiltSheet } from './SpoiltSheet.tsx';
import { useSet } from './useSet.ts';

/** The sheet of a class: tests, one of them sound. */
export function Spoilt({ first }: { first: readonly SpoiltTest[] }) {
  const set = useSet(first, makeSpoilt, lastSet);
  return (
    <div class="set">
      <SetBar of={set} last={lastSet} other={{ address: href('/classroom/spoilt/answers/'), name: words.toAnswers }} />
      <h2>{setHeading(set.set)}</h2>
      <p>{words.ask}</p>
      <SpoiltSheet tests={set.content} />
    </div>
  );
}
