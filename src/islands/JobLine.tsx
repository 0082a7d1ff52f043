import { entered } from '~/job/entered.ts';
import { demoWords, sheet, visitorWords } from '~/words/en/sheet.ts';
import { job, source } from './jobStore.ts';
import { keeping, keptAt } from './keep.ts';
import { clock, sizeText } from './show.ts';

/** The first line of the sheet: which job, which size, and whether it is safe. */
export function JobLine() {
  const own = job.value.notes.address?.trim() || sheet.unnamed;
  const name = { demo: demoWords.inBar, visitor: visitorWords.inBar, own }[source.value];
  const nominal = entered(job.value, 'nominalCapacity');
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
  if (source.value !== 'own') return '';
  if (keeping.value === 'kept' && keptAt.value) return sheet.saved(clock(keptAt.value.toISOString()));
  return keeping.value === 'not yet' ? '' : sheet.notSaved;
}
