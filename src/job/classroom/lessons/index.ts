/** The questions of the lessons by their number, the same on every device. Question 1 has the figures of the lesson's own text. */
import { drawing } from '../draw.ts';
import { type Answered, type Asked, type Lesson, type LessonKey, lessonKeys } from './types.ts';

export interface LessonQuestion {
  readonly asked: Asked;
  readonly answered: Answered;
}

/** Seeds of neighbouring questions and of other lessons lie this far apart. */
const apart = 16;
const beyondExercises = 1 << 21;

function questionsOf<SetUp>({ first, draw, ask, answer }: Lesson<SetUp>, place: number) {
  return (number: number): LessonQuestion => {
    let setUp: SetUp | null = number === 1 ? first : null;
    const chance = drawing(beyondExercises + number * apart + place);
    while (setUp === null) setUp = draw(chance);
    return { asked: ask(setUp), answered: answer(setUp) };
  };
}

/** Each comes with its own part of the calculation, which a page fetches when it is asked for. */
const parts: Readonly<Record<LessonKey, (place: number) => Promise<(number: number) => LessonQuestion>>> = {
  nominal: async (place) => questionsOf((await import('./capacity.ts')).nominal, place),
  drying: async (place) => questionsOf((await import('./air.ts')).drying, place),
  lessAir: async (place) => questionsOf((await import('./air.ts')).lessAir, place),
  twoProbes: async (place) => questionsOf((await import('./probes.ts')).twoProbes, place),
  oneAir: async (place) => questionsOf((await import('./air.ts')).oneAir, place),
  betweenRows: async (place) => questionsOf((await import('./capacity.ts')).betweenRows, place),
  blower: async (place) => questionsOf((await import('./blower.ts')).blower, place),
  spoilt: async (place) => questionsOf((await import('./spoilt.ts')).spoilt, place),
};

/** A question of a lesson; its number is a whole one from 1. */
export async function lessonQuestion(of: LessonKey, number: number): Promise<LessonQuestion> {
  const make = await parts[of](lessonKeys.indexOf(of));
  return make(number);
}
