import { Check } from '~/parts/Echo.tsx';
import { fileProblems, jobsPage as words } from '~/words/en/jobs.ts';
import { incoming, lookInto, refusedFile, takeIn, taken } from './model.ts';

/** Jobs from a file: first what it holds, and nothing is kept before somebody says so. */
export function BringIn() {
  const found = incoming.value;
  const refused = refusedFile.value;
  return (
    <>
      <label class="file-key">
        <input
          type="file"
          accept=".json,application/json"
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? [];
            if (file) void lookInto(file);
            // The same file may be opened again after it was changed.
            event.currentTarget.value = '';
          }}
        />
        <span>{words.bring}</span>
      </label>
      <div role="status">
        {refused && <Check>{fileProblems[refused.reason](refused.at)}</Check>}
        {taken.value !== null && <p>{words.taken(taken.value)}</p>}
        {found && <Found of={found} />}
      </div>
    </>
  );
}

function Found({ of }: { of: NonNullable<typeof incoming.value> }) {
  const { fresh, same, differing } = of;
  const parts = words.brings(fresh.length, same.length, differing.length);
  return (
    <>
      <p>{parts === '' ? words.holdsNone : words.file(parts)}</p>
      {fresh.length + differing.length > 0 && (
        <p class="tools">
          <button type="button" class="action" onClick={() => void takeIn(of)}>
            {words.take}
          </button>
          <button
            type="button"
            class="plain-button"
            onClick={() => {
              incoming.value = null;
            }}
          >
            {words.leave}
          </button>
        </p>
      )}
    </>
  );
}
