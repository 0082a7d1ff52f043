import type { LessonKey } from '~/job/classroom/lessons/types.ts';
import { lessonQuestions, tableName } from '~/words/en/lessonQuestions.ts';
import { GridTable } from '../classroom/GridTable.tsx';
import { Lines } from '../classroom/Lines.tsx';
import { factText } from '../classroom/said.ts';
import type { AskedInWords } from './late.ts';
import { textsOf } from './said.ts';

/** What a class is told before it is asked: a sentence, or a table. */
export function Told({ of, asked }: { of: LessonKey; asked: AskedInWords }) {
  const { told, grid, asTable, lines } = asked;
  return (
    <>
      <p>{lessonQuestions[of].told(textsOf(told))}</p>
      {grid && <GridTable grid={grid} />}
      {asTable && <Lines name={tableName} of={told.map((one, at) => [lines[at] ?? '', factText(one)] as const)} />}
    </>
  );
}
