import { heatDryAir, heatVapor, vaporEnthalpy } from './constants.ts';
import type { AirStream } from './mix.ts';
import { amount } from './trace.ts';
import type { Amount, Trace } from './types.ts';

/** The working of `mix`, step by step. */
export function traceMix(a: AirStream, b: AirStream, mixed: AirStream, t: Trace): void {
  const flows = [amount('ṁ₁', 'massFlow', a.dryAirFlow), amount('ṁ₂', 'massFlow', b.dryAirFlow)];
  const flow = amount('ṁ₃', 'massFlow', mixed.dryAirFlow);
  const W = amount('W₃', 'humidityRatio', mixed.air.humidityRatio);
  const h = amount('h₃', 'enthalpy', mixed.air.enthalpy);
  const step = (name: string, equation: string, puts: readonly Amount[], gives: Amount) =>
    t({ id: `mix.${name}`, equation, puts, gives, source: 'handbookPsychrometrics' });
  step('dryAirFlow', 'ṁ₃ = ṁ₁ + ṁ₂', flows, flow);
  const shared = (symbol: string, kind: 'humidityRatio' | 'enthalpy') => [
    ...flows,
    amount(`${symbol}₁`, kind, a.air[kind]),
    amount(`${symbol}₂`, kind, b.air[kind]),
  ];
  step('humidityRatio', 'W₃ = (ṁ₁·W₁ + ṁ₂·W₂)/(ṁ₁ + ṁ₂)', shared('W', 'humidityRatio'), W);
  step('enthalpy', 'h₃ = (ṁ₁·h₁ + ṁ₂·h₂)/(ṁ₁ + ṁ₂)', shared('h', 'enthalpy'), h);
  step(
    'dryBulb',
    't₃ = (h₃ − W₃·hᵥ)/(cₚₐ + W₃·cₚᵥ)',
    [
      h,
      W,
      amount('hᵥ', 'enthalpy', vaporEnthalpy),
      amount('cₚₐ', 'specificHeat', heatDryAir),
      amount('cₚᵥ', 'specificHeat', heatVapor),
    ],
    amount('t₃', 'temperature', mixed.air.dryBulb),
  );
}
