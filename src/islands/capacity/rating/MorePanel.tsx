import { useEffect, useLayoutEffect } from 'preact/hooks';
import { usesSheet } from '~/job/usesSheet.ts';
import { figureWords } from '~/words/en/figures.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { lazy } from '../../lazy.tsx';
import { Part } from '../../Part.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { job } from '../../store.ts';
import { grid, isGeneric, readyGrid } from '../cells.ts';
import { isEqual } from './isEqual.ts';
import { hasBoth, isRoomy, more, useSettled } from './more.ts';
import { PrintedRating } from './PrintedRating.tsx';
import { PanelTools } from './RatingTools.tsx';
import { SeriesField } from './SeriesField.tsx';

const WholeTable = lazy(() => import('../../ratingTable/WholeTable.tsx').then((module) => module.WholeTable));

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
      {wanted !== null && <Panel lacking={lacking} />}
    </>
  );
}

/** Where it stands in place of the figures, one of its parts is open at a time. */
function Panel({ lacking }: { lacking: boolean }) {
  // What was answered before is asked again here alone.
  const settled = useSettled();
  const generic = isGeneric.value;
  const hasHeads = !generic && !usesSheet(job.value);
  const atHeads = hasHeads && (lacking || more.value !== 'any');
  const part = { group: 'rating-more', roomy: isRoomy.value };
  return (
    <div class="heads">
      <Part {...part} name={figureWords.shape} first={!atHeads}>
        <PanelTools />
        {hasHeads && hasBoth() && <QuantityField of="rating.enteringDryBulb" />}
        {!generic && !isRoomy.value && <WholeTable />}
      </Part>
      {hasHeads && (
        <Part {...part} name={figureWords.heads} first={atHeads}>
          <Heads />
        </Part>
      )}
      <Part {...part} name={generic ? figureWords.blower : figureWords.blowerAndFactors} first={false}>
        {!generic && settled && <ChoiceField of="rating.basis" open />}
        <div class="field-row">
          <QuantityField of="rating.blowerPower" />
          <QuantityField of="blower.power" />
        </div>
        {!generic && (
          <div class="field-row">
            <QuantityField of="rating.indoorMatch" />
            <QuantityField of="rating.lineLength" />
          </div>
        )}
      </Part>
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
    </>
  );
}

const unitChoice = (unit: string) => (unit === 'kw' || unit === 'ton' ? unit : 'btuh');
