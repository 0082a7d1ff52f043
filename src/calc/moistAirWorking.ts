import {
  gasConstantDryAir,
  heatDryAir,
  heatIce,
  heatVapor,
  heatWater,
  iceKelvin,
  massRatio,
  sublimationEnthalpy,
  vaporEnthalpy,
  volumeRatio,
} from './constants.ts';
import { enhancement, factor } from './enhancement.ts';
import { ratioAt } from './humidityRatio.ts';
import type { MoistAirInput } from './moistAir.ts';
import { saturationPressure } from './saturation.ts';
import { amount } from './trace.ts';
import type { Amount, MoistAir, Step, Trace } from './types.ts';

const ratio = amount('ε', 'ratio', massRatio);
const dryHeat = amount('cₚₐ', 'specificHeat', heatDryAir);
const vaporHeat = amount('cₚᵥ', 'specificHeat', heatVapor);
const vapor = amount('hᵥ', 'enthalpy', vaporEnthalpy);

const wetBulbEquation = 'W = ((L − (c − cₚᵥ)·t*)·Wₛ* − cₚₐ·(t − t*))/(L + cₚᵥ·t − c·t*)';

/**
 * The working of a state of moist air, step by step: saturation, humidity ratio, what follows from it. Symbols with a star
 * belong to the wet bulb. An inverse (wet bulb) is shown by the equation that it fulfils.
 */
export function traceMoistAir(input: MoistAirInput, air: MoistAir, trace: Trace): void {
  const t = amount('t', 'temperature', air.dryBulb);
  const p = amount('p', 'pressure', air.pressure);
  const W = amount('W', 'humidityRatio', air.humidityRatio);
  const h = amount('h', 'enthalpy', air.enthalpy);
  const humidity = amount('φ', 'fraction', air.relativeHumidity);
  const [saturated, f] = saturation(t, p, '', trace);

  if (input.relativeHumidity !== undefined) {
    ratioStep('W = ε·f·φ·pₛ/(p − f·φ·pₛ)', [ratio, f, humidity, saturated, p], W, trace);
  } else if (input.dewPoint !== undefined) {
    const dew = saturation(amount('t', 'temperature', air.dewPoint), p, 'ᵈ', trace);
    ratioStep('W = ε·fᵈ·pₛᵈ/(p − fᵈ·pₛᵈ)', [ratio, dew[1], dew[0], p], W, trace);
  } else if (input.wetBulb !== undefined) {
    ratioStep(wetBulbEquation, wetBulbPuts(air, t, p, trace), W, trace);
  } else if (input.enthalpy !== undefined) {
    ratioStep('W = (h − cₚₐ·t)/(hᵥ + cₚᵥ·t)', [h, dryHeat, t, vapor, vaporHeat], W, trace);
  }
  if (input.relativeHumidity === undefined) {
    const vaporPressure = amount('pᵥ', 'pressure', air.vaporPressure);
    step('relativeHumidity', 'φ = pᵥ/(f·pₛ)', [vaporPressure, f, saturated], humidity, trace);
  }
  if (input.enthalpy === undefined) {
    step('enthalpy', 'h = cₚₐ·t + W·(hᵥ + cₚᵥ·t)', [dryHeat, t, W, vapor, vaporHeat], h, trace);
  }
  step(
    'specificVolume',
    'v = R·(t + T₀)·(1 + r·W)/p',
    [
      amount('R', 'specificHeat', gasConstantDryAir),
      t,
      amount('T₀', 'temperatureDifference', iceKelvin),
      amount('r', 'ratio', volumeRatio),
      W,
      p,
    ],
    amount('v', 'specificVolume', air.specificVolume),
    trace,
  );
  if (input.wetBulb === undefined) {
    const [, ...puts] = wetBulbPuts(air, t, p, trace);
    step('wetBulb', wetBulbEquation, [W, ...puts], amount('t*', 'temperature', air.wetBulb), trace);
  }
}

function step(name: string, equation: string, puts: readonly Amount[], gives: Amount, trace: Trace): void {
  const source: Step['source'] = 'handbookPsychrometrics';
  trace({ id: `moistAir.${name}`, equation, puts, gives, source });
}

function ratioStep(equation: string, puts: readonly Amount[], W: Amount, trace: Trace): void {
  step('humidityRatio', equation, puts, W, trace);
}

/** Saturation pressure and enhancement factor at one temperature; `mark` says whose it is. */
function saturation(t: Amount, p: Amount, mark: string, trace: Trace): readonly [Amount, Amount] {
  const here = { ...t, symbol: t.symbol + mark };
  const saturated = amount(`pₛ${mark}`, 'pressure', saturationPressure(t.value));
  const f = amount(`f${mark}`, 'ratio', factor(t.value, p.value));
  step('saturationPressure', `pₛ${mark} = pₛ(${here.symbol})`, [here], saturated, trace);
  trace({
    id: 'moistAir.enhancementFactor',
    equation: `f${mark} = 1 + A + p·(B + C·(${here.symbol} + D + E·p)²)`,
    puts: [p, here, ...Object.entries(enhancement).map(([symbol, value]) => amount(symbol, 'ratio', value))],
    gives: f,
    source: 'enhancementForm',
  });
  return [saturated, f];
}

/** What Eq. 33 (liquid on the bulb) or 35 (ice) is worked with; the steps that lead to Wₛ* go to the trace. */
function wetBulbPuts(air: MoistAir, t: Amount, p: Amount, trace: Trace): Amount[] {
  const star = amount('t', 'temperature', air.wetBulb);
  const [saturated, f] = saturation(star, p, '*', trace);
  const Ws = amount('Wₛ*', 'humidityRatio', ratioAt(f.value * saturated.value, p.value));
  step('saturatedHumidityRatio', 'Wₛ* = ε·f*·pₛ*/(p − f*·pₛ*)', [ratio, f, saturated, p], Ws, trace);
  const frozen = air.wetBulb < 0;
  return [
    { ...star, symbol: 't*' },
    Ws,
    t,
    amount('L', 'enthalpy', frozen ? sublimationEnthalpy : vaporEnthalpy),
    amount('c', 'specificHeat', frozen ? heatIce : heatWater),
    dryHeat,
    vaporHeat,
  ];
}
