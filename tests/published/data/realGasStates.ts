/**
 * Unsaturated states of real moist air, computed with CoolProp 8.0.0 (`HAPropsSI`, after ASHRAE RP-1485). `null`: not copied.
 */
export interface RealGasState {
  /** °C */
  readonly t: number;
  readonly relativeHumidity: number;
  /** Pa */
  readonly p: number;
  readonly humidityRatio: number | null;
  /** kJ/kg */
  readonly enthalpy: number | null;
  readonly specificVolume: number | null;
  readonly wetBulb: number | null;
  readonly dewPoint: number | null;
}

type Value = number | null;
type Line = readonly [number, number, number, Value, Value, Value, Value, Value];

const lines: readonly Line[] = [
  [20, 0.5, 101325, null, null, null, null, 9.274],
  [21.111111, 0.5, 101325, null, null, null, null, 10.296],
  [23.888889, 0.5, 101325, null, 47.635, 0.85371, null, null],
  [25, 0.5, 101325, 0.0099257, 50.423, null, 17.883, 13.867],
  [26.666667, 0.511, 101325, 0.0112202, 55.431, null, null, 15.735],
  [30, 0.5, 101325, null, 64.356, null, null, 18.451],
  [35, 0.4, 101325, 0.0142005, null, 0.89262, null, 19.391],
  [40, 0.3, 101325, 0.0139706, 76.214, 0.90681, null, 19.135],
  [45, 0.2, 101325, null, 76.465, 0.91858, 25.2, 16.856],
  [12.777778, 0.9, 101325, null, 33.794, 0.82041, 11.852, 11.181],
  [10, 0.95, 101325, 0.007275, 28.379, null, 9.581, 9.237],
  [15, 0.8, 101325, null, null, null, null, 11.582],
  [0, 0.8, 101325, 0.0030283, 7.571, 0.77709, -1.158, -2.683],
  [25, 0.5, 84556, 0.011926, null, null, null, null],
  [30, 0.5, 84556, 0.0160854, 71.328, 1.0554, 21.589, 18.451],
  [35, 0.4, 84556, 0.0170859, null, 1.07453, 23.401, 19.392],
  [12.777778, 0.9, 84556, 0.0099656, 38.043, null, 11.783, 11.181],
  [25, 0.5, 70108, 0.0144346, 61.981, 1.2487, 17.034, 13.868],
  [35, 0.3, 70108, 0.0154084, null, null, null, 14.853],
];

export const realGasStates: readonly RealGasState[] = lines.map((line) => ({
  t: line[0],
  relativeHumidity: line[1],
  p: line[2],
  humidityRatio: line[3],
  enthalpy: line[4],
  specificVolume: line[5],
  wetBulb: line[6],
  dewPoint: line[7],
}));

/** A coil between two states given by dry bulb and wet bulb: what the air gives off, from the same model. */
export interface RealGasCoil {
  /** °C: entering dry bulb and wet bulb, leaving dry bulb and wet bulb. */
  readonly entering: readonly [number, number];
  readonly leaving: readonly [number, number];
  readonly p: number;
  /** kJ/kg */
  readonly enthalpy: number | null;
  /** g/kg */
  readonly water: number | null;
}

export const realGasCoils: readonly RealGasCoil[] = [
  { entering: [26.6667, 19.4444], leaving: [13.8889, 12.7778], p: 101325, enthalpy: 19.311, water: null },
  { entering: [26.6667, 19.4444], leaving: [13.8889, 12.7778], p: 84556, enthalpy: 21.96, water: 3.472 },
  { entering: [26.6667, 19.4444], leaving: [13.8889, 12.7778], p: 70108, enthalpy: 25.314, water: 4.768 },
  { entering: [23.8889, 17.2222], leaving: [12.7778, 11.6667], p: 101325, enthalpy: 15.073, water: null },
  { entering: [23.8889, 17.2222], leaving: [12.7778, 11.6667], p: 84556, enthalpy: null, water: 2.232 },
  { entering: [23.8889, 17.2222], leaving: [12.7778, 11.6667], p: 70108, enthalpy: 19.57, water: 3.202 },
  { entering: [35, 23.8889], leaving: [15.5556, 14.4444], p: 101325, enthalpy: 30.921, water: 4.286 },
  { entering: [35, 23.8889], leaving: [15.5556, 14.4444], p: 84556, enthalpy: 35.483, water: 6.038 },
  { entering: [27, 19], leaving: [13, 12], p: 101325, enthalpy: 19.792, water: null },
  { entering: [27, 19], leaving: [13, 12], p: 84556, enthalpy: 22.472, water: null },
  { entering: [27, 19], leaving: [13, 12], p: 70108, enthalpy: 25.864, water: null },
  { entering: [35, 24], leaving: [15, 14], p: 101325, enthalpy: 32.573, water: 4.712 },
  { entering: [35, 24], leaving: [15, 14], p: 84556, enthalpy: 37.363, water: 6.552 },
  { entering: [35, 24], leaving: [15, 14], p: 70108, enthalpy: 43.451, water: 8.891 },
];
