/** What is fetched when an answer, or another question, is asked for: nothing of it stands in the page before. */
import { lessonQuestion } from '~/job/classroom/lessons/index.ts';
import type { Answered, Asked, LessonKey, Tell } from '~/job/classroom/lessons/types.ts';
import { toldInTable } from '~/words/en/lessonQuestions.ts';
import { lessonWhy } from '~/words/en/lessonWhy.ts';
import { facts, lost, mistakes, without } from '~/words/en/spoilt.ts';
import { percent } from '../show.ts';
import { textsOf } from './said.ts';

/** A question with what only some of them have in words. */
export interface AskedInWords extends Asked {
  /** Names of what is told in a table, line by line. */
  readonly lines: readonly string[];
  /** Names of the few to choose from. */
  readonly options: readonly string[];
}

export async function askedOf(of: LessonKey, number: number): Promise<AskedInWords> {
  const { asked } = await lessonQuestion(of, number);
  const { control, told, asTable } = asked;
  return {
    ...asked,
    lines: asTable ? told.map(nameOf) : [],
    options: control.by === 'choice' ? control.options.map((one) => mistakes[one].name) : [],
  };
}

const isFact = (name: string): name is keyof typeof facts => name in facts;
const nameOf = ({ name }: Tell) => toldInTable[name] ?? (isFact(name) ? facts[name] : '');

/** An answer, and why it is that, in the units of the page. */
export interface AnsweredInWords extends Answered {
  readonly why: () => string;
}

export async function answeredOf(of: LessonKey, number: number): Promise<AnsweredInWords> {
  const { asked, answered } = await lessonQuestion(of, number);
  return {
    ...answered,
    why: () => (of === 'spoilt' ? whySpoilt(asked, answered) : lessonWhy[of](textsOf(answered.told))),
  };
}

/** What was done wrong, and what the test comes to without it. */
function whySpoilt({ control }: Asked, { answer, marks }: Answered): string {
  const made = control.by === 'choice' ? control.options[answer] : undefined;
  const share = marks[0]?.values[0];
  return `${made ? mistakes[made].why : ''} ${share === undefined ? lost : without(percent(share))}`;
}
