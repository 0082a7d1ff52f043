import { useEffect, useRef } from 'preact/hooks';
import { choices } from '~/job/choices.ts';
import { ratingSeries, seriesSystem } from '~/job/ratingSeries.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { ChoiceField } from '../ChoiceField.tsx';
import { QuantityField } from '../QuantityField.tsx';
import { job, system } from '../store.ts';
import { grid } from './cells.ts';
import { isEqual } from './isEqual.ts';

const keys = ['rating.outdoorLow', 'rating.outdoorHigh', 'rating.wetBulbLow', 'rating.wetBulbHigh'] as const;

/** Where a table has other rows, columns or units than the usual ones, they are said here. */
export function Heads() {
  const panel = useRef<HTMLDivElement>(null);
  useEffect(() => panel.current?.querySelector('input')?.focus(), []);
  const values = choices['rating.series'].values.filter((value) => {
    const of = seriesSystem[value];
    return of === null || of === system.value || value === ratingSeries(job.value);
  });
  return (
    <div class="heads" ref={panel}>
      <ChoiceField of="rating.series" only={values} assumed={ratingSeries(job.value)} />
      <div class="field-row">
        {keys.slice(0, 2).map((key) => (
          <QuantityField key={key} of={key} name={quantityWords[key].name} equal={isEqual(key)} signed />
        ))}
      </div>
      <div class="field-row">
        {keys.slice(2).map((key) => (
          <QuantityField key={key} of={key} name={quantityWords[key].name} equal={isEqual(key)} />
        ))}
      </div>
      <ChoiceField of="rating.unit" {...(grid.value.state === 'ready' && { assumed: unitChoice(grid.value.unit) })} />
      {job.value.chosen['rating.withSensible'] === 'yes' && <QuantityField of="rating.enteringDryBulb" />}
    </div>
  );
}

const unitChoice = (unit: string) => (unit === 'kw' || unit === 'ton' ? unit : 'btuh');
