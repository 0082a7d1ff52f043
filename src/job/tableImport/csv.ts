import { csvText } from '../csv.ts';
import { unitLabel } from '../format.ts';
import type { TypedTable, UnitKey } from '../types.ts';
import { units } from '../units.ts';

const heads: Readonly<Record<string, string>> = {
  outdoorDryBulb: 'Outdoor dry bulb',
  enteringWetBulb: 'Entering wet bulb',
  enteringDryBulb: 'Entering dry bulb',
  airflow: 'Airflow',
  total: 'Total capacity',
  sensible: 'Sensible',
  power: 'Power',
};

/** A whole table as a CSV for spreadsheets, its cells as they were pasted; it comes back as the same table. */
export function sheetCsv({ columns, rows }: TypedTable): string {
  return csvText([columns.map(({ key, unit }) => head(key, unit)), ...rows]);
}

function head(key: string, unit: UnitKey): string {
  const isShare = units[unit].kind === 'fraction';
  const name = isShare ? 'Sensible ratio' : (heads[key] ?? key);
  const label = unit === 'mbh' ? 'MBh' : unitLabel(unit);
  return label === '' ? name : `${name} (${label})`;
}
