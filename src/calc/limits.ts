/**
 * What the calculations accept, SI. Wider than what the accuracy is promised for (2 to 48 °C, 70 to 101 kPa): inside these
 * limits every equation and every inverse works, outside them a `CalcError` is thrown.
 */
export const limits = {
  dryBulb: [-60, 90],
  /** Dry air of −60 °C has a wet bulb a few hundredths below it. */
  wetBulb: [-61, 90],
  /** −100 °C is where the equation for ice begins; it also stands for the dew point of perfectly dry air. */
  dewPoint: [-100, 90],
  relativeHumidity: [0, 1],
  humidityRatio: [0, 1],
  enthalpy: [-65e3, 2.8e6],
  pressure: [50e3, 110e3],
  /** Where the standard atmosphere stays inside the pressures above. */
  altitude: [-650, 5500],
  dryAirFlow: [1e-9, 1e3],
  /** With the specific volumes below, every dry-air flow that comes of it is inside the limits above. */
  volumeFlow: [1e-7, 100],
  specificVolume: [0.1, 20],
  blowerPower: [0, 1e5],
  /** Total capacity of one machine, W; its sensible capacity and its power may go down to nothing. */
  capacity: [1, 1e8],
  /** A maker's correction, or what a line set leaves: beyond it the figure is a slip of the pen. */
  multiplier: [0.2, 2],
} as const satisfies Record<string, readonly [number, number]>;

/** The ranges that the sources state for single equations. */
export const equationRanges = {
  saturationPressure: [-100, 200],
  standardPressure: [-5000, 11000],
} as const satisfies Record<string, readonly [number, number]>;
