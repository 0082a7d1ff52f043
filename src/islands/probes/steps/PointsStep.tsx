import { usual } from '~/calc/confidence/defaults.ts';
import { unitLabel } from '~/job/format.ts';
import { cellOf, rowsOf, typedCell } from '~/job/gridCells.ts';
import { supplyGrid } from '~/job/sure/supplyPoints.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { probeWords as words } from '~/words/en/probes.ts';
import { problemWords } from '~/words/en/problems.ts';
import { inUnit, partsOf, shownUnit, type, typing } from '../../fields.ts';
import { GridInput } from '../../GridInput.tsx';
import { edit, job } from '../../jobStore.ts';
import { temperature, temperatureStep } from '../../show.ts';
import { isMeanUsed, meanOfPoints, points, spreadOfPoints } from '../model.ts';
import { StepOf } from '../StepOf.tsx';

const quantity = 'leaving.dryBulb';
const column = 'dryBulb';
const fewest = 6;
const most = 24;

/** The supply temperature from point to point of its plane, their mean and their spread. */
export function PointsStep() {
  const rows = Math.min(most, Math.max(fewest, rowsOf(job.value, supplyGrid) + 1));
  return (
    <StepOf step="probesPoints">
      <div class="point-cells">
        {Array.from({ length: rows }, (_, row) => (
          <Point key={row} row={row} />
        ))}
      </div>
      <Problems rows={rows} />
      <Said />
    </StepOf>
  );
}

const cellId = (row: number) => `point-${row}`;
const cell = (row: number) => cellOf(job.value, supplyGrid, { row, column });

function Point({ row }: { row: number }) {
  const unit = shownUnit(quantity);
  const { text, unit: kept, read } = cell(row);
  const value = kept === unit || read.state !== 'read' ? text : inUnit(quantity, read.si, unit);
  const id = cellId(row);
  return (
    <label class="point-cell" for={id}>
      <span>{row + 1}</span>
      <GridInput
        id={id}
        name={`${words.point(row + 1)}, ${unitLabel(unit)}`}
        value={value}
        bad={read.state === 'bad' && typing.value !== id}
        onText={(typed) => edit(typedCell(job.value, supplyGrid, { row, column }, typed, unit))}
      />
    </label>
  );
}

function Problems({ rows }: { rows: number }) {
  return Array.from({ length: rows }, (_, row) => {
    const { text, unit, read } = cell(row);
    if (read.state !== 'bad' || typing.value === cellId(row)) return null;
    return (
      <Check key={row}>
        {words.point(row + 1)}: {problemWords[read.code]?.(partsOf(quantity, text, unit))}
      </Check>
    );
  });
}

/** Their mean and spread; the mean becomes the supply reading only when somebody says so. */
function Said() {
  const count = points.value.length;
  if (count < 2) return <p class="hint">{words.onePoint}</p>;
  const unit = shownUnit(quantity);
  const uneven = spreadOfPoints.value > usual.supplySpread;
  const said = words.mean(count, temperature(meanOfPoints.value), temperatureStep(spreadOfPoints.value));
  const limit = words.laboratory(temperatureStep(usual.supplySpread));
  return (
    <>
      {uneven ? (
        <Check>
          {said} {limit}
        </Check>
      ) : (
        <Echo>
          {said} {limit}
        </Echo>
      )}
      {isMeanUsed.value ? (
        <p class="hint">{words.meanUsed}</p>
      ) : (
        <p class="tools">
          <button
            type="button"
            class="plain-button"
            onClick={() => type(quantity, inUnit(quantity, meanOfPoints.value, unit), unit)}
          >
            {words.useMean}
          </button>
        </p>
      )}
    </>
  );
}
