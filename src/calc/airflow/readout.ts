import type { Airflow } from '../dryAirFlow.ts';
import { amount } from '../trace.ts';
import type { Trace } from '../types.ts';
import { type AirflowFound, type BlowerSpeed, type Cause, found, ofLimit, remark } from './found.ts';
import { middleOfWays } from './ways.ts';

export interface Readout {
  /** m³/s, as the control shows it. */
  readonly volumeFlow: number;
  /** Whether the control senses the flow or only asks for it. Not sure counts as asking. */
  readonly shows: 'sensed' | 'demanded' | 'unsure';
  /** How the figure may be counted; more than one where nobody can tell. */
  readonly ways: readonly Airflow['at'][];
  readonly speed?: BlowerSpeed | undefined;
}

/** Half-widths. Common practice, no source. */
const limit = { sensed: 0.1, demanded: 0.15, unsure: 0.15 } as const;

/**
 * The airflow that the control of the blower shows, m³/s. A flow that it only asks for is a setting and no evidence: it is
 * returned, marked so. Limits are common practice. Throws a `CalcError` for a bad figure or no way to count it.
 */
export function airflowFromReadout({ volumeFlow, shows, ways, speed }: Readout, t?: Trace): AirflowFound {
  const meant = middleOfWays(volumeFlow, ways, t);
  const causes: readonly Cause[] = [
    { name: 'readout.motor', u: ofLimit(limit[shows]), basis: 'commonPractice', shape: 'rectangular' },
    ...meant.causes,
  ];
  const remarks = [
    ...(shows === 'demanded' ? [remark('readoutIsSetting', 'doubt')] : []),
    ...(shows === 'unsure' ? [remark('readoutMayBeSetting', 'doubt')] : []),
    ...(meant.price > 0 ? [remark('airflowWayUnsure', 'note', amount('Δ', 'fraction', meant.price))] : []),
  ];
  const evidence = shows === 'sensed';
  return found({ method: 'readout', volumeFlow: meant.volumeFlow, at: meant.at, causes, remarks, evidence, speed }, t);
}
