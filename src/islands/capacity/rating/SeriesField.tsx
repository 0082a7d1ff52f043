import { choices } from '~/job/choices.ts';
import { ratingSeries, seriesSystem } from '~/job/ratingSeries.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { job, system } from '../../store.ts';

/** The wet bulbs at which the maker prints rows: the usual series of the system shown, and the one in use. */
export function SeriesField() {
  const used = ratingSeries(job.value);
  const values = choices['rating.series'].values.filter((value) => {
    const of = seriesSystem[value];
    return of === null || of === system.value || value === used;
  });
  return <ChoiceField of="rating.series" only={values} assumed={used} />;
}
