import { sourceLabels } from '~/calc/sourceLabels.ts';
import type { SourceKey } from '~/calc/sources.ts';

/** The numbered notes of a margin: what is said, and its source. */
export function NoteList({ of: notes }: { of: readonly { readonly say: string; readonly source: SourceKey }[] }) {
  return (
    <ol class="notes">
      {notes.map(({ say, source }) => (
        <li key={`${source} ${say}`}>
          {say} <cite>{sourceLabels[source]}</cite>
        </li>
      ))}
    </ol>
  );
}
