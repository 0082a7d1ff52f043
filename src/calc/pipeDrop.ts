import { within } from './errors.ts';

export interface PipeFlow {
  /** kg/s. */
  readonly massFlow: number;
  /** kg/m³. */
  readonly density: number;
  /** Pa·s. */
  readonly viscosity: number;
  /** Inside, m. */
  readonly diameter: number;
  /** Of straight tube, fittings counted in as theirs, m. */
  readonly length: number;
  /** Height of the roughness of the wall, m; drawn copper where it is left out. */
  readonly roughness?: number;
}

export interface PipeDrop {
  /** Pa. */
  readonly drop: number;
  /** m/s. */
  readonly velocity: number;
  readonly reynolds: number;
  /** Darcy's: four times Fanning's. */
  readonly frictionFactor: number;
  readonly regime: 'laminar' | 'between' | 'turbulent';
}

/** Wide enough for any refrigerant in any tube, and every equation works inside. */
const pipeLimits = {
  massFlow: [1e-6, 100],
  density: [0.1, 3000],
  viscosity: [1e-7, 0.1],
  diameter: [1e-4, 1],
  length: [0, 1000],
} as const;

/** Drawn copper, m: Moody's figure for drawn tubing. */
export const drawnCopper = 1.5e-6;
/** Reynolds numbers up to which a flow is taken for laminar, and from which for turbulent. */
const laminarTo = 2300;
const turbulentFrom = 4000;

/**
 * What friction takes of the pressure along a round tube: Darcy–Weisbach, Δp = f·(L/D)·ρ·v²/2, with the friction factor of a
 * laminar flow (64/Re, Re up to 2300) or Colebrook's (Re from 4000), solved to the last digits; between them no equation
 * holds, and a straight line over Re is our choice. One density along the whole tube.
 * Throws a `CalcError` for what is outside `pipeLimits` (roughness up to a twentieth of the diameter).
 */
export function pipeDrop(flow: PipeFlow): PipeDrop {
  const { massFlow, density, viscosity, diameter, length, roughness = drawnCopper } = flow;
  within('massFlow', massFlow, pipeLimits.massFlow);
  within('density', density, pipeLimits.density);
  within('viscosity', viscosity, pipeLimits.viscosity);
  within('diameter', diameter, pipeLimits.diameter);
  within('length', length, pipeLimits.length);
  within('roughness', roughness, [0, diameter / 20]);
  const velocity = massFlow / (density * Math.PI * (diameter / 2) ** 2);
  const reynolds = (density * velocity * diameter) / viscosity;
  const factor = frictionFactor(reynolds, roughness / diameter);
  return {
    drop: (factor * length * density * velocity ** 2) / (2 * diameter),
    velocity,
    reynolds,
    frictionFactor: factor,
    regime: reynolds <= laminarTo ? 'laminar' : reynolds < turbulentFrom ? 'between' : 'turbulent',
  };
}

/** Darcy friction factor of a Reynolds number and a roughness over the diameter. */
export function frictionFactor(reynolds: number, relativeRoughness: number): number {
  if (reynolds <= laminarTo) return 64 / reynolds;
  if (reynolds >= turbulentFrom) return colebrook(reynolds, relativeRoughness);
  const share = (reynolds - laminarTo) / (turbulentFrom - laminarTo);
  return (1 - share) * (64 / laminarTo) + share * colebrook(turbulentFrom, relativeRoughness);
}

/**
 * 1/√f = −2·lg(ε/(3.7·D) + 2.51/(Re·√f)), C. F. Colebrook (1939), by Newton's method on x = 1/√f: the left side less the right
 * rises with x and bends one way, so that it converges from anywhere; from Haaland's guess in three or four steps.
 */
function colebrook(reynolds: number, relativeRoughness: number): number {
  const rough = relativeRoughness / 3.7;
  const smooth = 2.51 / reynolds;
  let x = -1.8 * Math.log10(rough ** 1.11 + 6.9 / reynolds);
  for (let step = 0; step < 20; step++) {
    const inside = rough + smooth * x;
    const change = (x + 2 * Math.log10(inside)) / (1 + (2 * smooth) / (Math.LN10 * inside));
    x -= change;
    if (Math.abs(change) < 1e-13 * x) break;
  }
  return 1 / (x * x);
}
