import { NoteList } from '~/parts/NoteList.tsx';
import { airflowMargin as words } from '~/words/en/airflowContext.ts';
import { Block } from './Block.tsx';
import { isDesk } from './model.ts';

/** The margin of a desk's sheet, the end of a phone's: what the figures rest on, and the title block. */
export function Margin() {
  return (
    <aside class="sheet-margin" aria-label={words.title}>
      <h2>{words.title}</h2>
      <NoteList of={words.notes} />
      {!isDesk.value && <Block />}
    </aside>
  );
}
