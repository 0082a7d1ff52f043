import { Ledger } from '~/parts/Ledger.tsx';
import { processSteps } from '~/words/en/moistAirSteps.ts';
import { ownProcess } from '../own.ts';
import { ownLoads } from './Loads.tsx';

/** The job's own process, which its sheet works out; here its loads stand beside the picture. */
export function JobProcessBody() {
  const load = ownProcess.value?.load;
  if (!load) return null;
  return (
    <>
      <p class="step-say">{processSteps.jobSay}</p>
      <Ledger caption={processSteps.loads(processSteps.job)} lines={ownLoads(load)} />
    </>
  );
}
