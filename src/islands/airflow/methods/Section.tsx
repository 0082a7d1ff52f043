import type { TraverseFound } from '~/calc/airflow/traverse.ts';
import type { TraversePoints } from '~/calc/airflow/traversePoints.ts';
import { TraverseSection } from '~/charts/airflow/TraverseSection.tsx';
import { chosen } from '~/job/choices.ts';
import { entered } from '~/job/entered.ts';
import { unitLabel } from '~/job/format.ts';
import { sectionWords as words } from '~/words/en/airflowSection.ts';
import { amountOf, inUnit, shownUnit } from '../../fields.ts';
import { job } from '../../jobStore.ts';
import { percentFine } from '../flowText.ts';
import { found } from '../model.ts';

/** The section with its points, the depths to mark on the probe, and how the profile looks once it is read. */
export function Section({ points }: { points: TraversePoints }) {
  const round = chosen(job.value, 'traverse.shape') === 'round';
  const outcome = found.value?.get('traverse');
  const answer = outcome?.ok ? (outcome.value as TraverseFound) : null;
  const size = (key: 'traverse.width' | 'traverse.height' | 'traverse.diameter') => entered(job.value, key) ?? 0;
  const across = round ? 'traverse.diameter' : 'traverse.width';
  const down = round ? 'traverse.diameter' : 'traverse.height';
  const [first] = points.lines;
  const unit = shownUnit(across);
  return (
    <figure class="airflow-section">
      <TraverseSection
        points={points}
        inside={round ? { diameter: size(across) } : { width: size(across), height: size(down) }}
        velocities={answer?.velocities.map((line) =>
          line.map((velocity) => (velocity === null ? null : velocity / answer.meanVelocity)),
        )}
        across={amountOf(across, size(across))}
        down={amountOf(down, size(down))}
        name={words.name(points.lines.length, first?.points.length ?? 0, round)}
      />
      <figcaption>
        {round ? words.round : words.rectangular} {answer && words.dots}
      </figcaption>
      <table class="depths">
        <caption>{words.depths(unitLabel(unit))}</caption>
        <tbody>
          <tr>
            <th scope="row">{words.point}</th>
            {first?.points.map((_, index) => (
              <td key={index}>{index + 1}</td>
            ))}
          </tr>
          <tr>
            <th scope="row">{words.depth}</th>
            {first?.points.map(({ depth }, index) => (
              <td key={index}>{inUnit(across, depth, unit)}</td>
            ))}
          </tr>
          {!round && (
            <tr>
              <th scope="row">{words.hole}</th>
              {points.lines.map(({ x }, index) => (
                <td key={index}>{inUnit(across, x, unit)}</td>
              ))}
            </tr>
          )}
        </tbody>
      </table>
      {answer && <p class="echo">{words.acceptance(percentFine(answer.acceptance.share), answer.acceptance.passes)}</p>}
    </figure>
  );
}
