import { useEffect, useLayoutEffect } from 'preact/hooks';
import { usesSheet } from '~/job/usesSheet.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { job } from '../../store.ts';
import { grid, isGeneric, readyGrid } from '../cells.ts';
import { isEqual } from './isEqual.ts';
import { more } from './more.ts';
import { PrintedRating } from './PrintedRating.tsx';
import { PanelTools } from './RatingTools.tsx';
import { SeriesField } from './SeriesField.tsx';

/** What is rarely needed: other rows, columns and units than the usual ones, the blower's heat, the maker's factors. */
export function MorePanel() {
  const wanted = more.value;
  // With the drawing itself, and not after it: a quick finger may be in the next field by then.
  useLayoutEffect(() => {
    if (wanted !== null && wanted !== 'any') document.getElementById(`field-${wanted}`)?.focus();
  }, [wanted]);
  const lacking =
    !usesSheet(job.value) &&
    grid.value?.state === 'waiting' &&
    grid.value.needs.some((key) => key.startsWith('rating.'));
  // Rows that no usual series has are asked for here; the panel then stays, so that no field goes while it is typed in.
  useEffect(() => {
    if (lacking && more.value === null) more.value = 'any';
  }, [lacking]);
  return (
    <>
      <PrintedRating />
      {wanted !== null && <Panel />}
    </>
  );
}

function Panel() {
  return (
    <div class="heads">
      <PanelTools />
      {!isGeneric.value && !usesSheet(job.value) && <Heads />}
      <div class="field-row">
        <QuantityField of="rating.blowerPower" />
        <QuantityField of="blower.power" />
      </div>
      {!isGeneric.value && (
        <div class="field-row">
          <QuantityField of="rating.indoorMatch" />
          <QuantityField of="rating.lineLength" />
        </div>
      )}
    </div>
  );
}

const heads = [
  ['rating.outdoorLow', 'rating.outdoorHigh'],
  ['rating.wetBulbLow', 'rating.wetBulbHigh'],
] as const;

/** Where a table has other rows, columns or units than the usual ones, they are said here. */
function Heads() {
  return (
    <>
      <SeriesField />
      {heads.map((pair) => (
        <div class="field-row" key={pair[0]}>
          {pair.map((key) => (
            <QuantityField
              key={key}
              of={key}
              name={quantityWords[key].name}
              equal={isEqual(key)}
              signed={key.includes('outdoor')}
            />
          ))}
        </div>
      ))}
      <ChoiceField of="rating.unit" {...(readyGrid.value && { assumed: unitChoice(readyGrid.value.unit) })} />
      {job.value.chosen['rating.withSensible'] === 'yes' && <QuantityField of="rating.enteringDryBulb" />}
    </>
  );
}

const unitChoice = (unit: string) => (unit === 'kw' || unit === 'ton' ? unit : 'btuh');
