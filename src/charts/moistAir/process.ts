/** What a coil does to the air, as places on the chart. Works out where things lie, not what they are called. */
import { apparatus } from '../../calc/apparatus.ts';
import { coilProcess } from '../../calc/coilLoad.ts';
import type { BlowerPlace, CoilLoad, MoistAir } from '../../calc/types.ts';
import type { Point } from '../shapes.ts';
import type { AirPoint, ChartFrame } from './frame.ts';
import { saturated, xOf, yOf } from './frame.ts';
import type { ReadingUncertainty } from './region.ts';

export interface ChartProcess {
  readonly entering: MoistAir;
  readonly leaving: MoistAir;
  /** Gives the figures at the legs; without it the legs have none. */
  readonly load?: CoilLoad | null | undefined;
  /** Needs a load, for its dry-air flow. */
  readonly blower?: { readonly heat: number; readonly place: BlowerPlace } | null | undefined;
  /** How sure the two readings are; a point without has no region. */
  readonly uncertainty?: {
    readonly entering?: ReadingUncertainty | null | undefined;
    readonly leaving?: ReadingUncertainty | null | undefined;
  };
}

/** The coil's own process, with the blower's heat taken out, and where it meets saturation. */
export interface CoilOnChart {
  readonly entering: AirPoint;
  readonly leaving: AirPoint;
  /** Air saturated at the apparatus dew point; `null` where the line does not meet saturation. */
  readonly apparatus: AirPoint | null;
  readonly bypassFactor: number | null;
}

export function coilOnChart({ entering, leaving, load, blower }: ChartProcess): CoilOnChart {
  const heat = load && blower ? { blower } : {};
  const own = coilProcess({ entering, leaving, dryAirFlow: load?.dryAirFlow ?? 1, ...heat });
  const found = apparatus(own);
  return {
    entering: { dryBulb: own.enteringDryBulb, humidityRatio: own.enteringHumidityRatio },
    leaving: { dryBulb: own.leavingDryBulb, humidityRatio: own.leavingHumidityRatio },
    apparatus: found && { dryBulb: found.dewPoint, humidityRatio: saturated(entering, found.dewPoint) },
    bypassFactor: found?.bypassFactor ?? null,
  };
}

/** Everything that a close-up of a process has to show: what to give to `chartFrame` as `around`. */
export function pointsOf(process: ChartProcess): AirPoint[] {
  const coil = coilOnChart(process);
  const all = [process.entering, process.leaving, coil.entering, coil.leaving];
  return coil.apparatus ? [...all, coil.apparatus] : all;
}

export const placeOf = (frame: ChartFrame, air: AirPoint): Point => [
  xOf(frame, air.dryBulb),
  yOf(frame, air.humidityRatio),
];
