import type { Apparatus, CoilProcess } from './apparatus.ts';
import type { CoilReadings } from './coilLoad.ts';
import { heatDryAir, heatVapor, heatWater } from './constants.ts';
import { amount } from './trace.ts';
import type { CoilLoad, Trace } from './types.ts';

/** The working of `coilLoad`, step by step. */
export function traceLoad({ entering, leaving, dryAirFlow }: CoilReadings, load: CoilLoad, t: Trace): void {
  const flow = amount('ṁ', 'massFlow', dryAirFlow);
  const total = amount('Q', 'power', load.total);
  const sensible = amount('Qₛ', 'power', load.sensible);
  const water = amount('ṁₗ', 'massFlow', load.condensate);
  t({
    id: 'coilLoad.total',
    equation: 'Q = ṁ·(h₁ − h₂)',
    puts: [flow, amount('h₁', 'enthalpy', entering.enthalpy), amount('h₂', 'enthalpy', leaving.enthalpy)],
    gives: total,
    source: 'airEnthalpyMethod',
  });
  t({
    id: 'coilLoad.sensible',
    equation: 'Qₛ = ṁ·(cₚₐ + cₚᵥ·W₂)·(t₁ − t₂)',
    puts: [
      flow,
      amount('cₚₐ', 'specificHeat', heatDryAir),
      amount('cₚᵥ', 'specificHeat', heatVapor),
      amount('W₂', 'humidityRatio', leaving.humidityRatio),
      amount('t₁', 'temperature', entering.dryBulb),
      amount('t₂', 'temperature', leaving.dryBulb),
    ],
    gives: sensible,
    source: 'airEnthalpyMethod',
  });
  t({
    id: 'coilLoad.latent',
    equation: 'Qₗ = Q − Qₛ',
    puts: [total, sensible],
    gives: amount('Qₗ', 'power', load.latent),
    source: 'definition',
  });
  t({
    id: 'coilLoad.sensibleHeatRatio',
    equation: 'SHR = Qₛ/Q',
    puts: [sensible, total],
    gives: amount('SHR', 'fraction', load.sensibleHeatRatio),
    source: 'definition',
  });
  t({
    id: 'coilLoad.condensate',
    equation: 'ṁₗ = max(0, ṁ·(W₁ − W₂))',
    puts: [
      flow,
      amount('W₁', 'humidityRatio', entering.humidityRatio),
      amount('W₂', 'humidityRatio', leaving.humidityRatio),
    ],
    gives: water,
    source: 'definition',
  });
  t({
    id: 'coilLoad.condensateEnthalpy',
    equation: 'qₗ = ṁₗ·cₗ·t*₂',
    puts: [water, amount('cₗ', 'specificHeat', heatWater), amount('t*₂', 'temperature', leaving.wetBulb)],
    gives: amount('qₗ', 'power', load.condensateEnthalpy),
    source: 'handbookPsychrometrics',
  });
}

/** The working of the apparatus dew point; says nothing where there is none. */
export function traceApparatus(readings: CoilReadings, process: CoilProcess, found: Apparatus | null, t: Trace): void {
  traceBlower(readings, process, t);
  if (!found) return;
  const entering = amount('t₁′', 'temperature', process.enteringDryBulb);
  const leaving = amount('t₂′', 'temperature', process.leavingDryBulb);
  const surface = amount('tₐ', 'temperature', found.dewPoint);
  t({
    id: 'apparatus.dewPoint',
    equation: 'Wₛ(tₐ, p) = W₂ − (W₁ − W₂)·(t₂′ − tₐ)/(t₁′ − t₂′)',
    puts: [
      entering,
      amount('W₁', 'humidityRatio', process.enteringHumidityRatio),
      leaving,
      amount('W₂', 'humidityRatio', process.leavingHumidityRatio),
      amount('p', 'pressure', process.pressure),
    ],
    gives: surface,
    source: 'coilModel',
  });
  t({
    id: 'apparatus.bypassFactor',
    equation: 'b = (t₂′ − tₐ)/(t₁′ − tₐ)',
    puts: [entering, leaving, surface],
    gives: amount('b', 'fraction', found.bypassFactor),
    source: 'coilModel',
  });
}

function traceBlower({ entering, leaving, dryAirFlow, blower }: CoilReadings, process: CoilProcess, t: Trace): void {
  if (!blower || blower.place === 'outside probes') return;
  const after = blower.place === 'after coil';
  const { dryBulb, humidityRatio } = after ? leaving : entering;
  t({
    id: after ? 'apparatus.leavingCoil' : 'apparatus.enteringCoil',
    equation: after ? 't₂′ = t₂ − qᵦ/(ṁ·(cₚₐ + cₚᵥ·W₂))' : 't₁′ = t₁ + qᵦ/(ṁ·(cₚₐ + cₚᵥ·W₁))',
    puts: [
      amount(after ? 't₂' : 't₁', 'temperature', dryBulb),
      amount('qᵦ', 'power', blower.heat),
      amount('ṁ', 'massFlow', dryAirFlow),
      amount('cₚₐ', 'specificHeat', heatDryAir),
      amount('cₚᵥ', 'specificHeat', heatVapor),
      amount(after ? 'W₂' : 'W₁', 'humidityRatio', humidityRatio),
    ],
    gives: amount(after ? 't₂′' : 't₁′', 'temperature', after ? process.leavingDryBulb : process.enteringDryBulb),
    source: 'definition',
  });
}
