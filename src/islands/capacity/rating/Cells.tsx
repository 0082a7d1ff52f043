import { ColumnScale, RowScale } from '~/charts/CellScale.tsx';
import { setCell } from '~/job/ratingEdits.ts';
import type { Cell, Grid } from '~/job/ratingGrid.ts';
import type { Head } from '~/job/ratingHeads.ts';
import { Check } from '~/parts/Echo.tsx';
import { Field } from '~/parts/Field.tsx';
import { figureWords } from '~/words/en/figures.ts';
import { ratingStep } from '~/words/en/steps.ts';
import { inUnit, leave, touch, typing } from '../../fields.ts';
import { edit, job, system } from '../../store.ts';
import { cellName, cellProblem } from '../cellProblem.ts';
import { hasBoth, more } from './more.ts';

/** One side of the grid: its heads, and where the reading lies between them. */
interface Side {
  readonly name: string;
  readonly heads: readonly Head[];
  readonly at: number;
}

/** The figures of one airflow block under their heads, with a dot where the readings lie between them. */
export function Cells({ grid, block }: { grid: Grid; block: number }) {
  const outdoors: Side = { name: ratingStep.outdoors, heads: grid.outdoors, at: grid.at.outdoorDryBulb };
  const wetBulbs: Side = { name: ratingStep.wetBulb, heads: grid.wetBulbs, at: grid.at.enteringWetBulb };
  // Printed one way in one data sheet and the other way in the next; what is typed keeps its place.
  const turned = job.value.chosen['rating.turned'] === 'yes';
  const both = hasBoth();
  const [across, down] = turned ? [wetBulbs, outdoors] : [outdoors, wetBulbs];
  const cellsAt = (row: number, column: number) => {
    const [outdoor, wetBulb] = turned ? [row, column] : [column, row];
    return grid.cells.filter((cell) => cell.block === block && cell.outdoors === outdoor && cell.wetBulb === wetBulb);
  };
  return (
    <>
      <div
        class="cell-grid"
        data-columns={across.heads.length}
        data-rows={down.heads.length}
        data-both={both ? '' : undefined}
      >
        <span class="cell-corner">
          <span>{across.name}</span>
          <span>{down.name}</span>
        </span>
        <div class="cell-columns">
          <HeadKeys side={across} />
          <ColumnScale {...scaleOf(across)} />
        </div>
        <div class="cell-rows">
          <HeadKeys side={down} />
          <RowScale {...scaleOf(down)} tall={both} />
        </div>
        <div class="cell-fields">
          {down.heads.flatMap(({ si }, row) =>
            across.heads.map((head, column) => (
              <div class="cell" key={`${si}/${head.si}`}>
                {cellsAt(row, column).map((cell) => (
                  <CellField key={cell.key} cell={cell} grid={grid} />
                ))}
              </div>
            )),
          )}
        </div>
      </div>
      {grid.cells
        .filter((cell) => cell.block === block && typing.value !== `cell-${cell.key}`)
        .map((cell) => {
          const said = cellProblem(cell, grid);
          return (
            said && (
              <Check key={cell.key} id={`cell-${cell.key}-check`}>
                {said}
              </Check>
            )
          );
        })}
    </>
  );
}

const scaleOf = ({ heads, at }: Side) => ({
  heads: heads.map(({ si }) => si),
  at,
  label: inUnit('entering.wetBulb', at, system.value === 'ip' ? 'degF' : 'degC'),
});

/** The heads of one side; a tap leads to the field that changes it. */
function HeadKeys({ side: { name, heads } }: { side: Side }) {
  return heads.map(({ si, label, key }) => (
    <button
      type="button"
      class="unit-key head-key"
      key={si}
      aria-label={figureWords.headName(name, label)}
      onClick={() => {
        more.value = null;
        more.value = key;
      }}
    >
      {label}
    </button>
  ));
}

function CellField({ cell, grid }: { cell: Cell; grid: Grid }) {
  const name = cellName(cell, grid);
  const id = `cell-${cell.key}`;
  const write = (text: string, field?: HTMLInputElement) => {
    touch(id);
    if (!edit(...setCell(job.value, cell, text)) && field) field.value = cell.text;
  };
  return (
    <Field
      id={id}
      name={name}
      seen={hasBoth() ? figureWords.seen[cell.quantity] : ''}
      value={cell.text}
      unit=""
      unitSpoken=""
      problem={typing.value === id ? null : cellProblem(cell, grid)}
      saidAt={`${id}-check`}
      onInput={write}
      onBlur={leave}
    />
  );
}
