import { Caution } from '~/parts/Caution.tsx';
import { NoteList } from '~/parts/NoteList.tsx';
import { probeResults as words } from '~/words/en/probeResults.ts';

/** The margin of a desk's sheet, the end of a phone's: cautions, and what the figures rest on. */
export function Notes() {
  return (
    <aside class="sheet-margin">
      <section>
        {words.cautions.map(({ say, of }) => (
          <Caution key={say} of={of}>
            {say}
          </Caution>
        ))}
      </section>
      <section>
        <h2>{words.sources}</h2>
        <NoteList of={words.notes} />
      </section>
    </aside>
  );
}
