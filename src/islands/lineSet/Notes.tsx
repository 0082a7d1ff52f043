import { Caution } from '~/parts/Caution.tsx';
import { NoteList } from '~/parts/NoteList.tsx';
import { lineCautionsOfWork, lineNotes, lineResults } from '~/words/en/lineSetResults.ts';

/** The margin of a desk's sheet, the end of a phone's: cautions, and what the figures rest on. */
export function Notes() {
  return (
    <aside class="sheet-margin">
      <section class="line-cautions">
        {lineCautionsOfWork.map((words) => (
          <Caution key={words} of="refrigerants">
            {words}
          </Caution>
        ))}
      </section>
      <section>
        <h2>{lineResults.sources}</h2>
        <NoteList of={lineNotes} />
      </section>
    </aside>
  );
}
