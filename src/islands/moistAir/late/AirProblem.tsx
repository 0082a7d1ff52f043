import type { MoistAir, Outcome } from '~/calc/types.ts';
import { Check } from '~/parts/Echo.tsx';
import { airProblems, notDrawn } from '~/words/en/moistAirSteps.ts';
import { figure } from '../said.ts';

/** Why two figures that can be read are no air together. What is wrong with one of them stands at its field. */
export function AirProblem({ outcome }: { outcome: Outcome<MoistAir> }) {
  const problem = outcome.ok ? null : outcome.problem;
  const say = problem && airProblems[problem.code];
  if (!problem || !say) return null;
  const limit = problem.quantity === 'humidityRatio' ? figure('humidityRatio', problem.max) : '';
  return (
    <Check>
      {say(limit)} {notDrawn}
    </Check>
  );
}
