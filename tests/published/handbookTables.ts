import { btuPerPound, cubicFootPerPound, fromFahrenheit, type MoistAir, moistAir } from '../../src/calc/index.ts';
import { allow, type Check } from './check.ts';
import { saturatedTable } from './data/saturatedTable.ts';
import { saturatedTableIp } from './data/saturatedTableIp.ts';

const ratioWhy = 'the enhancement factor is a fit to other states than these, and carried on beyond −18 to 48 °C';
const volumeWhy = 'Eq. 26 is that of an ideal gas: 0.01 to 0.1 % high, more where hot air is full of water';
const enthalpyWhy = 'Eq. 30 is linear in temperature and leaves out how water and air act on each other';

/** What the equations cannot do better, up to a temperature in °C: a share of W, a share of v, and kJ/kg. */
const bands = [
  { upTo: -30, ratio: 0.004, volume: 0.001, enthalpy: 0.03 },
  { upTo: 30, ratio: 0.0002, volume: 0.001, enthalpy: 0.06 },
  { upTo: 40, ratio: 0.0002, volume: 0.001, enthalpy: 0.13 },
  { upTo: 50, ratio: 0.0002, volume: 0.001, enthalpy: 0.3 },
  { upTo: 60, ratio: 0.0003, volume: 0.0014, enthalpy: 0.7 },
  { upTo: 90, ratio: 0.007, volume: 0.0014, enthalpy: 22 },
] as const;

type Band = (typeof bands)[number];

function bandAt(t: number): Band {
  return bands.find(({ upTo }) => t <= upTo + 1e-9) ?? bands[bands.length - 1]!;
}

function saturated(t: number): MoistAir {
  return moistAir({ dryBulb: t, relativeHumidity: 1 });
}

function dry(t: number): MoistAir {
  return moistAir({ dryBulb: t, humidityRatio: 0 });
}

const columns = [
  {
    key: 'W',
    what: 'humidity ratio of saturated air',
    unit: 'kg/kg',
    why: ratioWhy,
    limit: (x: number, band: Band) => allow(x, 0, band.ratio),
    ours: (t: number) => saturated(t).humidityRatio,
  },
  {
    key: 'dryVolume',
    what: 'volume of dry air',
    unit: 'm³/kg',
    why: volumeWhy,
    limit: (x: number, band: Band) => allow(x, 0, band.volume),
    ours: (t: number) => dry(t).specificVolume,
  },
  {
    key: 'volume',
    what: 'volume of saturated air',
    unit: 'm³/kg',
    why: volumeWhy,
    limit: (x: number, band: Band) => allow(x, 0, band.volume),
    ours: (t: number) => saturated(t).specificVolume,
  },
  {
    key: 'dryEnthalpy',
    what: 'enthalpy of dry air',
    unit: 'kJ/kg',
    why: enthalpyWhy,
    limit: () => 0.04,
    ours: (t: number) => dry(t).enthalpy / 1000,
  },
  {
    key: 'enthalpy',
    what: 'enthalpy of saturated air',
    unit: 'kJ/kg',
    why: enthalpyWhy,
    limit: (_: number, band: Band) => band.enthalpy,
    ours: (t: number) => saturated(t).enthalpy / 1000,
  },
] as const;

/** 0 °F is the zero of the I-P tables: what dry air takes up from there to 0 °C, Btu/lb. */
const datum = 7.6857;

const columnsIp = [
  {
    key: 'W',
    what: 'humidity ratio of saturated air',
    unit: 'lb/lb',
    why: ratioWhy,
    limit: (x: number, band: Band) => allow(x, 0, band.ratio),
    ours: (t: number) => saturated(t).humidityRatio,
  },
  {
    key: 'volume',
    what: 'volume of saturated air',
    unit: 'ft³/lb',
    why: volumeWhy,
    limit: (x: number, band: Band) => allow(x, 0, band.volume),
    ours: (t: number) => saturated(t).specificVolume / cubicFootPerPound,
  },
  {
    key: 'enthalpy',
    what: 'enthalpy of saturated air',
    unit: 'Btu/lb',
    why: enthalpyWhy,
    limit: (_: number, band: Band) => (band.enthalpy * 1000) / btuPerPound,
    ours: (t: number) => saturated(t).enthalpy / btuPerPound + datum,
  },
] as const;

const tableSi = saturatedTable.flatMap((row) =>
  columns.flatMap(({ key, what, unit, why, limit, ours }): Check[] => {
    const expected = row[key];
    if (expected === null) return [];
    const tolerance = limit(expected, bandAt(row.t));
    const title = `Table 2: ${what} at ${row.t} °C`;
    return [
      {
        title,
        expected,
        tolerance,
        unit,
        source: 'handbookPsychrometrics',
        known: 'read',
        why,
        ours: () => ours(row.t),
      },
    ];
  }),
);

const sourceIp = { read: 'psychrolibTests', 'read, converted': 'handbookPsychrometrics', computed: 'realGas' } as const;
const titleIp = { read: 'Table 2 (I-P)', 'read, converted': 'Table 2, converted', computed: 'RP-1485' } as const;

const tableIp = saturatedTableIp.flatMap((row) =>
  columnsIp.flatMap(({ key, what, unit, why, limit, ours }): Check[] => {
    const expected = row[key];
    if (expected === null) return [];
    const celsius = fromFahrenheit(row.t);
    return [
      {
        title: `${titleIp[row.known]}: ${what} at ${row.t} °F`,
        expected,
        tolerance: limit(expected, bandAt(celsius)),
        unit,
        source: sourceIp[row.known],
        known: row.known === 'read' ? 'second-hand' : row.known,
        why,
        ours: () => ours(celsius),
      },
    ];
  }),
);

/** 2017 edition, table 2, as the tests of psychrolib cite it: °C, kJ/kg. */
const enthalpies2017: readonly (readonly [number, number])[] = [
  [-50, -50.222],
  [25, 76.504],
  [50, 275.353],
  [85, 2307.539],
];

const table2017 = enthalpies2017.map(
  ([t, expected]): Check => ({
    title: `Table 2 (2017): enthalpy of saturated air at ${t} °C`,
    expected,
    tolerance: bandAt(t).enthalpy,
    unit: 'kJ/kg',
    source: 'psychrolibTests',
    known: 'second-hand',
    why: enthalpyWhy,
    ours: () => saturated(t).enthalpy / 1000,
  }),
);

const dryIp: readonly Check[] = [
  {
    title: 'Table 2 (I-P): enthalpy of dry air at 77 °F',
    expected: 18.498,
    tolerance: 0.002,
    unit: 'Btu/lb',
    source: 'psychrolibTests',
    known: 'second-hand',
    why: enthalpyWhy,
    ours: () => dry(25).enthalpy / btuPerPound + datum,
  },
  {
    title: 'Table 2 (I-P): volume of dry air at 77 °F',
    expected: 13.5251,
    tolerance: allow(13.5251, 0, 0.001),
    unit: 'ft³/lb',
    source: 'psychrolibTests',
    known: 'second-hand',
    why: volumeWhy,
    ours: () => dry(25).specificVolume / cubicFootPerPound,
  },
];

export const checks: readonly Check[] = [...tableSi, ...table2017, ...tableIp, ...dryIp];
