import { demoWords, sheet } from '~/words/en/sheet.ts';
import { keeping, keptAt } from '../keep.ts';
import { sizeText } from '../show.ts';
import { interpreted, job, source } from '../store.ts';
import { clock } from './model.ts';

/** The first line of the sheet: which job, which size, and whether it is safe. */
export function JobLine() {
  const name = source.value === 'demo' ? demoWords.inBar : job.value.notes.address?.trim() || sheet.unnamed;
  const nominal = interpreted.value.test.nominalCapacity;
  const size = nominal === null ? '' : sizeText(nominal);
  return (
    <p class="job-line">
      <span>
        <b>{name}</b>
        {size && ` · ${size}`}
      </span>
      <span class="quiet">{saved()}</span>
    </p>
  );
}

function saved(): string {
  if (source.value === 'demo') return '';
  if (keeping.value === 'kept' && keptAt.value) return sheet.saved(clock(keptAt.value.toISOString()));
  return keeping.value === 'not yet' ? '' : sheet.notSaved;
}
