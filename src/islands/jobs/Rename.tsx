import { useEffect, useRef } from 'preact/hooks';
import { TextField } from '~/parts/TextField.tsx';
import { jobsPage as words } from '~/words/en/jobs.ts';
import { newName, rename, renaming } from './model.ts';

/** The key that opens the field: the focus goes back to it. */
export const renameKeyId = (id: string) => `rename-${id}`;

/** The address of a job, which is its name, to type anew: Enter or the key keeps it, Escape leaves it. */
export function Rename({ id }: { id: string }) {
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    form.current?.querySelector('input')?.focus();
    return () => document.getElementById(renameKeyId(id))?.focus();
  }, []);
  return (
    <form
      ref={form}
      onSubmit={(event) => {
        event.preventDefault();
        void rename(id, newName.value);
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') renaming.value = null;
      }}
    >
      <TextField
        id={`name-${id}`}
        name={words.nameField}
        value={newName.value}
        onInput={(text) => {
          newName.value = text;
        }}
      />
      <p class="tools">
        <button type="submit" class="plain-button">
          {words.renameKeep}
        </button>
        <button
          type="button"
          class="plain-button"
          onClick={() => {
            renaming.value = null;
          }}
        >
          {words.renameLeave}
        </button>
      </p>
    </form>
  );
}
