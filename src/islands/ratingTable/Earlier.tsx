import { useState } from 'preact/hooks';
import { isForModels, type KeptTable, tableEdits, tableOf } from '~/job/keptTables.ts';
import { Echo } from '~/parts/Echo.tsx';
import { earlier } from '~/words/en/ratingTable.ts';
import { edit, job } from '../jobStore.ts';
import { putBack, remove, tables } from './kept.ts';
import { dayOf } from './shown.ts';

interface Done {
  readonly words: string;
  readonly key: string;
  readonly undo: () => void;
}

/** The tables of earlier jobs on this device, those for the same models first. */
export function Earlier() {
  const [done, setDone] = useState<Done | null>(null);
  const [open, setOpen] = useState(false);
  const all = tables.value ?? [];
  const matching = all.filter((table) => isForModels(table, job.value));
  const shown = [...matching, ...all.filter((table) => !matching.includes(table))];
  const use = (table: KeptTable) => {
    const before = tableOf(job.value);
    if (!edit(...tableEdits(job.value, table))) return;
    setDone({ words: earlier.used, key: earlier.undoUse, undo: () => edit(...tableEdits(job.value, before)) });
  };
  const take = (table: KeptTable) => {
    void remove(table);
    setDone({ words: earlier.removed, key: earlier.undo, undo: () => void putBack(table) });
  };
  if (shown.length === 0 && done === null) return null;
  return (
    <>
      {matching.length > 0 && <Echo>{earlier.matching}</Echo>}
      {shown.length > 0 && (
        <details class="fold kept-fold" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
          <summary>{earlier.fold(shown.length)}</summary>
          <ul class="kept-tables">
            {shown.map((table) => (
              <Row key={table.id} table={table} onUse={() => use(table)} onRemove={() => take(table)} />
            ))}
          </ul>
        </details>
      )}
      <div role="status" class="tools">
        {done && (
          <>
            <span>{done.words}</span>
            <button
              type="button"
              class="plain-button"
              onClick={() => {
                done.undo();
                setDone(null);
              }}
            >
              {done.key}
            </button>
          </>
        )}
      </div>
    </>
  );
}

function Row({ table, onUse, onRemove }: { table: KeptTable; onUse: () => void; onRemove: () => void }) {
  const { notes, tables: own } = table;
  const models = [notes['outdoor.model'], notes['indoor.model']].filter(Boolean).join(' · ') || earlier.unnamed;
  const size = own.ratingSheet
    ? earlier.whole(own.ratingSheet.rows.length)
    : earlier.cells(own.rating?.rows.length ?? 0);
  return (
    <li>
      <p>
        <b>{models}</b>
        <br />
        {size}, {earlier.about(dayOf(notes['rating.typedAt']), notes['rating.page'] ?? '')}
      </p>
      <p class="tools">
        <button type="button" class="plain-button" onClick={onUse} aria-label={`${earlier.use}: ${models}`}>
          {earlier.use}
        </button>
        <button type="button" class="plain-button" onClick={onRemove} aria-label={`${earlier.remove}: ${models}`}>
          {earlier.remove}
        </button>
      </p>
    </li>
  );
}
