/** The rating of a test: the rows that were typed, or what published curves have to be told in their place. */
import { standardAirDensity } from '../calc/constants.ts';
import type { AirflowMultiplier, GenericStage, RatingRow, Test } from '../calc/types.ts';
import { blowerKindRated } from './blowerKinds.ts';
import { chosen } from './choices.ts';
import { entered, siOf } from './entered.ts';
import type { Grid, RatingGrid } from './ratingGrid.ts';
import type { Job } from './types.ts';
import { usesSheet } from './usesSheet.ts';

type Rating = NonNullable<Test['rating']>;

/** Reads the rows of a whole table that a test may touch, and its factors. It is fetched by those who need it: see `ratingSheet.ts`. */
export type ReadSheet = (job: Job) => {
  readonly rows: readonly RatingRow[];
  readonly airflow: readonly AirflowMultiplier[];
};

/** Waits, as `null`, for the cells, or for what reads a whole table where there is one. */
export function ratingIn(job: Job, grid: RatingGrid, readSheet: ReadSheet | null): Test['rating'] {
  const from = chosen(job, 'rating.from') === 'generic' ? 'generic' : 'table';
  const sheet = usesSheet(job) ? (readSheet?.(job) ?? null) : null;
  const rows = from === 'generic' ? [] : usesSheet(job) ? (sheet?.rows ?? null) : gridRows(job, grid);
  if (rows === null) return null;
  return {
    rows,
    basis: chosen(job, 'rating.basis') ?? 'unsure',
    blowerPower: entered(job, 'rating.blowerPower'),
    blowerKind: blowerKindRated(job),
    beyond: chosen(job, 'rating.beyond') ?? 'refuse',
    from,
    stage: usesSheet(job) ? (chosen(job, 'rating.stage') ?? null) : null,
    certified: entered(job, 'rating.certified'),
    generic: genericIn(job),
    multipliers: {
      airflow: sheet?.airflow ?? [],
      indoorMatch: entered(job, 'rating.indoorMatch'),
      lineLength: entered(job, 'rating.lineLength'),
    },
  };
}

function gridRows(job: Job, grid: RatingGrid): readonly RatingRow[] | null {
  return grid.state === 'waiting' ? null : usableBlocks(grid).flatMap((block) => blockRows(job, grid, block));
}

/** The stage under test: a two-stage machine is tested at its high stage. Unsaid, it follows from how full speed was known. */
function stageOf(job: Job): GenericStage | null {
  const stages = chosen(job, 'equipment.stages');
  if (stages === 'two') return 'high';
  if (stages !== undefined) return stages;
  const fullSpeed = chosen(job, 'fullSpeed');
  if (fullSpeed === 'oneSpeed') return 'one';
  return fullSpeed === 'highStage' ? 'high' : null;
}

function genericIn(job: Job): Rating['generic'] {
  const stage = stageOf(job);
  if (stage === null) return null;
  const volumeFlow = entered(job, 'rating.certifiedAirflow');
  return {
    unit: chosen(job, 'equipment.heatPump') === 'yes' ? 'heatPump' : 'airConditioner',
    stage,
    dryAirFlow: volumeFlow === null ? null : volumeFlow * standardAirDensity,
  };
}

/** Of two blocks only those whose airflow is known, and one of each; without any, the first stands alone. */
function usableBlocks({ airflows }: Grid): readonly number[] {
  const flows = airflows.map(siOf);
  const usable = flows.flatMap((flow, block) => (flow !== null && flows.indexOf(flow) === block ? [block] : []));
  return usable.length === 0 ? [0] : usable;
}

function blockRows(job: Job, grid: Grid, block: number): RatingRow[] {
  const enteringDryBulb = entered(job, 'rating.enteringDryBulb');
  const volumeFlow = siOf(grid.airflows[block] ?? { state: 'empty' });
  const cells = grid.cells.filter((cell) => cell.block === block);
  return cells.flatMap((cell): RatingRow[] => {
    const outdoors = grid.outdoors[cell.outdoors];
    const wetBulb = grid.wetBulbs[cell.wetBulb];
    if (cell.quantity !== 'total' || outdoors === undefined || wetBulb === undefined) return [];
    const sensible = cells.find(
      (other) => other.quantity === 'sensible' && other.outdoors === cell.outdoors && other.wetBulb === cell.wetBulb,
    );
    return [
      {
        outdoorDryBulb: outdoors.si,
        enteringWetBulb: wetBulb.si,
        ...(enteringDryBulb === null ? {} : { enteringDryBulb }),
        // The airflow of a maker's table is in standard air.
        ...(volumeFlow === null ? {} : { dryAirFlow: volumeFlow * standardAirDensity }),
        total: siOf(cell.read),
        ...(sensible === undefined ? {} : { sensible: siOf(sensible.read) }),
      },
    ];
  });
}
