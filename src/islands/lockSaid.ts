/** A change after locking, in the words of the page. */
import type { ChangeAfterLock } from '~/job/lock.ts';
import { choiceWords } from '~/words/en/choices.ts';
import { identityChoiceWords } from '~/words/en/identityChoices.ts';
import { joinAirflowWords } from '~/words/en/joinAirflow.ts';
import { joinLineSetWords } from '~/words/en/joinLineSet.ts';
import { joinSureWords } from '~/words/en/joinSure.ts';
import { lockedTables, lockWords as words } from '~/words/en/lock.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { clock } from './show.ts';

// A change may be on any sheet.
Object.assign(choiceWords, identityChoiceWords);
joinAirflowWords();
joinLineSetWords();
joinSureWords();

export interface ChangeSaid {
  readonly what: string;
  readonly was: string;
  readonly now: string;
  readonly at: string;
}

export function changeSaid({ slot, key, row, was, now, at }: ChangeAfterLock): ChangeSaid {
  const one = (text: string) => textOf(slot, key, row, text) || words.nothing;
  return { what: nameOf(slot, key, row), was: one(was), now: one(now), at: clock(at) };
}

function nameOf(slot: ChangeAfterLock['slot'], key: string, row: string): string {
  if (slot === 'entered')
    return (quantityWords as Readonly<Record<string, { inSentence: string }>>)[key]?.inSentence ?? key;
  if (slot === 'chosen') return choiceOf(key)?.ask ?? words.choice;
  if (slot === 'notes') return words.note;
  const table = lockedTables[key] ?? words.table;
  return row === '' ? table : words.row(table, row);
}

function textOf(slot: ChangeAfterLock['slot'], key: string, row: string, text: string): string {
  if (slot === 'chosen') return choiceOf(key)?.options[text] ?? text;
  return slot === 'tables' && row === '' ? words.rows(text) : text;
}

const choiceOf = (key: string) =>
  (choiceWords as Readonly<Record<string, { ask: string; options: Readonly<Record<string, string>> }>>)[key];
