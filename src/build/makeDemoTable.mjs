/**
 * Makes the rating table of the demo job: `npx node src/build/makeDemoTable.mjs` writes `src/job/demoTable.ts`. The machine is
 * invented, and so are the formula and its figures: smooth, and of a size that a heat pump of three tons could have.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { headKey } from '../job/ratingHeads.ts';
import { toSi } from '../job/units.ts';

const outdoors = [75, 85, 95, 105, 115];
const wetBulbs = [57, 62, 67, 72];
/** Airflow of each block, cfm. */
const airflows = [1200, 1000];

/**
 * Net total capacity, Btu/h.
 *
 * @param {number} outdoor dry bulb, °F
 * @param {number} wetBulb entering, °F
 * @param {number} airflow cfm
 */
function total(outdoor, wetBulb, airflow) {
  const warmer = outdoor - 95;
  const wetter = wetBulb - 67;
  return (
    33200 *
    (1 - 0.0054 * warmer - 0.000012 * warmer ** 2) *
    (1 + 0.0145 * wetter + 0.0006 * wetter ** 2) *
    (airflow / 1200) ** 0.19
  );
}

/**
 * Sensible share of it with air entering at 80 °F.
 *
 * @param {number} outdoor
 * @param {number} wetBulb
 * @param {number} airflow
 */
function share(outdoor, wetBulb, airflow) {
  return Math.min(1, 0.745 - 0.0365 * (wetBulb - 67) + 0.0006 * (outdoor - 95) + 0.00012 * (airflow - 1200));
}

/** Rows in the columns of the record's rating table; capacities as printed, in thousands of Btu/h. */
export function demoRows() {
  return airflows.flatMap((airflow, block) =>
    wetBulbs.flatMap((wetBulb) =>
      outdoors.map((outdoor) => {
        const capacity = total(outdoor, wetBulb, airflow);
        const figures = [capacity, capacity * share(outdoor, wetBulb, airflow)];
        const place = [headKey(toSi(outdoor, 'degF')), headKey(toSi(wetBulb, 'degF')), String(block + 1)];
        return [...place, ...figures.map((figure) => (figure / 1000).toFixed(1))];
      }),
    ),
  );
}

/** The text of the module that holds the table. */
export function demoModule() {
  const rows = demoRows().map((row) => `    [${row.map((text) => `'${text}'`).join(', ')}],`);
  return `/** Invented. Made by \`src/build/makeDemoTable.mjs\`: run that again rather than change a figure here. */
import type { TypedTable } from './types.ts';

/** Net capacities in thousands of Btu/h; block 1 is for ${airflows[0]} cfm, block 2 for ${airflows[1]} cfm. */
export const demoTable: TypedTable = {
  columns: [
    { key: 'outdoorDryBulb', unit: 'degC' },
    { key: 'enteringWetBulb', unit: 'degC' },
    { key: 'block', unit: 'count' },
    { key: 'total', unit: 'btuh' },
    { key: 'sensible', unit: 'btuh' },
  ],
  rows: [
${rows.join('\n')}
  ],
};
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(new URL('../job/demoTable.ts', import.meta.url), demoModule());
}
