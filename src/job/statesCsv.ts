/** The states of the air chart as a table for spreadsheets. */
import type { MoistAir } from '../calc/types.ts';
import { csvText } from './csv.ts';
import { format, unitLabel } from './format.ts';
import type { System, UnitKey } from './types.ts';
import { displayUnit } from './units.ts';

/** A point as it stands in the table: what it is called for short and in full, and its air. */
export interface CsvState {
  readonly code: string;
  readonly name: string;
  readonly air: MoistAir;
}

/** Decimals that lose nothing that a chart shows. */
const columns = [
  ['dryBulb', 'temperature', 'Dry bulb', 2],
  ['wetBulb', 'temperature', 'Wet bulb', 2],
  ['dewPoint', 'temperature', 'Dew point', 2],
  ['relativeHumidity', 'fraction', 'Relative humidity', 2],
  ['humidityRatio', 'humidityRatio', 'Humidity ratio', 3],
  ['enthalpy', 'enthalpy', 'Enthalpy', 3],
  ['specificVolume', 'specificVolume', 'Specific volume', 4],
] as const;

/** The states in a system, with every property. */
export function statesCsv(states: readonly CsvState[], system: System, pressure: number): string {
  const pressureUnit = displayUnit.pressure[system];
  const title = (words: string, unit: UnitKey) => `${words} (${unitLabel(unit)})`;
  const head = [
    'Point',
    'Name',
    ...columns.map(([, kind, words]) => title(words, displayUnit[kind][system])),
    title('Pressure', pressureUnit),
  ];
  const rows = states.map(({ code, name, air }) => [
    code,
    name,
    ...columns.map(([key, kind, , decimals]) => bare(format(air[key], displayUnit[kind][system], decimals))),
    bare(format(pressure, pressureUnit, 3)),
  ]);
  return csvText([head, ...rows]);
}

/** No comma between thousands: a spreadsheet would part the number there. */
const bare = (text: string) => text.replace(/,/g, '');
