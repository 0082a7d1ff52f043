import { flowFactor, onCurve } from './airflowStep.ts';
import { standardPressureAtSeaLevel } from './constants.ts';
import { figureAt, locate, type Place } from './rated.ts';
import type { SourceKey } from './sources.ts';
import type { RatingConditions, RatingTable } from './types.ts';

/** What thinner air makes of the capacity. */
export interface AltitudeStep {
  /** Of the same volume with less mass in it through the indoor coil. */
  readonly factor: number;
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
  /** The conditions with the airflow as if at sea level, and their place in the table. */
  readonly read: RatingConditions;
  readonly place: Place;
  readonly dryAirFlow: number | undefined;
  readonly seaLevelFlow: number | undefined;
  readonly pressure: number;
}

/**
 * The step from the measured volume as if at sea level to the mass that it really holds. It goes along the same curve or
 * the same blocks as the airflow step and begins where that one ended, so that the thinner air counts once. The indoor factor
 * is 1 where the table states no airflow. Below the lowest block it runs on by the published curve.
 */
export function altitudeStep(table: RatingTable, args: AltitudeArguments): AltitudeStep {
  const { dryAirFlow, seaLevelFlow, pressure } = args;
  const share = pressure / standardPressureAtSeaLevel;
  if (share === 1) return { factor: 1, band: 0, applies: false, source: 'outdoorCoilAltitude' };
  const band = (outdoorCoil.loss * Math.abs(1 - share)) / outdoorCoil.thinner;
  if (dryAirFlow === undefined || seaLevelFlow === undefined) {
    return { factor: 1, band, applies: true, source: 'outdoorCoilAltitude' };
  }
  const factor =
    table.axes.dryAirFlow.length > 1
      ? betweenBlocks(table, args, dryAirFlow, seaLevelFlow)
      : flowFactor(table, dryAirFlow).total / flowFactor(table, seaLevelFlow).total;
  return { factor, band, applies: true, source: 'outdoorCoilAltitude' };
}

function betweenBlocks(
  table: RatingTable,
  { read, place }: AltitudeArguments,
  dryAirFlow: number,
  seaLevelFlow: number,
): number {
  const flows = table.axes.dryAirFlow;
  const edge = Math.min(Math.max(dryAirFlow, flows[0] as number), flows.at(-1) as number);
  const start = figureAt(table.total, table, place);
  const end = figureAt(table.total, table, locate(table, { ...read, dryAirFlow: edge }));
  const curve = onCurve(dryAirFlow / edge);
  const covered = seaLevelFlow >= (flows[0] as number) && seaLevelFlow <= (flows.at(-1) as number);
  if (start === null || end === null || !covered) return onCurve(dryAirFlow / seaLevelFlow);
  return (end / start) * curve;
}
