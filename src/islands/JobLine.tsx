import { entered } from '~/job/entered.ts';
import { jobLine } from '~/words/en/jobLine.ts';
import { job, source } from './jobStore.ts';
import { keeping, keptAt } from './keep.ts';
import { clock, sizeText } from './show.ts';

/** The first line of the sheet: which job, which size, and whether it is safe. */
export function JobLine() {
  const own = job.value.notes.address?.trim() || jobLine.unnamed;
  const name = { demo: jobLine.demo, visitor: jobLine.visitor, linked: jobLine.visitor, own }[source.value];
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
  if (keeping.value === 'kept' && keptAt.value) return jobLine.saved(clock(keptAt.value.toISOString()));
  return keeping.value === 'not yet' ? '' : jobLine.notSaved;
}
