import { CoolingDrying } from '~/charts/CoolingDrying.tsx';
import { results } from '~/words/en/results.ts';
import { LateFold } from '../LateFold.tsx';
import { lazy } from '../lazy.tsx';
import { capacityEnds, capacityText, inUnitOf, joined, percent } from '../show.ts';
import { assessment, interpreted, system } from '../store.ts';
import { isDesk } from './model.ts';
import { latentUnseen } from './remarks.ts';

const CatchWater = lazy(() => import('./sure/CatchWater.tsx').then((module) => module.CatchWater));

/** How the work divides into cooling and drying. What two humidity probes cannot tell from zero is not given a number. */
export function CoolingAndDrying() {
  const { measured, ranges } = assessment.value;
  if (!measured.ok) return null;
  const { sensible, latent, sensibleHeatRatio, condensate } = measured.value;
  const unseen = latentUnseen.value;
  const cooling = results.coolingOf(capacityText(sensible));
  const drying = unseen ? results.dryingUnseen : results.dryingOf(capacityText(latent));
  const between = ranges.latent && capacityEnds(ranges.latent.interval);
  const share = percent(Math.min(1, sensibleHeatRatio));
  const water = joined(inUnitOf(condensate, system.value === 'ip' ? 'lbPerHour' : 'kgPerHour', 1)).replace('/h', '');
  return (
    <section>
      <h2>{results.cooling}</h2>
      <CoolingDrying
        sensibleHeatRatio={unseen ? 1 : sensibleHeatRatio}
        cooling={cooling}
        drying={drying}
        summary={`${cooling}, ${drying}`}
        width={isDesk.value ? 600 : 358}
      />
      <p class="label quiet">
        {unseen ? '' : `${results.waterOf(water, share)} `}
        {!unseen && between && <b>{results.rough(...between)}</b>}
      </p>
      <ShouldCool />
      <LateFold summary={results.catchFold}>
        <CatchWater />
      </LateFold>
    </section>
  );
}

/** The cooling part of what it should make, or why there is none. */
function ShouldCool() {
  const { expected } = assessment.value;
  if (!expected.ok) return null;
  const { total, sensible } = expected.value;
  return (
    <p class="label quiet">
      {sensible === null
        ? results.noShouldCool[whyNone()]
        : results.shouldCool(capacityText(sensible), percent(Math.min(1, sensible / total)))}
    </p>
  );
}

function whyNone(): keyof typeof results.noShouldCool {
  const { rating } = interpreted.value.test;
  const rows = rating?.rows ?? [];
  if (rating?.from !== 'generic' && !rows.some(({ sensible }) => typeof sensible === 'number')) return 'totalsOnly';
  return rating?.from !== 'generic' && rows.every((row) => row.enteringDryBulb === undefined) ? 'noDryBulb' : 'noCoil';
}
