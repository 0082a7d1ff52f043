import { within } from '../errors.ts';
import { limits } from '../limits.ts';
import { amount } from '../trace.ts';
import type { Trace } from '../types.ts';
import { mean, missingCause, readList } from './cells.ts';
import { type AirflowFound, type BlowerSpeed, type Cause, found, remark } from './found.ts';
import { type AirThere, flowShown, type Gauge, gaugeCause, manometer, type ShownAs, zeroCause } from './instruments.ts';
import { airflowLimits } from './limits.ts';

export interface FlowGrid {
  /** What each plate shows, m³/s: one for every filter slot; `null` where nothing stands yet. */
  readonly plates: readonly (number | null)[];
  readonly shownAs: ShownAs;
  /** Supply static at one point and one speed, Pa: with the filter as always, and with the plates in. Their signs do not matter. */
  readonly pressureNormal: number;
  readonly pressureWithGrid: number;
  /** The air in the filter slot. */
  readonly air: AirThere;
  readonly gauge?: Gauge;
  readonly speed?: BlowerSpeed | undefined;
}

export interface FlowGridFound extends AirflowFound {
  /** What the plates show is multiplied by it. */
  readonly correction: number;
}

/** Standard uncertainties, common practice, no source: of a plate, and of the steadiness of a duct's pressure. */
const plate = 0.04;
const flutter = 0.02;
/** A correction beyond this says that the plate is not much like the filter. Our choice. */
const largeCorrection = 1.25;

/**
 * Airflow by metering plates in the filter slots, m³/s: V̇ = Σ V̇ₚ·√(p/pₚ), the pressures being the supply static without and with
 * the plates. Throws a `CalcError` for a pressure or plate out of range, or no plate read. `californiaAirflow`.
 */
export function airflowFromFlowGrid(grid: FlowGrid, t?: Trace): FlowGridFound {
  const { shownAs, air, gauge = manometer, speed } = grid;
  const normal = Math.abs(grid.pressureNormal);
  const loaded = Math.abs(grid.pressureWithGrid);
  within('pressureNormal', normal, airflowLimits.planePressure);
  within('pressureWithGrid', loaded, airflowLimits.planePressure);
  const cells = readList('plates', grid.plates, limits.volumeFlow);
  const shown = mean(cells.values) * grid.plates.length;
  const correction = Math.sqrt(normal / loaded);
  const corrected = shown * correction;
  t?.({
    id: 'airflow.flowGrid.correction',
    equation: 'V̇ = V̇ₚ·√(p/pₚ)',
    puts: [amount('V̇ₚ', 'volumeFlow', shown), amount('p', 'airPressure', normal), amount('pₚ', 'airPressure', loaded)],
    gives: amount('V̇', 'volumeFlow', corrected),
    source: 'flowGridCorrection',
  });
  const causes: readonly Cause[] = [
    { name: 'flowGrid.plate', u: plate, basis: 'commonPractice' },
    { name: 'flowGrid.flutter', u: Math.SQRT1_2 * flutter, basis: 'commonPractice' },
    gaugeCause(gauge, 0.5),
    zeroCause('flowGrid.zero', Math.min(normal, loaded), 0.5 * Math.abs(normal / loaded - 1)),
    ...missingCause('flowGrid.missing', cells.values, cells.missing),
  ];
  const factor = amount('C', 'ratio', correction);
  const remarks = [
    ...(correction > largeCorrection ? [remark('largeGridCorrection', 'doubt', factor)] : []),
    ...(correction < 1 ? [remark('gridRaisedPressure', 'doubt', factor)] : []),
  ];
  const flow = flowShown(corrected, shownAs, air, t);
  const { problems, missing } = cells;
  return {
    ...found({ method: 'flowGrid', ...flow, causes, remarks, problems, partial: missing > 0, speed }, t),
    correction,
  };
}
