import { describe, expect, test } from 'vitest';
import { standardAirDensity } from '../../../src/calc/index.ts';
import { sheetRows } from '../../../src/job/ratingSheet.ts';
import { importTable } from '../../../src/job/tableImport/index.ts';
import { sheetTable } from '../../../src/job/tableImport/table.ts';
import { toSi } from '../../../src/job/units.ts';
import { asText, heads, layouts, type Print, plainPrint, truth } from './sheets.ts';

/** Half of the last printed digit of a figure, W. */
const rounding = { mbh: toSi(0.05, 'mbh'), btuh: toSi(50, 'btuh'), kw: 5, ton: toSi(0.005, 'ton'), watt: 0.5 } as const;

const prints: readonly (readonly [string, Print])[] = [
  ['MBh, °F and cfm', plainPrint],
  ['Btu/h with thousands set off by commas', { ...plainPrint, capacity: 'btuh', thousands: ',' }],
  ['Btu/h without, in a file parted by commas', { ...plainPrint, capacity: 'btuh', separator: ',' }],
  ['Btu/h with thousands in quotes', { ...plainPrint, capacity: 'btuh', separator: ',', thousands: ',' }],
  ['tons and W', { ...plainPrint, capacity: 'ton', power: 'watt' }],
  ['MBh with °C', { ...plainPrint, temperature: 'degC', airflow: 'ls' }],
  ['kW, °C and L/s', { ...plainPrint, temperature: 'degC', capacity: 'kw', airflow: 'ls' }],
  [
    'kW with decimal commas, in a file parted by semicolons',
    { ...plainPrint, temperature: 'degC', capacity: 'kw', airflow: 'm3h', separator: ';', decimal: ',' },
  ],
  [
    'kW with decimal commas and thousands set off by points',
    { ...plainPrint, temperature: 'degC', capacity: 'kw', airflow: 'm3h', power: 'watt', decimal: ',', thousands: '.' },
  ],
  ['kW and m³/s', { ...plainPrint, temperature: 'degC', capacity: 'kw', airflow: 'm3PerS' }],
  ['Btu/h with thousands set off by spaces', { ...plainPrint, capacity: 'btuh', thousands: ' ' }],
];

describe.each(Object.entries(layouts))('%s', (_, { rows, dryBulbs, power }) => {
  test.each(prints)('in %s comes in as it was printed', (_name, print) => {
    const found = importTable(asText(rows(print), print));
    if (!found.ok) throw new Error(found.code);
    expect(found.findings.filter(({ weight }) => weight !== 'note')).toEqual([]);
    const second = heads(print).dryBulbs[1] ?? 0;
    const expected = truth(print).filter((row) => dryBulbs === 'both' || row.enteringDryBulb === second);
    const read = sheetRows(sheetTable(found.rows, found.proposal.meanings));
    expect(read).toHaveLength(expected.length);
    for (const row of expected) {
      const own = read.find(
        (one) =>
          Math.abs(one.outdoorDryBulb - row.outdoorDryBulb) < 1e-5 &&
          Math.abs(one.enteringWetBulb - row.enteringWetBulb) < 1e-5 &&
          Math.abs((one.enteringDryBulb ?? 0) - row.enteringDryBulb) < 1e-5 &&
          Math.abs((one.dryAirFlow ?? 0) - row.airflow * standardAirDensity) < 1e-6,
      );
      const off = rounding[print.capacity as keyof typeof rounding] + 1e-6;
      const byShare = row.total * 5e-4 + off;
      expect(Math.abs((own?.total ?? 0) - row.total)).toBeLessThanOrEqual(off);
      expect(Math.abs((own?.sensible ?? 0) - row.sensible)).toBeLessThanOrEqual(
        rows === layouts['tidy with shares'].rows ? byShare : off,
      );
      if (power)
        expect(Math.abs((own?.power ?? 0) - row.power)).toBeLessThanOrEqual(rounding[print.power as 'kw'] + 1e-6);
    }
  });
});
