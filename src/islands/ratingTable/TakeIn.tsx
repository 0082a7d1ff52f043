import { useState } from 'preact/hooks';
import { Check, Echo } from '~/parts/Echo.tsx';
import { TextField } from '~/parts/TextField.tsx';
import { identity } from '~/words/en/identity.ts';
import { refusalWords, tablePaste } from '~/words/en/ratingTable.ts';
import { job } from '../jobStore.ts';
import { NoteField } from '../NoteField.tsx';
import { Findings } from './Findings.tsx';
import { Meanings } from './Meanings.tsx';
import {
  forget,
  found,
  hasOneBefore,
  imported,
  isSlow,
  isUsable,
  lines,
  look,
  pasted,
  source,
  stop,
  taken,
  use,
} from './model.ts';
import { Preview } from './Preview.tsx';

/** A table from a spreadsheet, looked at and confirmed before anything changes. */
export function TakeIn() {
  return (
    <div class="table-import">
      <p class="hint">{tablePaste.lead}</p>
      <Paste />
      <div role="status">
        <State />
      </div>
      {isSlow.value && (
        <p class="tools">
          <button type="button" class="plain-button" onClick={stop}>
            {tablePaste.stop}
          </button>
        </p>
      )}
      {found.value && (
        <>
          <Preview of={found.value.preview} />
          <Meanings of={found.value} />
          <Findings of={found.value} />
          <Decide />
        </>
      )}
    </div>
  );
}

function Paste() {
  return (
    <>
      <div class="field field-text">
        <label for="table-paste">{tablePaste.field}</label>
        <div class="field-box">
          <textarea
            id="table-paste"
            class="table-text"
            rows={5}
            wrap="off"
            spellcheck={false}
            autocomplete="off"
            value={pasted.value}
            onInput={(event) => {
              pasted.value = event.currentTarget.value;
              look(event.currentTarget.value);
            }}
          />
        </div>
      </div>
      <div class="tools">
        <label class="file-key">
          <input
            type="file"
            accept=".csv,.tsv,.tab,.txt,text/csv,text/plain,text/tab-separated-values"
            onChange={(event) => {
              const [file] = event.currentTarget.files ?? [];
              if (!file) return;
              pasted.value = '';
              look(file);
              // The same file may be opened again after it was changed.
              event.currentTarget.value = '';
            }}
          />
          <span>{tablePaste.file}</span>
        </label>
        <span class="hint">{tablePaste.fileHint}</span>
      </div>
    </>
  );
}

function State() {
  const now = imported.value;
  if (taken.value) return <Echo>{tablePaste.used}</Echo>;
  if (now === null) return null;
  if (now === 'reading') return <p class="hint">{readingText()}</p>;
  if (now === 'unreadable') return <Check>{refusalWords['unreadable']?.(0)}</Check>;
  return now.ok ? (
    <Echo>{tablePaste.size(now.rows.length)}</Echo>
  ) : (
    <Check>{refusalWords[now.code]?.(now.count)}</Check>
  );
}

function readingText(): string {
  if (lines.value !== null) return tablePaste.parted(lines.value);
  const from = source.value;
  const size = typeof from === 'string' ? from.length : (from?.size ?? 0);
  return isSlow.value ? tablePaste.readingLarge(size) : tablePaste.reading;
}

function Decide() {
  const [page, setPage] = useState(job.value.notes['rating.page'] ?? '');
  return (
    <>
      <TextField id="table-page" name={tablePaste.page} value={page} onInput={setPage} />
      <div class="field-row">
        <NoteField of="outdoor.model" name={identity.outdoorModel} id="table-outdoor-model" />
        <NoteField of="indoor.model" name={identity.indoorModel} id="table-indoor-model" />
      </div>
      <p class="tools">
        <button
          type="button"
          class="action"
          aria-disabled={isUsable.value ? undefined : 'true'}
          aria-describedby={isUsable.value ? undefined : 'table-cannot'}
          onClick={() => use(page)}
        >
          {tablePaste.use}
        </button>
        <button type="button" class="plain-button" onClick={() => forget()}>
          {hasOneBefore.value ? tablePaste.keep : tablePaste.keepNone}
        </button>
      </p>
      {!isUsable.value && <Check id="table-cannot">{tablePaste.cannot}</Check>}
    </>
  );
}
