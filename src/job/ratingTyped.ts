/** Every figure that was typed from the maker's table, whatever the readings ask for: the table as far as it is known and counts. */
import { standardAirDensity } from '../calc/index.ts';
import type { RatingRow } from '../calc/types.ts';
import { chosen } from './choices.ts';
import { entered } from './entered.ts';
import { figureUnit } from './ratingTable.ts';
import { read } from './read.ts';
import { cellText } from './tables.ts';
import type { Job, UnitKey } from './types.ts';
import { toSi } from './units.ts';

const airflowOf = { '1': 'rating.airflow', '2': 'rating.airflowSecond' } as const;

/** Its rows, and one without figures for every place of their grid that has none. */
export function typedRows(job: Job): readonly RatingRow[] {
  return filledOut(rowsOf(job));
}

function filledOut(rows: readonly RatingRow[]): readonly RatingRow[] {
  const values = (axis: 'outdoorDryBulb' | 'enteringWetBulb' | 'dryAirFlow') => [
    ...new Set(rows.map((row) => row[axis])),
  ];
  const dryBulb = rows[0]?.enteringDryBulb;
  const places = values('dryAirFlow').flatMap((dryAirFlow) =>
    values('enteringWetBulb').flatMap((enteringWetBulb) =>
      values('outdoorDryBulb').map((outdoorDryBulb) => ({ dryAirFlow, enteringWetBulb, outdoorDryBulb })),
    ),
  );
  const holes = places.filter(
    (place) => !rows.some((row) => Object.entries(place).every(([axis, at]) => row[axis as keyof typeof place] === at)),
  );
  return [
    ...rows,
    ...holes.map(({ dryAirFlow, enteringWetBulb, outdoorDryBulb }) => ({
      outdoorDryBulb: outdoorDryBulb ?? 0,
      enteringWetBulb: enteringWetBulb ?? 0,
      ...(dryBulb === undefined ? {} : { enteringDryBulb: dryBulb }),
      ...(dryAirFlow === undefined ? {} : { dryAirFlow }),
      total: null,
    })),
  ];
}

/** A figure that cannot be read counts as not typed. */
function rowsOf(job: Job): readonly RatingRow[] {
  const table = job.tables.rating;
  if (!table) return [];
  const enteringDryBulb = entered(job, 'rating.enteringDryBulb');
  const unit = figureUnit(job);
  const blocks = chosen(job, 'rating.blocks') === 'two' ? ['1', '2'] : ['1'];
  const unitOf = (column: string): UnitKey => table.columns.find(({ key }) => key === column)?.unit ?? 'degC';
  return table.rows.flatMap((row): RatingRow[] => {
    const number = (column: string) => toSi(Number(cellText(table, row, column)), unitOf(column));
    const block = (cellText(table, row, 'block') || '1') as keyof typeof airflowOf;
    const total = read(cellText(table, row, 'total'), 'rating.total', unit);
    if (total.state !== 'read' || !blocks.includes(block)) return [];
    const sensible = read(cellText(table, row, 'sensible'), 'rating.sensible', unit, { total: total.si });
    const volumeFlow = entered(job, airflowOf[block]);
    if (block === '2' && volumeFlow === null) return [];
    return [
      {
        outdoorDryBulb: number('outdoorDryBulb'),
        enteringWetBulb: number('enteringWetBulb'),
        ...(enteringDryBulb === null ? {} : { enteringDryBulb }),
        // The airflow of a maker's table is in standard air.
        ...(volumeFlow === null ? {} : { dryAirFlow: volumeFlow * standardAirDensity }),
        total: total.si,
        ...(sensible.state === 'read' ? { sensible: sensible.si } : {}),
      },
    ];
  });
}
