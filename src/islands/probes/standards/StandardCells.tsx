import type { HeldAgainst } from '~/calc/confidence/standards.ts';
import { unitLabel } from '~/job/format.ts';
import { cellOf, typedCell } from '~/job/gridCells.ts';
import { measureHere } from '~/job/sure/pairs.ts';
import { heldIn, type Standard, standardsGrid, standardsHere } from '~/job/sure/standards.ts';
import type { QuantityKey } from '~/job/types.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { standardWords as words } from '~/words/en/probeStandards.ts';
import { problemWords } from '~/words/en/problems.ts';
import { inUnit, partsOf, shownUnit, typing } from '../../fields.ts';
import { GridInput } from '../../GridInput.tsx';
import { edit, job } from '../../jobStore.ts';
import { humidityStep, temperatureStep } from '../../show.ts';
import { compared } from '../model.ts';

/** What the probes showed of each standard that they were held against, and what follows from it. */
export function StandardCells() {
  const here = standardsHere(job.value);
  if (here.length === 0) return null;
  return (
    <>
      {here.map(({ standard, columns }) => (
        <fieldset key={standard} class="standard-cells">
          <legend class="label">{words.legend[standard]}</legend>
          {columns.map((column) => (
            <Cell key={column} column={column} />
          ))}
          <Problems columns={columns} />
          <Said of={standard} />
        </fieldset>
      ))}
      <p class="hint">{words.rule}</p>
    </>
  );
}

const cellId = (column: string) => `standard-${column}`;
const cell = (column: string) => cellOf(job.value, standardsGrid, { row: 0, column });
const quantityOf = (column: string) => standardsGrid.quantity(column) as QuantityKey;
const placeOf = (column: string) =>
  words.cells[/^(entering|leaving|known)/.exec(column)?.[0] as keyof typeof words.cells];

function Cell({ column }: { column: string }) {
  const quantity = quantityOf(column);
  const unit = shownUnit(quantity);
  const { text, unit: kept, read } = cell(column);
  const id = cellId(column);
  return (
    <label class="standard-cell" for={id}>
      <span>
        {placeOf(column)} ({unitLabel(unit)})
      </span>
      <GridInput
        id={id}
        name={`${placeOf(column)}, ${unitLabel(unit)}`}
        value={kept === unit || read.state !== 'read' ? text : inUnit(quantity, read.si, unit)}
        bad={isBad(column)}
        saidAt={isBad(column) ? `${id}-check` : undefined}
        onText={(typed) => edit(typedCell(job.value, standardsGrid, { row: 0, column }, typed, unit))}
      />
    </label>
  );
}

const isBad = (column: string) => cell(column).read.state === 'bad' && typing.value !== cellId(column);

function Problems({ columns }: { columns: readonly string[] }) {
  return columns.filter(isBad).map((column) => {
    const { text, unit, read } = cell(column);
    if (read.state !== 'bad') return null;
    return (
      <Check key={column} id={`${cellId(column)}-check`}>
        {placeOf(column)}: {problemWords[read.code]?.(partsOf(quantityOf(column), text, unit))}
      </Check>
    );
  });
}

/** What the standard says of the error that both share. */
function Said({ of: standard }: { of: Standard }) {
  const found = compared.supply.value ?? compared.return.value;
  const held = heldIn(job.value, standard, found?.difference ?? { dryBulb: 0, humidity: 0 });
  if (!held) return <p class="hint">{words.agreed[standard]}</p>;
  return (
    <>
      <Echo>{sentence(standard, held)}</Echo>
      {!found && <p class="hint">{words.needsCheck}</p>}
    </>
  );
}

function sentence(standard: Standard, { error, correction, limit }: HeldAgainst): string {
  const amount = (si: number) =>
    standard === 'iceBath' ? temperatureStep(si) : humidityStep(si, measureHere(job.value));
  const size = amount(Math.abs(error));
  const high = error > 0;
  return correction === 0 ? words.within(size, high, amount(limit)) : words.corrected(size, high, amount(limit));
}
