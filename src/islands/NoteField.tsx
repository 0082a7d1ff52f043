import type { NoteKey } from '~/job/types.ts';
import { TextField } from '~/parts/TextField.tsx';
import { edit, job } from './jobStore.ts';

/** One note of the job: words that change no figure. */
export function NoteField({ of: key, name, long = false }: { of: NoteKey; name: string; long?: boolean }) {
  const value = job.value.notes[key] ?? '';
  return (
    <TextField
      id={`note-${key}`}
      name={name}
      value={value}
      long={long}
      onInput={(text, field) => {
        if (!edit({ slot: 'notes', key, to: text === '' ? undefined : text })) field.value = value;
      }}
    />
  );
}
