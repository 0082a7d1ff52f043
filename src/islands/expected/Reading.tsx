import { Drawn } from '~/charts/Drawn.tsx';
import { cellText } from '~/charts/surface/cell.ts';
import { surfaceQuantities } from '~/charts/surface/reading.ts';
import { endsText } from '~/charts/surface/scale.ts';
import { valueScale } from '~/charts/surface/valueScale.ts';
import { Ledger } from '~/parts/Ledger.tsx';
import { placeWords } from '~/words/en/expected.ts';
import { percent } from '../show.ts';
import { useWidth } from '../useWidth.ts';
import {
  backToJob,
  estimate,
  isStandIn,
  isTried,
  levels,
  measured,
  place,
  quantity,
  reading,
  scale,
  should,
  shown,
} from './model.ts';

import { Spoken } from './Spoken.tsx';
import { figure, nameOf, placeText } from './said.ts';

/** What the table says at the place, and where that stands beside what should be made and what was measured. */
export function Reading() {
  const [at, found] = [place.value, reading.value];
  if (!at || !shown.value) return null;
  const lines = surfaceQuantities
    .filter((one) => found && found[one] !== null)
    .map((one) => {
      const [number = '', ...unit] = figure(one, found?.[one] ?? null).split('\u00a0');
      return { name: one === quantity.value ? <b>{nameOf(one)}</b> : nameOf(one), number, unit: unit.join('\u00a0') };
    });
  return (
    <section class="expected-reading" aria-labelledby="expected-place">
      <h2 id="expected-place">
        {isTried.value ? placeWords.tried : placeWords.here}
        <small>{placeText(at)}</small>
      </h2>
      {found ? (
        <>
          <Ledger caption={placeWords.ledger} lines={lines} />
          <p class="note quiet">
            <Where outside={found.outside.length > 0} cell={cellText(found.cell)} />
          </p>
        </>
      ) : (
        <p>{placeWords.hole}</p>
      )}
      <OnScale />
      <p class="tools">
        <button type="button" class="plain-button" disabled={!isTried.value} onClick={backToJob}>
          {isStandIn.value ? placeWords.backDemo : placeWords.back}
        </button>
      </p>
      <Spoken />
    </section>
  );
}

/** Where the figures come from at the place. */
function Where({ outside, cell }: { outside: boolean; cell: string }) {
  const band = estimate.value;
  if (outside) return <>{placeWords.beyond}</>;
  return <>{band === null ? `${placeWords.read} ${cell}.` : placeWords.estimate(percent(band))}</>;
}

/** The scale of the surface with the figures of the place on it. */
function OnScale() {
  const [box, width] = useWidth();
  const steps = levels.value;
  const table = reading.value?.[quantity.value] ?? null;
  const drawing =
    steps && width > 0
      ? valueScale({
          scale: scale.value,
          levels: steps,
          width,
          table,
          estimated: estimate.value !== null,
          should: should.value,
          measured: measured.value,
        })
      : null;
  const said = [
    table !== null &&
      (estimate.value === null ? placeWords.inTable : placeWords.byCurves)(figure(quantity.value, table)),
    should.value !== null && placeWords.should(figure(quantity.value, should.value)),
    measured.value && placeWords.measured(figure(quantity.value, measured.value.value)),
    measured.value?.range && placeWords.between(...endsText(scale.value, measured.value.range)),
  ].filter((one) => typeof one === 'string');
  return (
    <div class="expected-scale" ref={box}>
      {drawing && <Drawn of={drawing} name={placeWords.value(said.join(', '))} />}
    </div>
  );
}
