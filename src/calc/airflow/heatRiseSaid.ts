import { heatDryAir, heatVapor } from '../constants.ts';
import { amount } from '../trace.ts';
import type { Amount, Remark, Trace } from '../types.ts';
import { remark } from './found.ts';
import type { TemperatureRise } from './heatRise.ts';

/** A wet coil lets less air through than a dry one: half-width. Common practice, no source. */
export const wetting = 0.03;

/** What a rise was worked out to: W, K and kg/s. */
interface Working {
  readonly source: number;
  readonly blower: number;
  readonly rise: number;
  readonly flow: number;
}

/** The working of `airflowFromTemperatureRise`. */
export function traceRise(test: TemperatureRise, { source, blower, rise, flow }: Working, t?: Trace): void {
  if (!t) return;
  const difference = amount('Δt', 'temperatureDifference', rise);
  t({
    id: 'airflow.temperatureRise.rise',
    equation: 'Δt = t₂ − t₁',
    puts: [amount('t₂', 'temperature', test.leavingDryBulb), amount('t₁', 'temperature', test.enteringDryBulb)],
    gives: difference,
    source: 'definition',
  });
  t({
    id: 'airflow.temperatureRise.flow',
    equation: 'ṁ = (Q + qᵦ)/((cₚₐ + cₚᵥ·W)·Δt)',
    puts: [
      amount('Q', 'power', source),
      amount('qᵦ', 'power', blower),
      amount('cₚₐ', 'specificHeat', heatDryAir),
      amount('cₚᵥ', 'specificHeat', heatVapor),
      amount('W', 'humidityRatio', test.humidityRatio),
      difference,
    ],
    gives: amount('ṁ', 'massFlow', flow),
    source: 'definition',
  });
}

/** What is odd about a temperature rise. */
export function riseRemarks(
  { heat, blower, probes, speed, probeLimit }: TemperatureRise,
  rise: number,
): readonly Remark[] {
  const degree: Amount = amount('u', 'fraction', Math.min(1, probeLimit / rise));
  return [
    ...(speed === 'cooling' ? [] : [remark('heatingSpeed', 'doubt')]),
    ...(probes === 'inSight' ? [remark('probeSeesHeat', 'doubt')] : []),
    ...(probes === 'one' ? [remark('oneProbePoint', 'doubt', degree)] : []),
    ...(heat.kind === 'fuel' && heat.efficiencyFrom === 'annual' ? [remark('annualEfficiency', 'doubt')] : []),
    ...(heat.kind === 'fuel' && heat.efficiencyFrom === 'guessed' ? [remark('guessedEfficiency', 'doubt')] : []),
    ...(blower === 'assumed' ? [remark('heatBlowerAssumed', 'note')] : []),
    remark('dryCoilAirflow', 'note', amount('Δ', 'fraction', wetting)),
  ];
}
