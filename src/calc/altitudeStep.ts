import { flowFactor } from './airflowStep.ts';
import { standardPressureAtSeaLevel } from './constants.ts';
import { figureAt, locate } from './rated.ts';
import type { SourceKey } from './sources.ts';
import type { RatingConditions, RatingTable } from './types.ts';

/** What thinner air makes of the capacity. */
export interface AltitudeStep {
  /** What the same volume with less mass in it makes of the capacity, by the curve or the blocks of the airflow step. */
  readonly ratio: number;
  /** Relative half-width: the outdoor coil moves less mass too, and by how much that counts is not settled. */
  readonly band: number;
  readonly applies: boolean;
  readonly source: SourceKey;
}

/**
 * Loss by the outdoor coil: 2 % where the air is 16.8 % thinner (5000 ft), from published data on condenser airflow, itself
 * known to ±2 %. The whole of it is a band, in proportion to what the air has lost; nothing is taken off the middle.
 */
const outdoorCoil = { loss: 0.02, thinner: 0.168 } as const;

export interface AltitudeArguments {
  /** The conditions, and the total printed for them at the airflow as if at sea level, W. */
  readonly read: RatingConditions;
  readonly printed: number;
  readonly dryAirFlow: number | undefined;
  readonly pressure: number;
}

/**
 * The step from the measured volume as if at sea level to the mass that it really holds. It goes along the same curve or
 * the same blocks as the airflow step and begins where that one ended, so that the thinner air counts once. The ratio is 1
 * where the table states no airflow. Below its lowest airflow a table runs on in the line of its last cell.
 */
export function altitudeStep(table: RatingTable, args: AltitudeArguments): AltitudeStep {
  const { read, printed, dryAirFlow, pressure } = args;
  const share = pressure / standardPressureAtSeaLevel;
  const source = 'outdoorCoilAltitude';
  if (share === 1) return { ratio: 1, band: 0, applies: false, source };
  const band = (outdoorCoil.loss * Math.abs(1 - share)) / outdoorCoil.thinner;
  if (dryAirFlow === undefined) return { ratio: 1, band, applies: true, source };
  if (table.axes.dryAirFlow.length < 2) {
    const ratio = flowFactor(table, dryAirFlow).total / flowFactor(table, dryAirFlow / share).total;
    return { ratio, band, applies: true, source };
  }
  const end = figureAt(table.total, locate(table, read, read.enteringWetBulb, dryAirFlow)) ?? printed;
  return { ratio: end / printed, band, applies: true, source };
}
