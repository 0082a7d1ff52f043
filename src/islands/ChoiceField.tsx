import { choiceOf } from '~/job/choices.ts';
import { Choices } from '~/parts/Choices.tsx';
import { type AskedChoice, choiceWords } from '~/words/en/choices.ts';
import { edit, job } from './jobStore.ts';

interface Props {
  readonly of: AskedChoice;
  /** Only these of its values, in this order. */
  readonly only?: readonly string[];
  /** What counts while nobody has said otherwise, where the table of choices leaves it to the caller. */
  readonly assumed?: string;
  /** Shows an unanswered question as unanswered, though something is taken for granted meanwhile. */
  readonly open?: boolean;
}

/** One choice of the job. */
export function ChoiceField({ of: key, only, assumed, open = false }: Props) {
  const { ask, options } = choiceWords[key];
  const chosen = job.value.chosen[key];
  const usual = open ? undefined : (assumed ?? choiceOf(key).assumed);
  const shown = only
    ? Object.fromEntries(only.map((value) => [value, (options as Record<string, string>)[value] ?? value]))
    : options;
  return (
    <Choices
      id={`choice-${key}`}
      ask={ask}
      options={shown}
      value={chosen ?? usual}
      assumed={chosen === undefined && usual !== undefined}
      onChoose={(value) => edit({ slot: 'chosen', key, to: value })}
    />
  );
}
