import { iceKelvin } from './constants.ts';
import { type Curve, smoothCurve } from './smoothCurve.ts';

/** Superheat of the rows beside the saturated ones, K. */
export const rowSuperheat = 10;

type Column =
  | 'temperature'
  | 'bubblePressure'
  | 'dewPressure'
  | 'liquidDensity'
  | 'liquidEnthalpy'
  | 'liquidViscosity'
  | 'vaporDensity'
  | 'vaporEnthalpy'
  | 'vaporViscosity'
  | 'superheatedDensity'
  | 'superheatedEnthalpy'
  | 'superheatedViscosity';

/** Rows of a refrigerant by ascending saturation temperature: °C, Pa, kg/m³, J/kg, Pa·s. */
export type RefrigerantRows = Readonly<Record<Column, readonly number[]>>;

/** The rows of a refrigerant as curves over the saturation temperature, °C. */
export interface RefrigerantCurves {
  /** First and last row. */
  readonly range: readonly [number, number];
  readonly lnDew: Curve;
  readonly lnBubble: Curve;
  readonly liquidDensityCubed: Curve;
  readonly liquidEnthalpy: Curve;
  readonly lnLiquidViscosity: Curve;
  readonly saturated: VaporCurves;
  readonly superheated: VaporCurves;
}

export interface VaporCurves {
  /** Of pressure over density, squared. */
  readonly pv2: Curve;
  readonly enthalpy: Curve;
  readonly viscosity: Curve;
}

/**
 * Curves through rows. Each property is taken in the form in which it is nearly straight: the logarithm of a pressure over 1/T,
 * the cube of the density of a liquid, the square of p/ρ of a vapour.
 */
export function curvesThrough(rows: RefrigerantRows): RefrigerantCurves {
  const { temperature, dewPressure } = rows;
  const over = (ys: readonly number[]) => smoothCurve(temperature, ys);
  const reciprocal = temperature.map((t) => -1 / (t + iceKelvin));
  const lnPressure = (pressures: readonly number[]): Curve => {
    const curve = smoothCurve(reciprocal, pressures.map(Math.log));
    return (t) => curve(-1 / (t + iceKelvin));
  };
  const vapor = (densities: readonly number[], enthalpies: readonly number[], viscosities: readonly number[]) => ({
    pv2: over(densities.map((density, row) => (dewPressure[row]! / density) ** 2)),
    enthalpy: over(enthalpies),
    viscosity: over(viscosities),
  });
  return {
    range: [temperature[0]!, temperature.at(-1)!],
    lnDew: lnPressure(dewPressure),
    lnBubble: lnPressure(rows.bubblePressure),
    liquidDensityCubed: over(rows.liquidDensity.map((density) => density ** 3)),
    liquidEnthalpy: over(rows.liquidEnthalpy),
    lnLiquidViscosity: over(rows.liquidViscosity.map(Math.log)),
    saturated: vapor(rows.vaporDensity, rows.vaporEnthalpy, rows.vaporViscosity),
    superheated: vapor(rows.superheatedDensity, rows.superheatedEnthalpy, rows.superheatedViscosity),
  };
}
