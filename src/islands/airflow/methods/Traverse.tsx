import { airflowTables } from '~/job/airflow/tables.ts';
import { againPoint, pointsOf, traverseTable } from '~/job/airflow/traverse.ts';
import { chosen } from '~/job/choices.ts';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { job } from '../../jobStore.ts';
import { LateFold } from '../../LateFold.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { ChoiceSelect } from '../ChoiceSelect.tsx';
import { GridCells } from '../GridCells.tsx';
import { allPlaces, brokenLines, plainLines } from '../gridLines.ts';
import { MethodResult } from '../MethodResult.tsx';
import { Where } from '../Where.tsx';
import { Profile } from './Profile.tsx';
import { Section } from './Section.tsx';

/** Velocities over one section of duct: where to read them, a grid to type them into, and how the profile looks. */
export function Traverse() {
  const points = pointsOf(job.value);
  const round = chosen(job.value, 'traverse.shape') === 'round';
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
      />
      <ChoiceField of="traverse.shape" />
      {round ? (
        <QuantityField of="traverse.diameter" />
      ) : (
        <div class="field-row">
          <QuantityField of="traverse.width" />
          <QuantityField of="traverse.height" />
        </div>
      )}
      <ChoiceSelect of="traverse.instrument" />
      {points.ok && (
        <>
          <LateFold summary={words.traverse.where}>
            <Section points={points.value} />
          </LateFold>
          <Readings
            holes={points.value.lines.length}
            points={points.value.lines[0]?.points.length ?? 0}
            round={round}
          />
        </>
      )}
      <Profile />
      <MethodResult method="traverse" />
    </>
  );
}

/** More points than this do not stand side by side on a phone. */
const abreast = 5;

/** The grid of the instrument's readings, and a second one for the points that are read again. */
function Readings({ holes, points, round }: { holes: number; points: number; round: boolean }) {
  const table = traverseTable(job.value);
  const keys = airflowTables[table].slice(0, points);
  const columns = keys.map((column, index) => ({ column, head: words.traverse.point(index) }));
  const lines = plainLines(holes, columns, words.traverse.line);
  const again = againPoint(points);
  return (
    <>
      <GridCells
        table={table}
        caption={words.traverse.readings}
        heads={round ? [] : columns.map(({ head }) => head)}
        lines={round ? brokenLines(lines, abreast, words.traverse.piece) : lines}
        fills={allPlaces(holes, keys)}
      />
      <details class="fold">
        <summary>{words.traverse.again}</summary>
        <p class="step-say">{words.traverse.againSay(again + 1)}</p>
        <GridCells
          table={table}
          caption={words.traverse.again}
          heads={[]}
          lines={plainLines(
            holes,
            [{ column: 'again', head: words.traverse.readAgain(again + 1) }],
            words.traverse.line,
          )}
        />
      </details>
    </>
  );
}
