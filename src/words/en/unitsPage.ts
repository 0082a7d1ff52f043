/** Words of the page of units. */
import type { Kind } from '../../calc/types.ts';

export const title = 'Units';
export const description =
  'Conversions between the units of the trade and those of the SI: temperature, airflow, capacity, pressure, moisture, enthalpy.';
export const say =
  'Everything is worked out in SI units and shown in those that you chose. The factors are the exact ones of law and convention, rounded here to six figures.';

export const unit = 'One';

export const temperatureHeading = 'Temperature';
export const temperatureSay = 'A temperature in °F is 1.8 times that in °C, and 32 more.';
export const fahrenheit = '°F';
export const celsius = '°C';

export const exactHeading = 'Exact by law or convention';
export const exact = {
  inch: 'inch',
  pound: 'pound',
  grain: 'grain, of which 7,000 make a pound',
  btu: 'Btu (international table)',
  ton: 'ton of refrigeration: 12,000\u00a0Btu/h',
  inchOfWater: 'inch of water column, at 1,000\u00a0kg/m³',
  inchOfMercury: 'inch of mercury, at 13,595.1\u00a0kg/m³',
} as const;

export const remarks: Readonly<Partial<Record<Kind, string>>> = {
  temperatureDifference:
    'A difference has no 32 in it: a probe that reads 1.8\u00a0°F too high reads 1\u00a0°C too high.',
  pressure: 'Inches of water are for ducts, inches of mercury for the barometer.',
  enthalpy:
    'This is a difference of two enthalpies. A single one also counts from another zero: 0\u00a0°F in Btu/lb, 0\u00a0°C in kJ/kg, 7.686\u00a0Btu/lb apart for dry air.',
  ratio: 'Airflow per capacity.',
};

/** What a kind of quantity is called over its table. */
export const kinds = {
  temperatureDifference: 'Difference of temperature',
  volumeFlow: 'Airflow',
  power: 'Capacity and power',
  ratio: 'Airflow per capacity',
  pressure: 'Pressure',
  humidityRatio: 'Moisture in air (humidity ratio)',
  enthalpy: 'Heat content of air (enthalpy)',
  specificVolume: 'Volume of dry air',
  density: 'Density',
  massFlow: 'Mass flow',
  mass: 'Mass',
  length: 'Length',
  diameter: 'Size of a tube',
  area: 'Area',
  volume: 'Volume',
  velocity: 'Velocity',
  heatingValue: 'Heating value of gas',
  specificHeat: 'Specific heat',
} as const satisfies Partial<Record<Kind, string>>;
