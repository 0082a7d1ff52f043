import { standardVolumeFlow } from '../dryAirFlow.ts';
import { within } from '../errors.ts';
import { limits } from '../limits.ts';
import type { SourceKey } from '../sources.ts';
import { amount } from '../trace.ts';
import type { Trace } from '../types.ts';
import { cubicFootPerMinute, tonOfRefrigeration } from '../units.ts';
import { practice } from './limits.ts';

/** What an airflow per ton may be compared with. */
export type PerTonName = 'humid' | 'ordinary' | 'dry' | 'rated' | 'working';

export interface PerTonRange {
  readonly name: PerTonName;
  /** m³/s of standard air per ton. */
  readonly range: readonly [number, number];
  readonly position: 'below' | 'inside' | 'above';
  readonly source: SourceKey;
}

export interface PerTon {
  /** m³/s of standard air per ton of the nominal capacity. */
  readonly each: number;
  readonly ranges: readonly PerTonRange[];
}

/** Cubic feet a minute per ton. By climate: common practice, no source. Rated and at work: the limits of a published model. */
const rows: readonly (readonly [PerTonName, readonly [number, number], SourceKey])[] = [
  ['humid', [325, 350], 'commonPractice'],
  ['ordinary', [350, 400], 'commonPractice'],
  ['dry', [400, 450], 'commonPractice'],
  ['rated', practice.ratedPerTon, 'coilModel'],
  ['working', practice.workingPerTon, 'coilModel'],
];

/**
 * An airflow (kg/s of dry air) per ton of nominal capacity (W), beside what is usual. No public source gives the ranges by
 * climate; the maker's table and setting outrank them. Throws a `CalcError` for a flow or a capacity out of range.
 */
export function airflowPerTon(dryAirFlow: number, nominalCapacity: number, t?: Trace): PerTon {
  within('dryAirFlow', dryAirFlow, limits.dryAirFlow);
  within('nominalCapacity', nominalCapacity, limits.capacity);
  const volumeFlow = standardVolumeFlow(dryAirFlow);
  const tons = nominalCapacity / tonOfRefrigeration;
  const each = volumeFlow / tons;
  t?.({
    id: 'airflow.perTon',
    equation: 'V̇ₜ = V̇/n',
    puts: [amount('V̇', 'volumeFlow', volumeFlow), amount('n', 'ratio', tons)],
    gives: amount('V̇ₜ', 'volumeFlow', each),
    source: 'definition',
  });
  const ranges = rows.map(([name, [low, high], source]): PerTonRange => {
    const range = [low * cubicFootPerMinute, high * cubicFootPerMinute] as const;
    return { name, range, position: each < range[0] ? 'below' : each > range[1] ? 'above' : 'inside', source };
  });
  return { each, ranges };
}
