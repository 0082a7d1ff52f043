import { heatDryAir, heatVapor } from './constants.ts';
import { within } from './errors.ts';
import { limits } from './limits.ts';
import { saturatedRatio } from './saturatedAir.ts';
import { amount } from './trace.ts';
import type { Trace } from './types.ts';
import { ratioOfWetBulb, wetBulbAt } from './wetBulb.ts';

/** A coil as its bypass factor, and what it is asked to do: °C, kg/s, W without blower heat, Pa. */
export interface DryOutArguments {
  readonly dryBulb: number;
  readonly dryAirFlow: number;
  readonly total: number;
  readonly bypassFactor: number;
  readonly pressure: number;
}

export interface DryOut {
  /** Where the coil's surface stands when all of its work is cooling, °C. */
  readonly apparatusDewPoint: number;
  /** The wet bulb at and below which this coil takes no water out of air of this dry bulb, °C. */
  readonly wetBulb: number;
}

/**
 * The wet bulb at which a coil turns dry. A dry coil of the total Q brings its surface to tₛ = t₁ − Q/(ṁ·c_p·(1 − b)); air that
 * would be saturated there has exactly the water that such a surface leaves in it, and anything drier leaves the coil dry, its
 * total all sensible. `null` where that surface lies below the range of the equations. Throws a `CalcError` for an argument
 * outside `limits` or a bypass factor that is not from 0 to below 1. EnergyPlus Engineering Reference, single-speed DX coil.
 */
export function dryOut(args: DryOutArguments, t?: Trace): DryOut | null {
  within('dryBulb', args.dryBulb, limits.dryBulb);
  within('dryAirFlow', args.dryAirFlow, limits.dryAirFlow);
  within('total', args.total, limits.capacity);
  within('bypassFactor', args.bypassFactor, [0, 0.999]);
  within('pressure', args.pressure, limits.pressure);
  const surface = drySurface(args);
  if (surface === null) return null;
  const { apparatusDewPoint, humidityRatio } = surface;
  const found = wetBulbAt(args.dryBulb, humidityRatio, args.pressure);
  if (t) traceDryOut(args, apparatusDewPoint, humidityRatio, found, t);
  return { apparatusDewPoint, wetBulb: found };
}

/** The surface of a dry coil and the water, kg/kg dry air, that air in balance with it holds; no check of the arguments. */
export function drySurface({ dryBulb, dryAirFlow, total, bypassFactor, pressure }: DryOutArguments) {
  const contact = dryAirFlow * (1 - bypassFactor);
  // The specific heat holds the water that is being looked for: each round leaves a hundredth of what was left.
  let humidityRatio = 0.008;
  let surface = dryBulb;
  for (let i = 0; i < 6; i++) {
    surface = dryBulb - total / (contact * (heatDryAir + heatVapor * humidityRatio));
    if (!(surface > limits.dewPoint[0])) return null;
    humidityRatio = saturatedRatio(surface, pressure);
  }
  return { apparatusDewPoint: surface, humidityRatio };
}

/** How near, K, the wet bulb is found at which a coil turns dry whose total moves with the wet bulb. */
const tolerance = 1e-8;
/** By how much the found wet bulb falls for a kelvin that it is begun higher, in an ordinary coil: where the search begins. */
const swing = 0.2;
/** By what share of itself the ratio of saturated air rises with a kelvin, and what evaporating cools, 1/K: about, to scale a gap. */
const rise = 0.064;
const evaporating = 4e-4;

/**
 * The wet bulb at which a coil turns dry whose total, W, is a function of the wet bulb: `null` where it never does. Looked for
 * from `start` on by the secant method: a higher total makes for a colder surface, so that the gap between the water that such a
 * surface leaves in the air and the water that air of this wet bulb holds falls all the way. With `onlyAbove` a coil that is wet at `start`
 * gives `start`: it turns dry there or lower, and nothing is looked for.
 */
export function dryOutOn(
  totalAt: (wetBulb: number) => number,
  { dryBulb, dryAirFlow, bypassFactor, pressure }: Omit<DryOutArguments, 'total'>,
  start: number,
  onlyAbove = false,
): number | null {
  const contact = dryAirFlow * (1 - bypassFactor);
  // In kelvin of wet bulb, nearly: so bent, the gap is almost a straight line. It ends where the two humidity ratios meet.
  const gapAt = (wetBulb: number) => {
    const humidityRatio = ratioOfWetBulb(dryBulb, wetBulb, pressure);
    const cooler = totalAt(wetBulb) / (contact * (heatDryAir + heatVapor * humidityRatio));
    // A table run on far below its rows may say less than nothing: no coil warms the air.
    const surface = dryBulb - Math.max(0, cooler);
    if (!(surface > limits.dewPoint[0])) return Number.NaN;
    const saturated = humidityRatio + evaporating * (dryBulb - wetBulb);
    const more = saturatedRatio(surface, pressure) - humidityRatio;
    return Math.log(1 + (rise * more) / (rise * saturated + evaporating)) / rise;
  };
  let before = start;
  let gapBefore = gapAt(before);
  if (onlyAbove && gapBefore <= 0) return start;
  // A step past what is known already, as over a bend of the table, is halved; saturated air leaves no coil dry.
  let low = gapBefore > 0 ? start : Number.NEGATIVE_INFINITY;
  let high = gapBefore > 0 ? dryBulb : start;
  let at = before + gapBefore / (1 + swing);
  for (let i = 0; i < 20; i++) {
    if (at > high) at = (before + high) / 2;
    else if (at < low) at = (before + low) / 2;
    if (!Number.isFinite(at)) return null;
    if (Math.abs(at - before) < tolerance) return at;
    const gap = gapAt(at);
    if (gap > 0) low = at;
    else high = at;
    const next = at - (gap * (at - before)) / (gap - gapBefore);
    before = at;
    gapBefore = gap;
    at = next;
  }
  return at;
}

function traceDryOut(
  { dryBulb, dryAirFlow, total, bypassFactor, pressure }: DryOutArguments,
  surface: number,
  humidityRatio: number,
  found: number,
  t: Trace,
): void {
  const b = amount('b', 'fraction', bypassFactor);
  t({
    id: 'dryOut.surface',
    equation: 'tₛ = t₁ − Q/(ṁ·c·(1 − b))',
    puts: [
      amount('t₁', 'temperature', dryBulb),
      amount('Q', 'power', total),
      amount('ṁ', 'massFlow', dryAirFlow),
      amount('c', 'specificHeat', heatDryAir + heatVapor * humidityRatio),
      b,
    ],
    gives: amount('tₛ', 'temperature', surface),
    source: 'coilModel',
  });
  t({
    id: 'dryOut.wetBulb',
    equation: 't*ₒ = t*(t₁, Wₛ(tₛ, p), p)',
    puts: [
      amount('t₁', 'temperature', dryBulb),
      amount('tₛ', 'temperature', surface),
      amount('Wₛ', 'humidityRatio', humidityRatio),
      amount('p', 'pressure', pressure),
    ],
    gives: amount('t*ₒ', 'temperature', found),
    source: 'coilModel',
  });
}
