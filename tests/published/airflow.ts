/** How an airflow is found: positions, velocities, traverses, temperature rise, fan table, plates and matched pressures. */
import type { Check } from './check.ts';
import { airflowFigures } from './data/airflowFigures.ts';
import { type AirflowRow, airflowRows } from './data/airflowRows.ts';
import type { NotOurs } from './notOurs.ts';

function describe({ quantity, inputs, expected }: AirflowRow, n: number): string {
  const given = Object.entries(inputs).flatMap(([name, value]) => (Array.isArray(value) ? [] : [`${name} ${value}`]));
  const which = expected.length > 1 ? [`no. ${n + 1}`] : [];
  return [quantity.replaceAll('_', ' '), ...given, ...which].join(', ');
}

export const checks: readonly Check[] = airflowRows.flatMap((row) => {
  const figure = airflowFigures[row.quantity];
  if (!figure) throw new Error(`nothing works out ${row.quantity}`);
  return row.expected.map(
    (expected, n): Check => ({
      title: `Airflow: ${describe(row, n)}`,
      expected,
      tolerance: row.tolerance,
      unit: row.unit,
      source: row.source,
      known: row.known,
      ...(row.why === undefined ? {} : { why: row.why }),
      ours: () => figure(row.inputs, n),
    }),
  );
});

const ownArithmetic = 'own arithmetic for this project, profile to the power 1/7 in both directions';
const lowFlows =
  'an abstract; low ventilation flows: a band, taken as the standard uncertainty of a hood, not tested against';

export const notOurs: readonly NotOurs[] = [
  ...(
    [
      [5, 3.386],
      [6, 2.236],
      [7, 2.224],
    ] as const
  ).map(([lines, error]) => ({
    what: `error of the equal-area rule with ${lines} lines: ${error} %`,
    source: ownArithmetic,
    why: 'equal areas read high because they miss the layer at the wall, and are not offered',
  })),
  {
    what: 'the worked traverse by the root of the mean pressure: 695.99 fpm, 1.2 % high',
    source: 'own arithmetic for this project worked example',
    why: 'pressures are never averaged; a test holds that the way of the mean reads high',
  },
  {
    what: 'power along the fan laws at 1.1 times the flow: 1.331',
    source: 'fan laws',
    why: 'nothing here changes the speed of a blower',
  },
  {
    what: 'temperature rise in a furnace: more than a factor of 2 with the place of the probe',
    source: 'Francisco & Palmiter, Home Energy, March/April 2002',
    why: 'a limit, not a figure: it sets how unsure one probe in a plenum is',
  },
  {
    what: 'powered hoods: about 6 %',
    source: 'LBNL, Measuring residential ventilation system airflows, part 2',
    why: lowFlows,
  },
  {
    what: 'other hoods: 11 to 25 %',
    source: 'LBNL, Measuring residential ventilation system airflows, part 2',
    why: lowFlows,
  },
  { what: 'hoods at returns: 5 to 25 %', source: 'LBNL / CEC-500-10-052', why: 'a range over devices' },
  { what: 'hoods in general: 5 to 10 %', source: 'NREL, field test best practices', why: 'a range over devices' },
  {
    what: 'capacity of 17 systems: below two thirds of the rated',
    source: 'Building and Environment 46 (2011), abstract',
    why: 'a mean of systems in the field, nothing that is worked out',
  },
];
