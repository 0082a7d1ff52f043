/** How units are written and how they are spoken, under the keys of the table of units. */
import type { UnitKey } from '../../job/types.ts';

interface UnitWords {
  readonly label: string;
  /** For those who listen. */
  readonly spoken: string;
}

const words = (label: string, spoken = label): UnitWords => ({ label, spoken });

export const unitWords: Readonly<Record<UnitKey, UnitWords>> = {
  degF: words('°F', 'degrees Fahrenheit'),
  degC: words('°C', 'degrees Celsius'),
  degFStep: words('°F', 'degrees Fahrenheit'),
  degCStep: words('K', 'kelvins'),
  percent: words('%', 'percent'),
  fraction: words(''),
  cfm: words('cfm', 'cubic feet a minute'),
  ls: words('L/s', 'litres a second'),
  m3h: words('m³/h', 'cubic metres an hour'),
  btuh: words('Btu/h', 'Btu an hour'),
  mbh: words('MBh', 'thousand Btu an hour'),
  kw: words('kW', 'kilowatts'),
  watt: words('W', 'watts'),
  ton: words('tons'),
  ft: words('ft', 'feet'),
  m: words('m', 'metres'),
  ft2: words('ft²', 'square feet'),
  m2: words('m²', 'square metres'),
  fpm: words('ft/min', 'feet a minute'),
  mPerS: words('m/s', 'metres a second'),
  inHg: words('inHg', 'inches of mercury'),
  hpa: words('hPa', 'hectopascals'),
  kpa: words('kPa', 'kilopascals'),
  psi: words('psi', 'pounds a square inch'),
  pa: words('Pa', 'pascals'),
  inwc: words('in. w.c.', 'inches of water'),
  grainsPerLb: words('gr/lb', 'grains a pound'),
  gPerKg: words('g/kg', 'grams a kilogram'),
  btuPerLb: words('Btu/lb', 'Btu a pound'),
  btuPerLbStep: words('Btu/lb', 'Btu a pound'),
  kjPerKg: words('kJ/kg', 'kilojoules a kilogram'),
  lbPerHour: words('lb/h', 'pounds an hour'),
  kgPerHour: words('kg/h', 'kilograms an hour'),
  kgPerS: words('kg/s', 'kilograms a second'),
  lbPerFt3: words('lb/ft³', 'pounds a cubic foot'),
  kgPerM3: words('kg/m³', 'kilograms a cubic metre'),
  ft3PerLb: words('ft³/lb', 'cubic feet a pound'),
  m3PerKg: words('m³/kg', 'cubic metres a kilogram'),
  btuPerLbF: words('Btu/(lb·°F)', 'Btu a pound and degree Fahrenheit'),
  kjPerKgK: words('kJ/(kg·K)', 'kilojoules a kilogram and kelvin'),
  cfmPerTon: words('cfm', 'cubic feet a minute for each ton'),
  lsPerKw: words('L/s', 'litres a second for each kilowatt'),
  one: words(''),
  count: words(''),
  minute: words('min', 'minutes'),
  second: words('s', 'seconds'),
};

export const typeInOther = (name: string, other: string) => `${name}: type this one in ${other}`;
