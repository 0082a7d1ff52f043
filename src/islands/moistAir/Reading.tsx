import type { MoistAir } from '~/calc/types.ts';
import { readingWords } from '~/words/en/moistAir.ts';
import { LateFold } from '../LateFold.tsx';
import { lazy } from '../lazy.tsx';
import { SaidAtRest } from '../SaidAtRest.tsx';
import { airOfSpot, points } from './points.ts';
import { allSaid, properties, propertyOf } from './said.ts';
import { cross, looked, openStep } from './view.ts';

const ReadHere = lazy(() => import('./late/index.ts').then((late) => late.ReadHere));

/** All properties of the air under the cross-hair, or of the point whose step is open. */
export function Reading() {
  const spot = cross.value;
  const chosen = looked.value ?? openStep.value;
  const point = points.value.find(({ key }) => key === chosen) ?? points.value[0];
  const air = spot ? airOfSpot(spot) : point?.air;
  return (
    <section class="air-reading" aria-labelledby="air-reading-head">
      <h2 id="air-reading-head" class="air-reading-head">
        <span>{spot ? readingWords.under : (point?.name ?? readingWords.title)}</span>
        {spot ? (
          <button type="button" class="plain-button" onClick={() => put(null)}>
            {readingWords.clear}
          </button>
        ) : (
          <span class="hint">{readingWords.hint}</span>
        )}
      </h2>
      <dl class="air-properties">
        {properties.map((property) => {
          const { number, unit } = air ? propertyOf(air, property) : { number: '–', unit: '' };
          return (
            <div key={property}>
              <dt>{readingWords.properties[property]}</dt>
              <dd>
                {number} <small>{unit}</small>
              </dd>
            </div>
          );
        })}
      </dl>
      <LateFold summary={readingWords.fold}>
        <ReadHere />
      </LateFold>
      <SaidAtRest words={spot && air ? allSaid(air) : ''} />
    </section>
  );
}

const put = (air: MoistAir | null) => {
  cross.value = air;
};
