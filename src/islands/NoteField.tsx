import type { NoteKey } from '~/job/types.ts';
import { TextField } from '~/parts/TextField.tsx';
import { edit, job } from './jobStore.ts';

interface Props {
  readonly of: NoteKey;
  readonly name: string;
  readonly long?: boolean;
  /** Where the same note can be written at two places of a page. */
  readonly id?: string;
}

/** One note of the job: words that change no figure. */
export function NoteField({ of: key, name, long = false, id = `note-${key}` }: Props) {
  const value = job.value.notes[key] ?? '';
  return (
    <TextField
      id={id}
      name={name}
      value={value}
      long={long}
      onInput={(text, field) => {
        if (!edit({ slot: 'notes', key, to: text === '' ? undefined : text })) field.value = value;
      }}
    />
  );
}
