import { chosen } from '~/job/choices.ts';
import { usualLiquidTube } from '~/job/lineSet.ts';
import { Echo } from '~/parts/Echo.tsx';
import { lineSheet } from '~/words/en/lineSet.ts';
import { job, system } from '../../jobStore.ts';
import { StepOf } from '../StepOf.tsx';
import { bore, TubeSelect } from '../TubeSelect.tsx';

/** Step 2: the two tubes as they are, and the vapour tube that the rating is for. */
export function TubesStep() {
  const vapor = chosen(job.value, 'lineSet.vaporTube');
  const rated = chosen(job.value, 'lineSet.ratedVaporTube');
  const liquid = chosen(job.value, 'lineSet.liquidTube');
  const si = system.value === 'si';
  return (
    <StepOf step="lineTubes">
      <TubeSelect of="lineSet.vaporTube" ask={lineSheet.vaporTube} open={lineSheet.tubeOpen} />
      <TubeSelect of="lineSet.ratedVaporTube" ask={lineSheet.ratedTube} open={lineSheet.asInstalled} />
      {rated === undefined && <p class="hint">{lineSheet.ratedAssumed}</p>}
      <TubeSelect of="lineSet.liquidTube" ask={lineSheet.liquidTube} open={lineSheet.tubeOpen} />
      {liquid === undefined && <p class="hint">{lineSheet.tubeAssumed(`${usualLiquidTube}\u00a0in`)}</p>}
      {vapor && <Echo>{lineSheet.bore(bore(vapor, si), bore(liquid ?? usualLiquidTube, si))}</Echo>}
    </StepOf>
  );
}
