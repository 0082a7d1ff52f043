import { airflowTables } from '~/job/airflow/tables.ts';
import { pointsOf, traverseTable } from '~/job/airflow/traverse.ts';
import { chosen } from '~/job/choices.ts';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { job } from '../../jobStore.ts';
import { QuantityField } from '../../QuantityField.tsx';
import { GridCells } from '../GridCells.tsx';
import { MethodResult } from '../MethodResult.tsx';
import { Where } from '../Where.tsx';
import { Section } from './Section.tsx';

/** Velocities over one section of duct: where to read them, and a grid to type them into. */
export function Traverse() {
  const points = pointsOf(job.value);
  const table = traverseTable(job.value);
  const round = chosen(job.value, 'traverse.shape') === 'round';
  return (
    <>
      <Where of="traverse" />
      <ChoiceField of="traverse.shape" />
      <div class="field-row">
        {round ? (
          <QuantityField of="traverse.diameter" />
        ) : (
          <>
            <QuantityField of="traverse.width" />
            <QuantityField of="traverse.height" />
          </>
        )}
      </div>
      <ChoiceField of="traverse.instrument" />
      <ChoiceField of="traverse.place" />
      <div class="field-row">
        <QuantityField of="traverse.straight" />
      </div>
      <ChoiceField of="traverse.behind" />
      {points.ok && (
        <>
          <Section points={points.value} />
          <GridCells
            table={table}
            caption={words.traverse.readings}
            columns={(points.value.lines[0]?.points ?? []).map((_, index) => ({
              key: airflowTables[table][index] ?? '',
              head: words.traverse.point(index),
            }))}
            rows={points.value.lines.length}
            rowHead={words.traverse.line}
          />
        </>
      )}
      <MethodResult method="traverse" />
    </>
  );
}
