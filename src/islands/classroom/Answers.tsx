import { lastSet } from '~/job/classroom/sets.ts';
import type { Exercise } from '~/job/classroom/types.ts';
import { href } from '~/parts/href.ts';
import * as words from '~/words/en/exercises.ts';
import { WorkingLines } from '../WorkingLines.tsx';
import { ExerciseSheet } from './ExerciseSheet.tsx';
import { makeExercises } from './make.ts';
import { SetBar } from './SetBar.tsx';
import { useSet } from './useSet.ts';

const way = ({ steps }: Exercise) => (
  <details class="fold">
    <summary>{words.working}</summary>
    <div class="working-steps">
      <WorkingLines steps={steps} />
    </div>
  </details>
);

/** The answer sheet: the same exercises, their answers, and the way there. */
export function Answers({ first }: { first: readonly Exercise[] }) {
  const set = useSet(first, makeExercises, lastSet);
  const other = { address: href('/classroom/exercises/'), name: words.toExercises };
  return (
    <div class="set">
      <SetBar of={set} last={lastSet} other={other} />
      <h2>{words.setHeading(set.set)}</h2>
      <ExerciseSheet exercises={set.content} under={way} />
    </div>
  );
}
