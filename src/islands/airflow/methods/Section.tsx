import type { TraverseFound } from '~/calc/airflow/traverse.ts';
import type { TraversePoints } from '~/calc/airflow/traversePoints.ts';
import { TraverseSection } from '~/charts/airflow/TraverseSection.tsx';
import { depthText } from '~/job/airflow/depths.ts';
import { chosen } from '~/job/choices.ts';
import { entered } from '~/job/entered.ts';
import { unitLabel } from '~/job/format.ts';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { sectionWords as words } from '~/words/en/airflowSection.ts';
import { amountOf, shownUnit } from '../../fields.ts';
import { job } from '../../jobStore.ts';
import { found } from '../model.ts';

/** The section with its points to scale, and the depths to mark on the probe. */
export function Section({ points }: { points: TraversePoints }) {
  const round = chosen(job.value, 'traverse.shape') === 'round';
  const outcome = found.value?.get('traverse');
  const answer = outcome?.ok ? (outcome.value as TraverseFound) : null;
  const size = (key: 'traverse.width' | 'traverse.height' | 'traverse.diameter') => entered(job.value, key) ?? 0;
  const across = round ? 'traverse.diameter' : 'traverse.width';
  const down = round ? 'traverse.diameter' : 'traverse.height';
  const [first] = points.lines;
  const depths = first?.points.map(({ depth }) => depthText(depth, shownUnit(down))) ?? [];
  const holes = round ? [] : points.lines.map(({ x }) => depthText(x, shownUnit(across)));
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
      <ScrollRegion label={words.depths}>
        <table class="depths">
          <caption>{words.depthsIn(unitLabel(shownUnit(down)))}</caption>
          <tbody>
            <Row name={words.point} cells={depths.map((_, index) => String(index + 1))} />
            <Row name={words.depth} cells={depths} />
            {holes.length > 0 && <Row name={words.hole} cells={holes} />}
          </tbody>
        </table>
      </ScrollRegion>
    </figure>
  );
}

function Row({ name, cells }: { name: string; cells: readonly string[] }) {
  return (
    <tr>
      <th scope="row">{name}</th>
      {cells.map((cell, index) => (
        <td key={index}>{cell}</td>
      ))}
    </tr>
  );
}
