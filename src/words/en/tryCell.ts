/** The picture of a reading between four printed figures. */
export const tryCell = {
  caption:
    'Four invented figures of a table. Open: read along the wet bulb in either column. Filled: read between those two. What is printed in the corner is hidden where the reading stands on it.',
  outdoors: 'Outdoors',
  wetBulb: 'Wet bulb of the return air',
  column: (temperature: string) => `outdoors ${temperature}`,
  row: 'wet bulb',
  table: 'Read step by step',
  rows: {
    along: (column: string) => `Along the wet bulb, ${column}`,
    across: 'Between the two',
  },
  said: (wetBulb: string, outdoors: string, up: string, across: string, total: string) =>
    `${wetBulb} lies ${up} of the way up, ${outdoors} lies ${across} of the way across: ${total}.`,
} as const;
