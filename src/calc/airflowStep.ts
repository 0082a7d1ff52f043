import { standardPressureAtSeaLevel } from './constants.ts';
import type { SourceKey } from './sources.ts';
import { amount } from './trace.ts';
import type { AirflowMultiplier, RatingTable, Trace } from './types.ts';

/** Capacity over the air mass flow ratio f: 0.8 + 0.2·f, 1 at the flow of the table. */
const flowCurve = { fixed: 0.8, perFlow: 0.2 } as const;
/** Flow ratios that the published curves are taken for. */
export const flowRange = [0.7, 1.3] as const;

/** What another airflow than the table's makes of the figures. */
export interface FlowFactor {
  readonly total: number;
  /** The maker's own factor for the sensible capacity; `null` where it has to come from the coil's bypass factor. */
  readonly sensible: number | null;
  readonly applies: boolean;
  readonly source: SourceKey;
}

const none: FlowFactor = { total: 1, sensible: null, applies: false, source: 'flowCurve' };

/**
 * The factors at a dry-air flow, kg/s: the maker's own where the table has them, else the published curve around the one flow
 * that the table states. No step where the table states none, or several (it is read between them itself), or none is known
 * here. The published curves are for the mass flow. They do not agree: at 80 % flow this one gives 0.960, six others 0.954
 * to 0.966, and one regression of laboratory faults 0.862. Source: see `flowCurve` in the bibliography.
 */
export function flowFactor(table: RatingTable, dryAirFlow: number | undefined): FlowFactor {
  if (dryAirFlow === undefined) return none;
  const lines = table.multipliers.airflow;
  if (lines.length > 0) return { ...makersFactor(lines, dryAirFlow), source: sourceOf(table) };
  const [stated, second] = table.axes.dryAirFlow;
  if (stated === undefined || second !== undefined) return none;
  const ratio = dryAirFlow / stated;
  if (Math.abs(ratio - 1) < 1e-9) return none;
  return { total: onCurve(ratio), sensible: null, applies: true, source: 'flowCurve' };
}

/** The published curve at a ratio of mass flows. */
export function onCurve(ratio: number): number {
  return flowCurve.fixed + flowCurve.perFlow * ratio;
}

const sourceOf = ({ from }: RatingTable): SourceKey => (from === 'generic' ? 'genericCurves' : 'makersTable');

/** Between two lines in proportion; beyond them as much more or less as the published curve says. */
function makersFactor(lines: readonly AirflowMultiplier[], dryAirFlow: number): Omit<FlowFactor, 'source'> {
  let upper = 0;
  while (upper < lines.length && dryAirFlow > (lines[upper] as AirflowMultiplier).dryAirFlow) upper++;
  const to = lines[Math.min(upper, lines.length - 1)] as AirflowMultiplier;
  const from = lines[Math.max(upper - 1, 0)] as AirflowMultiplier;
  if (from === to) {
    const beyond = onCurve(dryAirFlow / to.dryAirFlow);
    const own = Math.abs(dryAirFlow / to.dryAirFlow - 1) < 1e-9;
    return { total: to.total * beyond, sensible: own ? to.sensible : null, applies: true };
  }
  const share = (dryAirFlow - from.dryAirFlow) / (to.dryAirFlow - from.dryAirFlow);
  const total = from.total + share * (to.total - from.total);
  const known = from.sensible !== null && to.sensible !== null;
  const sensible = known ? from.sensible + share * (to.sensible - from.sensible) : null;
  return { total, sensible, applies: true };
}

/**
 * The dry-air flows, kg/s, that a table covers: its blocks, its maker's multipliers, or what the curves are taken for around the
 * one that it states; `null` where it states none.
 */
export function flowCovered(table: RatingTable): readonly [number, number] | null {
  const { airflow } = table.multipliers;
  const flows = table.axes.dryAirFlow;
  const first = airflow[0]?.dryAirFlow ?? flows[0];
  const last = airflow.at(-1)?.dryAirFlow ?? flows.at(-1);
  if (first === undefined || last === undefined) return null;
  const stated = airflow.length === 0 && flows.length === 1;
  return stated ? [flowRange[0] * first, flowRange[1] * first] : [first, last];
}

/**
 * Whether an airflow, kg/s, is beyond what the table covers: the measured volume as if at sea level and the mass that it really
 * holds both are, on one side. High up the volume may be above the table and the mass, which counts, inside it.
 */
export function isFlowOutside(table: RatingTable, dryAirFlow: number | undefined, pressure: number): boolean {
  const covered = flowCovered(table);
  if (covered === null || dryAirFlow === undefined) return false;
  const seaLevelFlow = (dryAirFlow * standardPressureAtSeaLevel) / pressure;
  const edge = 1e-9;
  const below = Math.max(dryAirFlow, seaLevelFlow) < covered[0] * (1 - edge);
  return below || Math.min(dryAirFlow, seaLevelFlow) > covered[1] * (1 + edge);
}

/** The working of the step; before it the capacity at the table's own flow, W, under its symbol, and the blower heat inside it; `dryAirFlow` the flow that it is brought to. */
export function traceAirflowStep(
  table: RatingTable,
  dryAirFlow: number,
  { total, source }: FlowFactor,
  [symbol, before]: readonly [string, number],
  inside: number,
  t: Trace,
): void {
  if (source !== 'flowCurve') {
    const puts = [amount(symbol, 'power', before), amount('k', 'ratio', total), amount('ṁ₀', 'massFlow', dryAirFlow)];
    const gives = amount('Q₂', 'power', before * total);
    t({ id: 'expectation.airflow', equation: `Q₂ = ${symbol}·k`, puts, gives, source });
    return;
  }
  const stated = table.axes.dryAirFlow[0] as number;
  const ratio = amount('f', 'ratio', dryAirFlow / stated);
  t({
    id: 'expectation.flowRatio',
    equation: 'f = ṁ₀/ṁᵣ',
    puts: [amount('ṁ₀', 'massFlow', dryAirFlow), amount('ṁᵣ', 'massFlow', stated)],
    gives: ratio,
    source: 'definition',
  });
  t({
    id: 'expectation.airflow',
    equation: inside === 0 ? `Q₂ = ${symbol}·(k₀ + k₁·f)` : `Q₂ = (${symbol} + Pᵣ)·(k₀ + k₁·f) − Pᵣ`,
    puts: [
      amount(symbol, 'power', before),
      ...(inside === 0 ? [] : [amount('Pᵣ', 'power', inside)]),
      amount('k₀', 'ratio', flowCurve.fixed),
      amount('k₁', 'ratio', flowCurve.perFlow),
      ratio,
    ],
    gives: amount('Q₂', 'power', (before + inside) * total - inside),
    source,
  });
}
