import { lastSet } from '~/job/classroom/sets.ts';
import type { Exercise } from '~/job/classroom/types.ts';
import { href } from '~/parts/href.ts';
import * as words from '~/words/en/exercises.ts';
import { ExerciseSheet } from './ExerciseSheet.tsx';
import { makeExercises } from './make.ts';
import { SetBar } from './SetBar.tsx';
import { useSet } from './useSet.ts';

/** The sheet of a class: exercises, and room for the answers. */
export function Exercises({ first }: { first: readonly Exercise[] }) {
  const set = useSet(first, makeExercises, lastSet);
  const other = { address: href('/classroom/exercises/answers/'), name: words.toAnswers };
  return (
    <div class="set">
      <SetBar of={set} last={lastSet} other={other} />
      <h2>{words.setHeading(set.set)}</h2>
      <ExerciseSheet exercises={set.content} />
    </div>
  );
}
