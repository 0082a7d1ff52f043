/** Words around the surface of a rating table: what is read from it, and what can be tried. */
export const tableWords = {
  demo: 'Demo, invented.',
  demoSay: 'This job has no table yet, so an invented one is drawn.',
  addTable: 'Type the figures of its table',
  own: (count: number) =>
    count === 1 ? 'The one figure of this job’s table.' : `The ${count} figures of this job’s table.`,
  generic: 'No table: published curves through the certified capacity. An estimate.',
  tooSmall: 'A surface needs two rows and two columns of figures at least. What is there is drawn as lines.',
  net: 'Net: the blower’s heat is taken off in the table.',
  gross: 'Gross: the table leaves the blower’s heat out.',
} as const;

export const surfaceNames = {
  ask: 'What to look at',
  total: 'Total',
  sensible: 'Sensible',
  ratio: 'Sensible share',
  power: 'Power',
  efficiency: 'Efficiency',
} as const;

const totalsOnly = 'It has totals only: “Add sensible” in step 5 of the capacity sheet asks for the sensible capacity.';
/** Why a quantity cannot be looked at. */
export const missingWords: Readonly<Record<string, string>> = {
  sensible: totalsOnly,
  ratio: totalsOnly,
  power: 'This table has no power.',
  efficiency: 'This table has no power.',
};
/** It has sensible capacities, and nobody said for which entering dry bulb. */
export const missingDryBulb = 'It does not say for which entering dry bulb its sensible capacity holds: see step 5.';

export const surfaceSay = {
  title: {
    total: 'Total capacity',
    sensible: 'Sensible capacity',
    ratio: 'Sensible share of the total (sensible heat ratio)',
    power: 'Power taken',
    efficiency: 'Capacity for the power taken (EER)',
  },
  at: (airflow: string) => ` at ${airflow}`,
  chartName: 'The table as a surface',
  pointName: 'Place on the surface',
  pointRole: 'point on a chart',
  hint: 'Tap the drawing, drag the point, or use the arrow keys: left and right for outdoors, up and down for the wet bulb.',
  showSurface: 'Show the filled surface',
  showSlices: 'Show the two lines',
  sliceOutdoors: (wetBulb: string) => `Across outdoor temperatures, at ${wetBulb} wet bulb`,
  sliceWetBulb: (outdoors: string) => `Across entering wet bulbs, at ${outdoors} outdoors`,
} as const;

export const placeWords = {
  here: 'Here and now',
  tried: 'Tried out',
  at: (outdoors: string, wetBulb: string) => `${outdoors} outdoors, ${wetBulb} entering wet bulb`,
  back: 'Back to the job',
  backDemo: 'Back to the demo',
  dryBulb: (temperature: string) => `${temperature} dry bulb`,
  none: 'not in the table',
  ledger: 'What the table says at this place',
  estimate: (band: string) => `From published curves: an estimate. Here open sources differ by ${band} either way.`,
  read: 'Read',
  inTable: (amount: string) => `in the table ${amount}`,
  byCurves: (amount: string) => `by the curves ${amount}`,
  should: (amount: string) => `should make ${amount}`,
  measured: (amount: string) => `measured ${amount}`,
  between: (low: string, high: string) => `between ${low} and ${high}`,
  beyond: 'Outside the table: carried on in the line of the last cell, an estimate.',
  hole: 'The table has no figure to read here.',
  value: (figures: string) => `On the scale of the surface: ${figures}.`,
} as const;

export const worthWords = {
  title: 'What one more is worth here',
  ledger: 'What the figure changes by',
  outdoorDryBulb: (step: string) => `${step} warmer outdoors`,
  enteringWetBulb: (step: string) => `${step} more wet bulb`,
  dryAirFlow: (step: string) => `${step} more airflow`,
  enteringDryBulb: (step: string) => `${step} more dry bulb, same wet bulb`,
  none: 'nothing',
  unknown: 'unknown',
} as const;

export const tryWords = {
  title: 'Try it out',
  say: 'Nothing here changes the job.',
  outdoorDryBulb: 'Outdoors',
  enteringWetBulb: 'Entering wet bulb',
  dryAirFlow: 'Airflow',
  enteringDryBulb: 'Entering dry bulb',
  standardAir: 'in standard air, as tables state it',
  noFlow: 'The table does not say which airflow it is for.',
  noDryBulb: 'The dry bulb acts on the sensible capacity only, and this table has none.',
} as const;

export const tableFold = {
  fold: 'The surface as a table',
  caption: (quantity: string, unit: string, air: string) => `${quantity}, ${unit}, ${air}`,
  corner: 'Wet bulb, outdoors',
  hole: 'no figure',
} as const;

export const roomsFold = 'What the rooms get of it';

export const expectedBlock = { sheet: 'What it should make', method: 'maker’s table, in steps' } as const;
