/** Invented rating tables, printed as people paste them: in every layout, unit and decimal mark. */
import { fromSi, toSi, type UnitKey } from '../../../src/job/units.ts';

export interface Truth {
  readonly outdoorDryBulb: number;
  readonly enteringWetBulb: number;
  readonly enteringDryBulb: number;
  /** m³/s of standard air. */
  readonly airflow: number;
  readonly total: number;
  readonly sensible: number;
  readonly power: number;
}

export interface Print {
  readonly temperature: UnitKey;
  readonly capacity: UnitKey;
  readonly airflow: UnitKey;
  readonly power: UnitKey;
  readonly separator: '\t' | ';' | ',';
  readonly decimal: '.' | ',';
  /** The thousands separator; '' for none. */
  readonly thousands: '' | ',' | '.' | ' ';
}

export const plainPrint: Print = {
  temperature: 'degF',
  capacity: 'mbh',
  airflow: 'cfm',
  power: 'kw',
  separator: '\t',
  decimal: '.',
  thousands: '',
};

interface Heads {
  readonly outdoors: readonly number[];
  readonly wetBulbs: readonly number[];
  readonly dryBulbs: readonly number[];
  readonly airflows: readonly number[];
}

/** Round heads of a system, SI. */
export function heads(print: Print): Heads {
  const inUnit = (unit: UnitKey, numbers: readonly number[]) => numbers.map((number) => toSi(number, unit));
  const airflow = { cfm: [1000, 1200], ls: [470, 570], m3h: [1700, 2050], m3PerS: [0.47, 0.57] }[
    print.airflow as 'cfm'
  ];
  const si = print.temperature === 'degC';
  return {
    outdoors: inUnit(print.temperature, si ? [25, 30, 35, 40, 45] : [75, 85, 95, 105, 115]),
    wetBulbs: inUnit(print.temperature, si ? [15, 17, 19, 21] : [59, 63, 67, 71]),
    dryBulbs: inUnit(print.temperature, si ? [24, 27] : [75, 80]),
    airflows: inUnit(print.airflow, airflow),
  };
}

/** An invented machine of about three tons; no equation of the package is in it. */
export function figures(at: Pick<Truth, 'outdoorDryBulb' | 'enteringWetBulb' | 'enteringDryBulb' | 'airflow'>): Truth {
  const total =
    10_400 *
    (1 - 0.0095 * (at.outdoorDryBulb - 35)) *
    (1 + 0.021 * (at.enteringWetBulb - 19.4)) *
    (0.8 + 0.35 * at.airflow);
  const share =
    0.74 - 0.055 * (at.enteringWetBulb - 19.4) + 0.028 * (at.enteringDryBulb - 26.7) + 0.2 * (at.airflow - 0.5);
  const sensible = total * Math.min(1, Math.max(0.3, share));
  return { ...at, total, sensible, power: 2600 * (1 + 0.016 * (at.outdoorDryBulb - 35)) };
}

export function truth(print: Print): readonly Truth[] {
  const { outdoors, wetBulbs, dryBulbs, airflows } = heads(print);
  return airflows.flatMap((airflow) =>
    wetBulbs.flatMap((enteringWetBulb) =>
      outdoors.flatMap((outdoorDryBulb) =>
        dryBulbs.map((enteringDryBulb) => figures({ outdoorDryBulb, enteringWetBulb, enteringDryBulb, airflow })),
      ),
    ),
  );
}

const decimals: Readonly<Partial<Record<UnitKey, number>>> = {
  degF: 0,
  degC: 0,
  mbh: 1,
  btuh: 0,
  kw: 2,
  ton: 2,
  watt: 0,
  cfm: 0,
  ls: 0,
  m3h: 0,
  m3PerS: 2,
  fraction: 3,
};

/** A number as it is printed; a capacity in Btu/h to the hundred. */
export function printed(si: number, unit: UnitKey, print: Print): string {
  const number = unit === 'btuh' ? Math.round(fromSi(si, unit) / 100) * 100 : fromSi(si, unit);
  const [whole = '', part] = number.toFixed(decimals[unit] ?? 1).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, print.thousands);
  return part === undefined ? grouped : grouped + print.decimal + part;
}

export const names: Readonly<Partial<Record<UnitKey, string>>> = {
  degF: '°F',
  degC: '°C',
  mbh: 'MBh',
  btuh: 'Btu/h',
  kw: 'kW',
  ton: 'tons',
  watt: 'W',
  cfm: 'CFM',
  ls: 'L/s',
  m3h: 'm³/h',
  m3PerS: 'm³/s',
};

export function asText(rows: readonly (readonly string[])[], { separator }: Print): string {
  const cell = (text: string) =>
    text.includes(separator) || text.includes('"') ? `"${text.replace(/"/g, '""')}"` : text;
  return rows.map((row) => row.map(cell).join(separator)).join('\r\n');
}

type Layout = (print: Print) => readonly (readonly string[])[];

const of = (print: Print) => ({
  t: (si: number) => printed(si, print.temperature, print),
  q: (si: number) => printed(si, print.capacity, print),
  v: (si: number) => printed(si, print.airflow, print),
  p: (si: number) => printed(si, print.power, print),
  ...heads(print),
});

/** Every line with its temperatures, in columns with words and units. */
const tidy: Layout = (print) => {
  const { t, q, v, p } = of(print);
  const unit = names;
  return [
    [
      `Outdoor dry bulb (${unit[print.temperature]})`,
      `Entering wet bulb (${unit[print.temperature]})`,
      `Entering dry bulb (${unit[print.temperature]})`,
      `Airflow (${unit[print.airflow]})`,
      `Total capacity (${unit[print.capacity]})`,
      `Sensible (${unit[print.capacity]})`,
      `Power input (${unit[print.power]})`,
    ],
    ...truth(print).map((row) => [
      t(row.outdoorDryBulb),
      t(row.enteringWetBulb),
      t(row.enteringDryBulb),
      v(row.airflow),
      q(row.total),
      q(row.sensible),
      p(row.power),
    ]),
  ];
};

/** The same with the sensible as a share of the total. */
const tidyShares: Layout = (print) =>
  tidy(print).map((row, at) => {
    const one = truth(print)[at - 1];
    const share = one === undefined ? 'S/T' : printed(one.sensible / one.total, 'fraction', print);
    return row.map((cell, column) => (column === 5 ? share : cell));
  });

/** One block of totals and one of sensible figures for each airflow, which stands in a line above. */
const blocksUnderLines: Layout = (print) => {
  const { t, q, v, outdoors, wetBulbs, dryBulbs, airflows } = of(print);
  const at = dryBulbs[1] ?? 0;
  return [
    [`Invented machine, net, entering dry bulb ${t(at)} ${names[print.temperature]}`],
    ...airflows.flatMap((airflow) =>
      (['total', 'sensible'] as const).flatMap((figure) => [
        [`Airflow ${v(airflow)} ${names[print.airflow]}`],
        [`${figure === 'total' ? 'Total' : 'Sensible'} capacity, ${names[print.capacity]}`],
        [`Wet bulb \\ Outdoor ${names[print.temperature]}`, ...outdoors.map(t)],
        ...wetBulbs.map((wetBulb) => [
          t(wetBulb),
          ...outdoors.map((outdoorDryBulb) =>
            q(figures({ outdoorDryBulb, enteringWetBulb: wetBulb, enteringDryBulb: at, airflow })[figure]),
          ),
        ]),
        [],
      ]),
    ),
  ];
};

/** Airflow in a merged column; under each merged outdoor temperature total, sensible at each dry bulb, and power. */
const blocksInColumns: Layout = (print) => {
  const { t, q, v, p, outdoors, wetBulbs, dryBulbs, airflows } = of(print);
  const blanks = dryBulbs.map(() => '');
  return [
    [
      '',
      '',
      ...outdoors.flatMap((_, at) => [
        at === 0 ? `Outdoor temperature ${names[print.temperature]}` : '',
        ...blanks,
        '',
      ]),
    ],
    [
      `Airflow ${names[print.airflow]}`,
      `EWB ${names[print.temperature]}`,
      ...outdoors.flatMap((one) => [t(one), ...blanks, '']),
    ],
    [
      '',
      '',
      ...outdoors.flatMap(() => [
        `Total ${names[print.capacity]}`,
        `Sensible ${names[print.capacity]}`,
        ...blanks.slice(1),
        `Power ${names[print.power]}`,
      ]),
    ],
    ['', '', ...outdoors.flatMap(() => ['', ...dryBulbs.map(t), ''])],
    ...airflows.flatMap((airflow) =>
      wetBulbs.map((enteringWetBulb, at) => [
        at === 0 ? v(airflow) : '',
        t(enteringWetBulb),
        ...outdoors.flatMap((outdoorDryBulb) => {
          const all = dryBulbs.map((enteringDryBulb) =>
            figures({ outdoorDryBulb, enteringWetBulb, enteringDryBulb, airflow }),
          );
          return [q(all[0]?.total ?? 0), ...all.map(({ sensible }) => q(sensible)), p(all[0]?.power ?? 0)];
        }),
      ]),
    ),
  ];
};

/** Total, sensible and power under each other for each wet bulb, with a label before them. */
const labelledRows: Layout = (print) => {
  const { t, q, v, p, outdoors, wetBulbs, dryBulbs, airflows } = of(print);
  const enteringDryBulb = dryBulbs[1] ?? 0;
  const labels = [
    [`Total ${names[print.capacity]}`, 'total'],
    [`Sensible ${names[print.capacity]}`, 'sensible'],
    [`Power ${names[print.power]}`, 'power'],
  ] as const;
  return [
    [`Return air ${t(enteringDryBulb)} ${names[print.temperature]} dry bulb`],
    [
      `Airflow ${names[print.airflow]}`,
      `Wet bulb ${names[print.temperature]}`,
      'Outdoor temperature',
      ...outdoors.map(t),
    ],
    ...airflows.flatMap((airflow) =>
      wetBulbs.flatMap((enteringWetBulb, first) =>
        labels.map(([label, figure], line) => [
          first === 0 && line === 0 ? v(airflow) : '',
          line === 0 ? t(enteringWetBulb) : '',
          label,
          ...outdoors.map((outdoorDryBulb) => {
            const si = figures({ outdoorDryBulb, enteringWetBulb, enteringDryBulb, airflow })[figure];
            return figure === 'power' ? p(si) : q(si);
          }),
        ]),
      ),
    ),
  ];
};

/** What each layout says of the truth: whether it has both dry bulbs, and the power. */
export const layouts = {
  tidy: { rows: tidy, dryBulbs: 'both', power: true },
  'tidy with shares': { rows: tidyShares, dryBulbs: 'both', power: true },
  'blocks under lines': { rows: blocksUnderLines, dryBulbs: 'second', power: false },
  'blocks in merged columns': { rows: blocksInColumns, dryBulbs: 'both', power: true },
  'labelled rows': { rows: labelledRows, dryBulbs: 'second', power: true },
} as const satisfies Record<string, { rows: Layout; dryBulbs: 'both' | 'second'; power: boolean }>;
