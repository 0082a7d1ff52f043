import { within } from './errors.ts';
import { traceVaporLine } from './lineSetTrace.ts';
import type { OilReturn, VaporLine } from './lineSetTypes.ts';
import { pipeDrop } from './pipeDrop.ts';
import { dewPointOf, type Refrigerant, type RefrigerantState, refrigerantState, throttled } from './refrigerant.ts';
import type { Trace } from './types.ts';
import { footPerMinute, standardGravity } from './units.ts';

export interface VaporRun {
  readonly refrigerant: Refrigerant;
  readonly massFlow: number;
  readonly diameter: number;
  /** Fittings counted in, m. */
  readonly length: number;
  /** Of the evaporator above the compressor, m: the vapour comes down. */
  readonly lift: number;
}

/** Coldest dew point that the rows hold, °C: what a line may leave of the pressure at least. */
const coldest = -20;

/**
 * What a vapour line takes of the pressure: friction at the density with which the vapour enters, and the weight of the column.
 * As the pressure falls the vapour grows thinner in proportion and friction rises, so that p₂² = p₁² − 2·p₁·Δp. No heat comes
 * through the insulation. Throws a `CalcError` `outOfRange` of `vaporDrop` when the tube cannot carry so much.
 */
export function vaporLine(run: VaporRun, entering: RefrigerantState, t?: Trace): VaporLine {
  const { refrigerant, massFlow, diameter, length, lift } = run;
  const { density, viscosity, pressure } = entering;
  const pipe = pipeDrop({ massFlow, density, viscosity, diameter, length });
  const evenDrop = pipe.drop - density * standardGravity * lift;
  const least = refrigerantState(refrigerant, { dewPoint: coldest, superheat: 0 }).pressure;
  within('vaporDrop', evenDrop, [-pressure / 10, (pressure ** 2 - least ** 2) / (2 * pressure)]);
  const after = Math.sqrt(pressure ** 2 - 2 * pressure * evenDrop);
  const line: VaporLine = {
    friction: pipe.drop,
    drop: pressure - after,
    dewDrop: dewPointOf(refrigerant, pressure) - dewPointOf(refrigerant, after),
    velocity: pipe.velocity,
    reynolds: pipe.reynolds,
    frictionFactor: pipe.frictionFactor,
    pressure: after,
    density: throttled(refrigerant, entering, after).density,
  };
  if (t) traceVaporLine(run, entering, pipe, line, t);
  return line;
}

/** ASHRAE's range for suction lines begins at 4.5 m/s and ends at 20 m/s (900 to 4000 fpm). */
const usualVelocity = [4.5, 20] as const;
/** What a vapour needs at least to carry oil up a riser: 1000 fpm. Common practice, no source. */
const riserVelocity = 1000 * footPerMinute;

/** Whether the vapour carries oil back to the compressor at this velocity (m/s), with the evaporator at this lift (m). */
export function oilReturn(velocity: number, lift: number): OilReturn {
  if (velocity > usualVelocity[1]) return 'fast';
  if (lift < 0 && velocity < riserVelocity) return 'slowInRiser';
  return velocity < usualVelocity[0] ? 'slow' : 'carried';
}
