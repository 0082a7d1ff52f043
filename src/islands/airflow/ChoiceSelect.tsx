import { choiceOf } from '~/job/choices.ts';
import { Select } from '~/parts/Select.tsx';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { type AskedChoice, choiceWords } from '~/words/en/choices.ts';
import { parts } from '~/words/en/parts.ts';
import { edit, job } from '../jobStore.ts';

/** One choice of the job as the phone's own list, where boxes for its long answers would fill the screen. */
export function ChoiceSelect({ of: key }: { of: AskedChoice }) {
  const { ask, options } = choiceWords[key];
  const { assumed } = choiceOf(key);
  const chosen = job.value.chosen[key];
  const isAssumed = chosen === undefined && assumed !== undefined;
  const value = chosen ?? assumed;
  return (
    <Select
      id={`choice-${key}`}
      ask={
        <>
          {ask} {isAssumed && <small>{parts.assumed}</small>}
        </>
      }
      options={options}
      value={value}
      open={words.choose}
      onChoose={(to, select) => {
        if (!edit({ slot: 'chosen', key, to })) select.value = value ?? '';
      }}
    />
  );
}
