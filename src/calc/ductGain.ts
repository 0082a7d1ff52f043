import { heatDryAir } from './constants.ts';
import { within } from './errors.ts';
import { limits } from './limits.ts';
import { amount } from './trace.ts';
import type { Trace } from './types.ts';
import { fromFahrenheit } from './units.ts';

/** One side of the ducts: inner surface, m²; resistance, m²·K/W; share of the airflow that leaks; the air around it. */
export interface DuctRun {
  readonly area: number;
  readonly resistance: number;
  readonly leakage: number;
  readonly around: { readonly dryBulb: number; readonly enthalpy: number };
}

export interface Ducts {
  readonly supply: DuctRun;
  readonly return: DuctRun;
  /** Of the dry air, kg/s. */
  readonly dryAirFlow: number;
  /** What the system makes between its probes, W, and the air that it sends out, °C. */
  readonly total: number;
  readonly supplyDryBulb: number;
  readonly room: { readonly dryBulb: number; readonly enthalpy: number };
  /** The share of what the ducts lose that the rooms get back all the same; 0.10 from an attic. Left out: none. */
  readonly regain?: number;
}

export interface DuctGain {
  /** The shares of a temperature difference that are left at the end of the supply and of the return. */
  readonly supplyLeft: number;
  readonly returnLeft: number;
  /** What the rooms get over what the coil makes. */
  readonly effectiveness: number;
  /** What the rooms get, and what the ducts cost, W. */
  readonly delivered: number;
  readonly lost: number;
}

/** Attic temperatures at cooling design conditions, °C. See `atticTemperatures` in the bibliography. */
export const atticTemperatures = {
  ventedDarkShingle: fromFahrenheit(130),
  ventedLightShingle: fromFahrenheit(120),
  ventedDarkShingleRadiantBarrier: fromFahrenheit(120),
  ventedLightShingleRadiantBarrier: fromFahrenheit(110),
  darkClayTile: fromFahrenheit(110),
  reflectiveMetal: fromFahrenheit(95),
  unvented: fromFahrenheit(150),
  unventedRadiantBarrier: fromFahrenheit(130),
} as const;

const ranges = { area: [0, 1e4], resistance: [0.01, 20], share: [0, 1] } as const;

/**
 * What ducts outside the rooms take from the cooling: heat through their walls and air through their leaks, supply and return,
 * by ANSI/ASHRAE 152. The rooms get less than the coil makes, so the two must be measured at different places. A negative
 * effectiveness says that the ducts heat more than the coil cools. Throws a `CalcError` for an argument outside its range.
 */
export function ductGain(ducts: Ducts, t?: Trace): DuctGain {
  const { dryAirFlow, total, room, supplyDryBulb, regain = 0 } = ducts;
  const { supply } = ducts;
  const back = ducts.return;
  within('dryAirFlow', dryAirFlow, limits.dryAirFlow);
  within('total', total, limits.capacity);
  within('regain', regain, ranges.share);
  within('supplyDryBulb', supplyDryBulb, limits.dryBulb);
  within('room.dryBulb', room.dryBulb, limits.dryBulb);
  within('room.enthalpy', room.enthalpy, limits.enthalpy);
  const supplyLeft = leftOf('supply', supply, dryAirFlow, t);
  const returnLeft = leftOf('return', back, dryAirFlow, t);
  const tight = { supply: 1 - supply.leakage, return: 1 - back.leakage };
  const drawnIn = back.leakage * (back.around.enthalpy - room.enthalpy);
  const throughReturn = tight.return * heatDryAir * (1 - returnLeft) * (back.around.dryBulb - room.dryBulb);
  const throughSupply = heatDryAir * (1 - supplyLeft) * (supply.around.dryBulb - supplyDryBulb);
  const bare = tight.supply * (1 - (dryAirFlow * (drawnIn + throughReturn + throughSupply)) / total);
  const effectiveness = bare + regain * (1 - bare);
  if (t) {
    t({
      id: 'ductGain.effectiveness',
      equation: 'ε = aₛ·(1 − ṁ·(Δhᵣ + Δhᵣ′ + Δhₛ)/Q)',
      puts: [
        amount('aₛ', 'fraction', tight.supply),
        amount('ṁ', 'massFlow', dryAirFlow),
        amount('Δhᵣ', 'enthalpy', drawnIn),
        amount('Δhᵣ′', 'enthalpy', throughReturn),
        amount('Δhₛ', 'enthalpy', throughSupply),
        amount('Q', 'power', total),
      ],
      gives: amount('ε', 'fraction', bare),
      source: 'ductStandard',
    });
    t({
      id: 'ductGain.regain',
      equation: 'ε′ = ε + g·(1 − ε)',
      puts: [amount('ε', 'fraction', bare), amount('g', 'fraction', regain)],
      gives: amount('ε′', 'fraction', effectiveness),
      source: 'ductStandard',
    });
  }
  return { supplyLeft, returnLeft, effectiveness, delivered: effectiveness * total, lost: (1 - effectiveness) * total };
}

/** The share of a temperature difference that is left at the end of a run: exp(−A/(ṁ·c·R)). */
function leftOf(side: 'supply' | 'return', run: DuctRun, dryAirFlow: number, t?: Trace): number {
  within(`${side}.area`, run.area, ranges.area);
  within(`${side}.resistance`, run.resistance, ranges.resistance);
  within(`${side}.leakage`, run.leakage, ranges.share);
  within(`${side}.around.dryBulb`, run.around.dryBulb, limits.dryBulb);
  within(`${side}.around.enthalpy`, run.around.enthalpy, limits.enthalpy);
  const left = Math.exp(-run.area / (dryAirFlow * heatDryAir * run.resistance));
  t?.({
    id: `ductGain.${side}`,
    equation: 'B = exp(−A/(ṁ·c·R))',
    puts: [
      amount('A', 'area', run.area),
      amount('ṁ', 'massFlow', dryAirFlow),
      amount('c', 'specificHeat', heatDryAir),
      amount('R', 'ratio', run.resistance),
    ],
    gives: amount('B', 'fraction', left),
    source: 'ductStandard',
  });
  return left;
}
