/** The picture of two static pressures and a fan table. */
export const tryStatics = {
  caption:
    'Invented: a blower on one fixed speed, as its table prints it. Filled: read at the sum of both sides. Open: what the table would give if one side were forgotten.',
  supply: 'Supply side, above the room',
  returned: 'Return side, below the room',
  pressureAxis: (unit: string) => `external static pressure, ${unit}`,
  flowAxis: (unit: string) => `airflow, ${unit}`,
  supplySide: 'supply',
  returnSide: 'return',
  supplyOnly: 'one side only',
  table: 'The table read at the sum, and at one side',
  rows: { sum: 'External static', flow: 'Airflow at the sum', supplyOnly: 'Airflow at the supply side alone' },
  said: (sum: string, flow: string, high: string) =>
    `Together ${sum}, so ${flow}. The supply side alone would read ${high} high.`,
} as const;
