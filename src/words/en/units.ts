/** How units are spoken, for those who listen; one left out is spoken as it is written. */
import type { UnitKey } from '../../job/types.ts';

const spoken: Readonly<Partial<Record<UnitKey, string>>> = {
  degF: 'degrees Fahrenheit',
  degC: 'degrees Celsius',
  degFStep: 'degrees Fahrenheit',
  degCStep: 'degrees Celsius',
  percent: 'percent',
  cfm: 'cubic feet a minute',
  ls: 'litres a second',
  kw: 'kilowatts',
  watt: 'watts',
  ton: 'tons',
  ft: 'feet',
  m: 'metres',
  inHg: 'inches of mercury',
  hpa: 'hectopascals',
};

/** What a tap on a unit does, for those who listen. */
export const typeInOther = (from: UnitKey, to: UnitKey) =>
  `${spoken[from] ?? from}: type this one in ${spoken[to] ?? to}`;
