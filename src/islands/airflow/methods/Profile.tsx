import type { TraverseFound } from '~/calc/airflow/traverse.ts';
import { ProfileChart } from '~/charts/airflow/ProfileChart.tsx';
import { pointsOf } from '~/job/airflow/traverse.ts';
import { profileWords as words } from '~/words/en/airflowSection.ts';
import { job } from '../../jobStore.ts';
import { percentFine } from '../flowText.ts';
import { found, isDesk } from '../model.ts';

/** How the air runs over the section: a line for each hole, the mean of each depth, and whether the section will do. */
export function Profile() {
  const outcome = found.value?.get('traverse');
  const points = pointsOf(job.value);
  if (!outcome?.ok || !points.ok) return null;
  const { velocities, profile, meanVelocity, acceptance } = outcome.value as TraverseFound;
  const [line] = points.value.lines;
  const last = line?.points.at(-1)?.depth ?? 0;
  const first = line?.points[0]?.depth ?? 0;
  const across = first + last;
  return (
    <details class="fold" open={isDesk.value}>
      <summary>{words.fold}</summary>
      <figure class="airflow-section">
        <ProfileChart
          depths={line?.points.map(({ depth }) => depth / across) ?? []}
          holes={velocities.map((hole) => hole.map((one) => (one === null ? null : one / meanVelocity)))}
          means={profile.depths}
          name={words.name(profile.depths.map((one) => (one === null ? words.none : percentFine(one))))}
        />
        <figcaption>{words.caption}</figcaption>
        <p class={acceptance.passes ? 'echo' : 'check'}>
          {words.acceptance(percentFine(acceptance.share), acceptance.passes)}
        </p>
      </figure>
    </details>
  );
}
