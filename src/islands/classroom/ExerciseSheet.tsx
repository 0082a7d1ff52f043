import type { ComponentChildren } from 'preact';
import type { Exercise, Figure } from '~/job/classroom/types.ts';
import * as words from '~/words/en/exercises.ts';
import { GridTable } from './GridTable.tsx';
import { figureText } from './said.ts';

interface Props {
  readonly exercises: readonly Exercise[];
  /** What stands under each exercise: nothing on the sheet of the class, the way there on that of the answers. */
  readonly under?: (exercise: Exercise) => ComponentChildren;
}

/** Exercises as they are given to a class, with room to write the answers or with the answers in it. */
export function ExerciseSheet({ exercises, under }: Props) {
  return (
    <ol class="exercises">
      {exercises.map((exercise) => (
        <li key={exercise.kind}>
          <h3>{words.kinds[exercise.kind].name}</h3>
          <p>{words.kinds[exercise.kind].ask}</p>
          {exercise.grid && <GridTable grid={exercise.grid} />}
          <Figures name={words.given} of={exercise.given} />
          {under ? (
            <Figures name={words.answers} of={exercise.answers} />
          ) : (
            <Figures name={words.answers} of={exercise.answers} isBlank />
          )}
          {exercise.verdict && (
            <p>
              {words.verdictName}: {under ? <b>{words.verdicts[exercise.verdict]}</b> : <span class="blank-line" />}
            </p>
          )}
          {under?.(exercise)}
        </li>
      ))}
    </ol>
  );
}

function Figures({ name, of, isBlank = false }: { name: string; of: readonly Figure[]; isBlank?: boolean }) {
  return (
    <table class="ledger exercise-figures">
      <caption>{name}</caption>
      <tbody>
        {of.map((figure) => (
          <tr key={figure.name}>
            <th scope="row">{words.figures[figure.name]}</th>
            <td class="number">{isBlank ? <span class="blank-line" /> : figureText(figure)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
