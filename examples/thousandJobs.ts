/**
 * A CSV of tests of the invented system, one a line, worked out in one go; the answer is a CSV again, on the way out.
 *
 *     node examples/thousandJobs.ts jobs.csv > answers.csv
 *
 * Without a file it makes up a thousand tests. The columns are the dry bulb (°F) and relative humidity (%) of the return and of the
 * supply, the airflow (cfm) and the temperature outdoors (°F), under the names below and in any order.
 */
import { readFileSync } from 'node:fs';
import { assess, btuPerHour, cubicFootPerMinute, fromFahrenheit, type Outcome } from '../src/calc/index.ts';
import { inventedSystem } from './inventedSystem.ts';

const columns = ['return_f', 'return_rh', 'supply_f', 'supply_rh', 'cfm', 'outdoor_f'] as const;
type Row = Readonly<Record<(typeof columns)[number], number | null>>;

function rowsOf(csv: string): readonly Row[] {
  const [head = '', ...lines] = csv.split(/\r?\n/).filter((line) => line.trim() !== '');
  const names = head.split(',').map((name) => name.trim());
  const missing = columns.filter((column) => !names.includes(column));
  if (missing.length > 0) throw new Error(`no column ${missing.join(', ')}`);
  return lines.map((line) => {
    const cells = line.split(',').map((cell) => (cell.trim() === '' ? null : Number(cell)));
    return Object.fromEntries(columns.map((column) => [column, cells[names.indexOf(column)] ?? null])) as Row;
  });
}

/** A thousand tests in ordinary weather, made up, the same each time. */
function invented(): readonly Row[] {
  return Array.from({ length: 1000 }, (_, index) => ({
    return_f: 75 + (index % 4),
    return_rh: 50 + (index % 6),
    supply_f: 52 + (index % 9),
    supply_rh: 80 + (index % 15),
    cfm: 1000 + (index % 41) * 10,
    outdoor_f: 85 + (index % 11),
  }));
}

const reading = (dryBulb: number | null, humidity: number | null) => ({
  dryBulb: dryBulb === null ? null : fromFahrenheit(dryBulb),
  relativeHumidity: humidity === null ? null : humidity / 100,
  wetBulb: null,
});

function answer(row: Row): string {
  const { measured, expected, ratio, verdict } = assess({
    ...inventedSystem,
    entering: reading(row.return_f, row.return_rh),
    leaving: reading(row.supply_f, row.supply_rh),
    airflow: {
      volumeFlow: row.cfm === null ? null : row.cfm * cubicFootPerMinute,
      place: 'entering',
      kind: 'actual',
      limit: 0.07,
      sources: null,
    },
    outdoorDryBulb: row.outdoor_f === null ? null : fromFahrenheit(row.outdoor_f),
  });
  const cell = <T>(outcome: Outcome<T>, text: (value: T) => string) => (outcome.ok ? text(outcome.value) : '');
  const capacity = ({ total }: { readonly total: number }) => String(Math.round(total / btuPerHour));
  return [
    cell(measured, capacity),
    cell(expected, capacity),
    cell(ratio, ({ value }) => value.toFixed(3)),
    cell(ratio, ({ interval }) => interval.low.toFixed(3)),
    cell(ratio, ({ interval }) => interval.high.toFixed(3)),
    cell(verdict, ({ outcome }) => outcome),
  ].join(',');
}

const [file] = process.argv.slice(2);
const rows = file === undefined ? invented() : rowsOf(readFileSync(file, 'utf8'));
const start = performance.now();
const answers = rows.map(answer);
const spent = performance.now() - start;
console.log(['makes_btuh', 'should_make_btuh', 'ratio', 'low', 'high', 'verdict'].join(','));
console.log(answers.join('\n'));
console.error(`${rows.length} tests in ${Math.round(spent)} ms, ${(spent / rows.length).toFixed(2)} ms each`);
