/** The question of a lesson that is asked, and its answer once it is asked for. */
import { useState } from 'preact/hooks';
import type { LessonKey } from '~/job/classroom/lessons/types.ts';
import { useLatest } from '../useLatest.ts';
import type { AnsweredInWords, AskedInWords } from './late.ts';

export interface Question {
  readonly number: number;
  readonly asked: AskedInWords;
  /** `null` until it is asked for. */
  readonly shown: AnsweredInWords | null;
  /** The part that knows answers and makes questions could not be fetched. */
  readonly failed: boolean;
  readonly show: () => Promise<void>;
  readonly another: () => Promise<void>;
}

/** Question 1 stands in the page, without its answer. Answers and other questions come with a part that is fetched when they are asked for. */
export function useQuestion(of: LessonKey, first: AskedInWords): Question {
  const [now, setNow] = useState<Pick<Question, 'number' | 'asked' | 'shown'>>({
    number: 1,
    asked: first,
    shown: null,
  });
  const [failed, setFailed] = useState(false);
  const begin = useLatest();
  const fetched = async (next: (part: typeof import('./late.ts')) => Promise<Partial<typeof now>>) => {
    const isLatest = begin();
    try {
      const more = await next(await import('./late.ts'));
      if (!isLatest()) return;
      setNow({ ...now, ...more });
      setFailed(false);
    } catch {
      if (isLatest()) setFailed(true);
    }
  };
  return {
    ...now,
    failed,
    show: () => fetched(async ({ answeredOf }) => ({ shown: await answeredOf(of, now.number) })),
    another: () =>
      fetched(async ({ askedOf }) => {
        const number = now.number + 1;
        return { number, asked: await askedOf(of, number), shown: null };
      }),
  };
}
