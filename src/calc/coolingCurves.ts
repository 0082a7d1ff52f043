import type { GenericStage, GenericUnit } from './types.ts';
import { toFahrenheit } from './units.ts';

/** a + b·w + c·w² + d·o + e·o² + f·w·o, with the entering wet bulb w and the outdoor dry bulb o in °F. */
export type TemperatureCurve = readonly [number, number, number, number, number, number];
/** a + b·f + c·f², with the ratio f of air mass flows. */
export type FlowCurve = readonly [number, number, number];

export interface CurveSet {
  /** Gross capacity over its value at the rating. As published it is not 1 there: divide. */
  readonly capacity: TemperatureCurve;
  /** Power of compressor and outdoor fan over gross capacity, over its value at the rating; not 1 there either. */
  readonly inputRatio: TemperatureCurve;
  readonly flow: FlowCurve;
  /** Rated airflow of the published machines for their size, m³/s of standard air per W. */
  readonly cubicFeetPerTon: number;
}

type Covered = `${GenericUnit} ${Exclude<GenericStage, 'variable'>}`;

/**
 * Published curves for wet coils: NREL/TP-5500-56354, tables 9, 10 and 14 to 19, with the rated airflows that go with them in
 * cfm a ton. See `genericCurves` in the bibliography.
 */
export const coolingCurves: Readonly<Record<Covered, CurveSet>> = {
  'airConditioner one': {
    capacity: [3.670270705, -0.098652414, 0.000955906, 0.006552414, -1.56e-5, -0.000131877],
    inputRatio: [-3.302695861, 0.137871531, -0.001056996, -0.012573945, 0.000214638, -0.000145054],
    flow: [0.718605468, 0.410099989, -0.128705457],
    cubicFeetPerTon: 394.2,
  },
  'airConditioner low': {
    capacity: [3.940185508, -0.104723455, 0.001019298, 0.006471171, -9.53e-6, -0.000161658],
    inputRatio: [-3.877526888, 0.164566276, -0.001272755, -0.019956043, 0.000256512, -0.000133539],
    flow: [0.65673024, 0.516470835, -0.172887149],
    cubicFeetPerTon: 411,
  },
  'airConditioner high': {
    capacity: [3.109456535, -0.085520461, 0.000863238, 0.00863049, -2.1e-5, -0.000140186],
    inputRatio: [-1.990708931, 0.093969249, -0.00073335, -0.009062553, 0.000165099, -9.97e-5],
    flow: [0.690334551, 0.464383753, -0.154507638],
    cubicFeetPerTon: 344.1,
  },
  'heatPump one': {
    capacity: [3.68637657, -0.098352478, 0.000956357, 0.005838141, -1.27e-5, -0.000131702],
    inputRatio: [-3.437356399, 0.136656369, -0.001049231, -0.0079378, 0.000185435, -0.0001441],
    flow: [0.718664047, 0.41797409, -0.136638137],
    cubicFeetPerTon: 394.2,
  },
  'heatPump low': {
    capacity: [3.998418659, -0.108728222, 0.001056818, 0.007512314, -1.39e-5, -0.000164716],
    inputRatio: [-4.282911381, 0.181023691, -0.001357391, -0.026310378, 0.000333282, -0.000197405],
    flow: [0.655239515, 0.511655216, -0.166894731],
    cubicFeetPerTon: 411,
  },
  'heatPump high': {
    capacity: [3.466810106, -0.091476056, 0.000901205, 0.004163355, -9.19e-6, -0.000110829],
    inputRatio: [-3.557757517, 0.112737397, -0.000731381, 0.013184877, 0.000132645, -0.000338716],
    flow: [0.618281092, 0.569060264, -0.187341356],
    cubicFeetPerTon: 344.1,
  },
};

/** A temperature curve as published, at an entering wet bulb and an outdoor dry bulb in °C. */
export function temperatureFactor(curve: TemperatureCurve, enteringWetBulb: number, outdoorDryBulb: number): number {
  const [a, b, c, d, e, f] = curve;
  const w = toFahrenheit(enteringWetBulb);
  const o = toFahrenheit(outdoorDryBulb);
  return a + w * (b + c * w) + o * (d + e * o) + f * w * o;
}

/** A flow curve as published, at a ratio of air mass flows. */
export function flowFactorOf([a, b, c]: FlowCurve, ratio: number): number {
  return a + ratio * (b + c * ratio);
}
