import { within } from '../errors.ts';
import { amount } from '../trace.ts';
import type { Trace } from '../types.ts';
import { type Cause, ofLimit } from './found.ts';
import { airflowLimits } from './limits.ts';

/** What heats the air while the flow is measured. */
export type HeatSource =
  | {
      readonly kind: 'electric';
      readonly phases: 1 | 3;
      /** Between lines, V. */
      readonly voltage: number;
      /** In a line, A. */
      readonly current: number;
      /** 1 when left out: a heating element is a resistance. */
      readonly powerFactor?: number;
    }
  | { readonly kind: 'power'; readonly power: number }
  | {
      readonly kind: 'fuel';
      /** Heat in the fuel burnt, W: clocked, see `clockedInput`. */
      readonly input: number;
      readonly efficiency: number;
      /** Measured in the flue, or the annual figure of the label, or guessed. */
      readonly efficiencyFrom: 'measured' | 'annual' | 'guessed';
    };

/** Standard uncertainties, common practice, no source. */
const meters = 0.02;
const clocking = 0.02;
const efficiency = { measured: 0.015, annual: 0.06, guessed: 0.06 } as const;

/**
 * Heat that reaches the air, W: V·A·pf (times √3 for three phases), a measured power, or fuel times combustion efficiency.
 * Throws a `CalcError` naming the figure that is out of range.
 */
export function heatOf(source: HeatSource, t?: Trace): number {
  if (source.kind === 'electric') return electricHeat(source, t);
  if (source.kind === 'power') {
    within('heat.power', source.power, airflowLimits.heat);
    return source.power;
  }
  within('heat.input', source.input, airflowLimits.heat);
  within('heat.efficiency', source.efficiency, airflowLimits.efficiency);
  const heat = source.input * source.efficiency;
  t?.({
    id: 'airflow.heat.fuel',
    equation: 'Q = Q_f·η',
    puts: [amount('Q_f', 'power', source.input), amount('η', 'fraction', source.efficiency)],
    gives: amount('Q', 'power', heat),
    source: 'definition',
  });
  return heat;
}

function electricHeat(source: Extract<HeatSource, { kind: 'electric' }>, t?: Trace): number {
  const { phases, voltage, current, powerFactor = 1 } = source;
  within('heat.voltage', voltage, airflowLimits.voltage);
  within('heat.current', current, airflowLimits.current);
  within('heat.powerFactor', powerFactor, airflowLimits.powerFactor);
  const heat = (phases === 3 ? Math.sqrt(3) : 1) * voltage * current * powerFactor;
  t?.({
    id: `airflow.heat.${phases === 3 ? 'threePhase' : 'singlePhase'}`,
    equation: phases === 3 ? 'Q = √3·U·I·cos φ' : 'Q = U·I·cos φ',
    puts: [amount('U', 'voltage', voltage), amount('I', 'current', current), amount('cos φ', 'ratio', powerFactor)],
    gives: amount('Q', 'power', heat),
    source: 'definition',
  });
  return heat;
}

/** The error of the heat as stated. */
export function heatCauses(source: HeatSource): readonly Cause[] {
  if (source.kind !== 'fuel') return [{ name: 'heat.meters', u: meters, basis: 'commonPractice' }];
  return [
    { name: 'heat.clocking', u: clocking, basis: 'commonPractice' },
    {
      name: 'heat.efficiency',
      u: ofLimit(efficiency[source.efficiencyFrom]),
      basis: 'commonPractice',
      shape: 'rectangular',
    },
  ];
}

export interface Clocked {
  /** Gas that went through the meter, m³, and how long it took, s. */
  readonly volume: number;
  readonly time: number;
  /** What the supplier states, J/m³ as the meter counts it. */
  readonly heatingValue: number;
}

/** Heat in the gas burnt, W, from the meter's dial and a watch. Throws a `CalcError` for a figure out of range. */
export function clockedInput({ volume, time, heatingValue }: Clocked, t?: Trace): number {
  within('gas.volume', volume, airflowLimits.gasVolume);
  within('gas.time', time, airflowLimits.time);
  within('gas.heatingValue', heatingValue, airflowLimits.heatingValue);
  const input = (volume / time) * heatingValue;
  t?.({
    id: 'airflow.heat.clocked',
    equation: 'Q_f = V·H/τ',
    puts: [amount('V', 'volume', volume), amount('H', 'heatingValue', heatingValue), amount('τ', 'duration', time)],
    gives: amount('Q_f', 'power', input),
    source: 'definition',
  });
  return input;
}
