import { sourceLabels } from '~/calc/sourceLabels.ts';
import { airflowMargin as words } from '~/words/en/airflowContext.ts';
import { Block } from './Block.tsx';
import { isDesk } from './model.ts';

/** The margin of a desk's sheet, the end of a phone's: what the figures rest on, and the title block. */
export function Margin() {
  return (
    <aside class="sheet-margin" aria-label={words.title}>
      <h2>{words.title}</h2>
      <ol class="notes">
        {words.notes.map(({ say, source }) => (
          <li key={source}>
            {say} <cite>{sourceLabels[source]}</cite>
          </li>
        ))}
      </ol>
      {!isDesk.value && <Block />}
    </aside>
  );
}
