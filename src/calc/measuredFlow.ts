import { type Airflow, dryAirFlow } from './dryAirFlow.ts';
import { attempt, lacking, waitingFor } from './outcome.ts';
import { given } from './readings.ts';
import { amount, prefixed } from './trace.ts';
import type { MoistAir, Outcome, Test, Trace } from './types.ts';

/** A dry-air flow, kg/s, with the lowest and highest that the answers allow; all three are one when place and kind are known. */
export interface MeasuredFlow {
  readonly dryAirFlow: number;
  readonly low: number;
  readonly high: number;
}

/** One way to take the figure: the name of the place, and the air that it is a volume of. */
interface Reading {
  readonly name: 'standard' | 'entering' | 'leaving';
  readonly at: Airflow['at'];
}

/**
 * The dry-air flow of a test. Where the place or the kind is not known, every reading that is left is worked out and the
 * middle of the extremes is taken: 4 % between return and supply, and the whole density ratio between actual and standard.
 */
export function flowOf(
  test: Test,
  entering: Outcome<MoistAir>,
  leaving: Outcome<MoistAir>,
  t?: Trace,
): Outcome<MeasuredFlow> {
  const { volumeFlow } = test.airflow;
  const states = { entering, leaving };
  const places = placesOf(test);
  const figure = given(volumeFlow) ? { ok: true as const, value: volumeFlow } : waitingFor('airflow.volumeFlow');
  const lack = lacking(figure, ...places.map((place) => states[place]));
  if (lack) return lack;
  const there = <T>(outcome: Outcome<T>) => (outcome as Extract<Outcome<T>, { readonly ok: true }>).value;
  const readings: Reading[] = places.map((name) => ({
    name,
    at: { specificVolume: there(states[name]).specificVolume },
  }));
  if (test.airflow.kind !== 'actual') readings.unshift({ name: 'standard', at: 'standard' });
  return attempt(
    () => middleOf(volumeFlow as number, readings, t),
    (quantity) => `airflow.${quantity}`,
  );
}

/** Where the figure may be a volume of the air as it moves; nowhere when it is standard air. */
function placesOf({ airflow: { place, kind } }: Test): readonly ('entering' | 'leaving')[] {
  if (kind === 'standard') return [];
  return place === 'entering' || place === 'leaving' ? [place] : ['entering', 'leaving'];
}

function middleOf(volumeFlow: number, readings: readonly Reading[], t?: Trace): MeasuredFlow {
  const single = readings.length === 1;
  const flows = readings.map(({ name, at }) => dryAirFlow({ volumeFlow, at }, single ? t : prefixed(t, name)));
  const low = Math.min(...flows);
  const high = Math.max(...flows);
  const middle = (low + high) / 2;
  if (!single) {
    t?.({
      id: 'dryAirFlow.middle',
      equation: 'ṁ = (ṁₗ + ṁₕ)/2',
      puts: [amount('ṁₗ', 'massFlow', low), amount('ṁₕ', 'massFlow', high)],
      gives: amount('ṁ', 'massFlow', middle),
      source: 'definition',
    });
  }
  return { dryAirFlow: middle, low, high };
}
