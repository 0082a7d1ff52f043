import type { TraversePoints } from '~/calc/airflow/traversePoints.ts';
import { gridValue } from '~/job/airflow/grid.ts';
import { airflowTables } from '~/job/airflow/tables.ts';
import { againPoint, pointsOf, traverseTable } from '~/job/airflow/traverse.ts';
import { chosen } from '~/job/choices.ts';
import { entered } from '~/job/entered.ts';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { amountOf } from '../../fields.ts';
import { job } from '../../jobStore.ts';
import { Part } from '../../Part.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { ChoiceSelect } from '../ChoiceSelect.tsx';
import { GridCells } from '../GridCells.tsx';
import { allPlaces, brokenLines, plainLines } from '../gridLines.ts';
import { MethodResult } from '../MethodResult.tsx';
import { isRoomy } from '../model.ts';
import { Where, WhereCaution } from '../Where.tsx';
import { Profile } from './Profile.tsx';
import { Section } from './Section.tsx';

/** Velocities over one section of duct: where to read them, a grid to type them into, and how the profile looks. */
export function Traverse() {
  const points = pointsOf(job.value);
  const round = chosen(job.value, 'traverse.shape') === 'round';
  const part = { group: 'traverse', roomy: isRoomy.value };
  return (
    <>
      <Where
        of="traverse"
        assumed={
          <>
            <ChoiceField of="traverse.place" />
            <div class="field-row">
              <QuantityField of="traverse.straight" />
            </div>
            <ChoiceField of="traverse.behind" />
            <ChoiceField of="traverse.lines" only={round ? ['2', '3'] : ['5', '6', '7']} />
            <ChoiceField of="traverse.points" only={round ? ['6', '8', '10'] : ['5', '6', '7']} />
            <ChoiceField of="traverse.speed" />
          </>
        }
      >
        {points.ok && <Section points={points.value} />}
      </Where>
      <Part {...part} name={words.traverse.duct} said={sizeSaid(round)} first={!points.ok}>
        <WhereCaution of="traverse" />
        <div class="field-row">
          <ChoiceSelect of="traverse.shape" />
          <ChoiceSelect of="traverse.instrument" />
        </div>
        {round ? (
          <QuantityField of="traverse.diameter" />
        ) : (
          <div class="field-row">
            <QuantityField of="traverse.width" />
            <QuantityField of="traverse.height" />
          </div>
        )}
      </Part>
      {points.ok && <Readings points={points.value} round={round} />}
      <MethodResult method="traverse" />
    </>
  );
}

function sizeSaid(round: boolean): string {
  const said = (key: 'traverse.width' | 'traverse.height' | 'traverse.diameter') => {
    const size = entered(job.value, key);
    return size === null ? null : amountOf(key, size);
  };
  if (round) return said('traverse.diameter') ?? '';
  const [width, height] = [said('traverse.width'), said('traverse.height')];
  return width && height ? words.traverse.across(width, height) : '';
}

/** More points than this do not stand side by side on a phone. */
const abreast = 5;

/** The grid of the instrument's readings, and a second one for the points that are read again. */
function Readings({ points: { lines: holes }, round }: { points: TraversePoints; round: boolean }) {
  const points = holes[0]?.points.length ?? 0;
  const table = traverseTable(job.value);
  const keys = airflowTables[table].slice(0, points);
  const columns = keys.map((column, index) => ({ column, head: words.traverse.point(index) }));
  const lines = plainLines(holes.length, columns, words.traverse.line);
  const again = againPoint(points);
  const cells = lines.flatMap((line) => line.cells);
  const done = cells.filter(({ row, column }) => gridValue(job.value, table, row, column) !== null).length;
  return (
    <Part
      group="traverse"
      roomy={isRoomy.value}
      name={words.traverse.readings}
      said={words.traverse.read(done, cells.length)}
      first={done > 0}
    >
      <GridCells
        table={table}
        caption={words.traverse.readings}
        heads={round ? [] : columns.map(({ head }) => head)}
        lines={round ? brokenLines(lines, abreast, words.traverse.piece) : lines}
        fills={allPlaces(holes.length, keys)}
      />
      <div class="fold-pair">
        <details class="fold">
          <summary>{words.traverse.again}</summary>
          <p class="step-say">{words.traverse.againSay(again + 1)}</p>
          <GridCells
            table={table}
            caption={words.traverse.again}
            heads={[]}
            lines={plainLines(
              holes.length,
              [{ column: 'again', head: words.traverse.readAgain(again + 1) }],
              words.traverse.line,
            )}
          />
        </details>
        <Profile />
      </div>
    </Part>
  );
}
