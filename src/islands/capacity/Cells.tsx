import { ColumnScale, RowScale } from '~/charts/CellScale.tsx';
import { setCell } from '~/job/ratingEdits.ts';
import type { Cell, Grid } from '~/job/ratingGrid.ts';
import type { Head } from '~/job/ratingHeads.ts';
import { Check } from '~/parts/Echo.tsx';
import { Field } from '~/parts/Field.tsx';
import { figureWords } from '~/words/en/figures.ts';
import { ratingStep } from '~/words/en/steps.ts';
import { inUnit, leave, touch, typing } from '../fields.ts';
import { edit, job, system } from '../store.ts';
import { cellName, cellProblem } from './cellProblem.ts';

export interface CellsProps {
  readonly grid: Grid;
  readonly block: number;
  readonly onHead: () => void;
}

/** The figures of one airflow block under their heads, with a dot where the readings lie between them. */
export function Cells({ grid, block, onHead }: CellsProps) {
  const { outdoors, wetBulbs, at } = grid;
  const shown = (si: number) => inUnit('entering.wetBulb', si, system.value === 'ip' ? 'degF' : 'degC');
  return (
    <>
      <div class="cell-grid" data-columns={outdoors.length} data-rows={wetBulbs.length}>
        <span class="cell-corner">
          <span>{ratingStep.outdoors}</span>
          <span>{ratingStep.wetBulb}</span>
        </span>
        <div class="cell-columns">
          {outdoors.map((head) => (
            <HeadKey key={head.si} head={head} what={ratingStep.outdoors} onHead={onHead} />
          ))}
          <ColumnScale heads={outdoors.map(({ si }) => si)} at={at.outdoorDryBulb} label={shown(at.outdoorDryBulb)} />
        </div>
        <div class="cell-rows">
          {wetBulbs.map((head) => (
            <HeadKey key={head.si} head={head} what={ratingStep.wetBulb} onHead={onHead} />
          ))}
          <RowScale heads={wetBulbs.map(({ si }) => si)} at={at.enteringWetBulb} label={shown(at.enteringWetBulb)} />
        </div>
        <div class="cell-fields">
          {wetBulbs.flatMap((row, wetBulb) =>
            outdoors.map((column, outdoor) => (
              <div class="cell" key={`${row.si}/${column.si}`}>
                {grid.cells
                  .filter((cell) => cell.block === block && cell.wetBulb === wetBulb && cell.outdoors === outdoor)
                  .map((cell) => (
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

function HeadKey({ head, what, onHead }: { head: Head; what: string; onHead: () => void }) {
  return (
    <button
      type="button"
      class="unit-key head-key"
      aria-label={figureWords.headName(what, head.label)}
      onClick={onHead}
    >
      {head.label}
    </button>
  );
}

function CellField({ cell, grid }: { cell: Cell; grid: Grid }) {
  const name = cellName(cell, grid);
  const id = `cell-${cell.key}`;
  const write = (text: string, field?: HTMLInputElement) => {
    touch(id);
    if (!edit(...setCell(job.value, cell, text)) && field) field.value = cell.text;
  };
  const both = job.value.chosen['rating.withSensible'] === 'yes';
  return (
    <Field
      id={id}
      name={name}
      seen={both ? figureWords.seen[cell.quantity] : ''}
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
