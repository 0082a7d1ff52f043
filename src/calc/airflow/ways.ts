import { standardAirDensity } from '../constants.ts';
import { type Airflow, dryAirFlow } from '../dryAirFlow.ts';
import { CalcError } from '../errors.ts';
import { amount } from '../trace.ts';
import type { MoistAir, Trace } from '../types.ts';
import { type Cause, ofLimit } from './found.ts';

/** A figure that may be meant in more than one way, and what that is worth. */
export interface Unsure extends Airflow {
  /** kg/s: the middle, and the extremes. */
  readonly dryAirFlow: number;
  readonly low: number;
  readonly high: number;
  /** Half of the difference over the middle: what knowing would be worth. */
  readonly price: number;
  readonly causes: readonly Cause[];
}

/**
 * The dry-air flow of a volume flow (m³/s) that may have been counted in any of several ways: the middle of the extremes, and
 * half of their difference as a rectangular limit. One way is just that. Throws a `CalcError` for none, or for a bad figure.
 */
export function middleOfWays(volumeFlow: number, ways: readonly Airflow['at'][], t?: Trace): Unsure {
  const [only, second] = ways;
  if (only === undefined) throw new CalcError('missing', 'ways', 0, 1, 3);
  const flows = ways.map((at) => dryAirFlow({ volumeFlow, at }));
  const low = Math.min(...flows);
  const high = Math.max(...flows);
  const middle = (low + high) / 2;
  if (second === undefined) return { volumeFlow, at: only, dryAirFlow: middle, low, high, price: 0, causes: [] };
  t?.({
    id: 'airflow.middle',
    equation: 'ṁ = (ṁₗ + ṁₕ)/2',
    puts: [amount('ṁₗ', 'massFlow', low), amount('ṁₕ', 'massFlow', high)],
    gives: amount('ṁ', 'massFlow', middle),
    source: 'definition',
  });
  const price = (high - low) / 2 / middle;
  return {
    volumeFlow: middle / standardAirDensity,
    at: 'standard',
    dryAirFlow: middle,
    low,
    high,
    price,
    causes: [{ name: 'airflow.way', u: ofLimit(price), basis: 'definition', shape: 'rectangular' }],
  };
}

export type WayName = 'standard' | 'entering' | 'leaving';

/** One airflow counted in one way, and what taking the figure for it would do. */
export interface Way {
  readonly name: WayName;
  readonly at: Airflow['at'];
  /** The same air, m³/s. */
  readonly volumeFlow: number;
  /** Relative error of the dry-air flow if the figure itself were taken to be counted so. */
  readonly mistaken: number;
}

/**
 * An airflow as standard air and as it moves at the return and at the supply, side by side, with what mistaking the figure for
 * each would cost. By density alone (ASHRAE Fundamentals ch. 1); the air may be at any altitude.
 */
export function airflowWays(
  airflow: Airflow,
  { entering, leaving }: { readonly entering: MoistAir | null; readonly leaving: MoistAir | null },
): readonly Way[] {
  const flow = dryAirFlow(airflow);
  const way = (name: WayName, at: Airflow['at']): Way => ({
    name,
    at,
    volumeFlow: flow * volumePerKilogram(at),
    mistaken: dryAirFlow({ volumeFlow: airflow.volumeFlow, at }) / flow - 1,
  });
  return [
    way('standard', 'standard'),
    ...(entering ? [way('entering', { specificVolume: entering.specificVolume })] : []),
    ...(leaving ? [way('leaving', { specificVolume: leaving.specificVolume })] : []),
  ];
}

/** m³ of one kilogram of dry air, counted in one way. */
function volumePerKilogram(at: Airflow['at']): number {
  return at === 'standard' ? 1 / standardAirDensity : at.specificVolume;
}
