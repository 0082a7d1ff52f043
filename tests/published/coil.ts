/** What a coil does to air: worked examples by the real gas, by the laboratory's air-enthalpy method and by a coil model. */
import {
  btuPerHour,
  btuPerPound,
  bypassAtFlow,
  type CoilReadings,
  coilLoad,
  coilProcess,
  cubicFootPerMinute,
  cubicFootPerPound,
  defaultBlowerPower,
  dryAirFlow,
  expectedCapacity,
  fahrenheitDegree,
  fromFahrenheit,
  genericRating,
  heatVapor,
  heatWater,
  leavingAir,
  type MoistAir,
  moistAir,
  pound,
  poundPerHour,
  ratedApparatus,
  ratingTable,
  standardVolumeFlow,
  temperatureRise,
  toFahrenheit,
  vaporEnthalpy,
} from '../../src/calc/index.ts';
import type { Check } from './check.ts';
import { type CoilRow, coilRows } from './data/coilRows.ts';
import type { NotOurs } from './notOurs.ts';

type Inputs = CoilRow['inputs'];
type Figure = (inputs: Inputs) => number;

const at = (inputs: Inputs, name: string): number => inputs[name] as number;

function state(dryBulb: number, humidity: number | undefined, wetBulb: number | undefined): MoistAir {
  const t = fromFahrenheit(dryBulb);
  return wetBulb === undefined
    ? moistAir({ dryBulb: t, relativeHumidity: humidity })
    : moistAir({ dryBulb: t, wetBulb: fromFahrenheit(wetBulb) });
}

const entering = (i: Inputs) => state(at(i, 'entering'), i.enteringHumidity, i.enteringWetBulb);
const leaving = (i: Inputs) => state(at(i, 'leaving'), i.leavingHumidity, i.leavingWetBulb);
const volume = (i: Inputs) => at(i, 'cfm') * cubicFootPerMinute;
const flowOf = (i: Inputs, { specificVolume }: MoistAir) =>
  dryAirFlow({ volumeFlow: volume(i), at: { specificVolume } });
const standardFlow = (i: Inputs) => dryAirFlow({ volumeFlow: volume(i), at: 'standard' });

/** Both states and the flow: as the air enters unless a wet bulb at the nozzle says that it was measured there. */
function readings(i: Inputs): CoilReadings {
  const measuredIn = i.leavingWetBulb === undefined ? entering(i) : leaving(i);
  const dryAirFlow = i.cfm === undefined ? 1 : flowOf(i, measuredIn);
  const blower = { heat: i.blowerPower ?? 0, place: 'after coil' } as const;
  return { entering: entering(i), leaving: leaving(i), dryAirFlow, blower };
}

const load = (i: Inputs) => coilLoad(readings(i));
const surface = (i: Inputs) => load(i).apparatus ?? { dewPoint: Number.NaN, bypassFactor: Number.NaN };

/** The coil of the model rows, rated at 80/67 °F. */
const ratedInputs: Inputs = { entering: 80, enteringWetBulb: 67, cfm: 1200, total: 36000 };
const ratedTotal = 36000 * btuPerHour;
const rated = () =>
  ratedApparatus(
    { entering: entering(ratedInputs), dryAirFlow: standardFlow(ratedInputs), total: ratedTotal },
    0.75 * ratedTotal,
  )?.bypassFactor ?? Number.NaN;

/** Published capacity factors of the model rows, by entering wet bulb in °F and airflow: they are given, not tested here. */
const capacityFactor: Readonly<Record<string, number>> = {
  '67 at 0.8': 0.9656,
  '67 at 1.1': 1.0131,
  '63 at 1': 0.9457,
  '63 at 0.8': 0.9132,
  '72 at 1': 1.1113,
  '62 at 1': 0.9369,
};

function operating(i: Inputs) {
  const ratio = at(i, 'flowRatio');
  const bypassFactor = bypassAtFlow(rated(), ratio);
  const total = ratedTotal * (capacityFactor[`${at(i, 'enteringWetBulb')} at ${ratio}`] ?? Number.NaN);
  const duty = { entering: entering(i), dryAirFlow: ratio * standardFlow(ratedInputs), total };
  const air = leavingAir(duty, bypassFactor);
  return { bypassFactor, total, air: air ?? { apparatusDewPoint: Number.NaN, sensible: Number.NaN } };
}

/** A one-row table in Btu/h: what goes in as a rating and comes out as an expectation. */
function through(total: number, sensible: number, basis: 'net' | 'gross', inside: number, here: number) {
  const row = { outdoorDryBulb: 35, enteringWetBulb: 19, enteringDryBulb: 27 };
  const table = ratingTable([{ ...row, total: total * btuPerHour, sensible: sensible * btuPerHour }], {
    basis,
    blowerPower: inside,
  });
  return expectedCapacity(table, row, { blowerPower: here });
}

const ours: Readonly<Record<string, Figure>> = {
  'dry-air flow': (i) => readings(i).dryAirFlow / poundPerHour,
  'enthalpy entering': (i) => ip(entering(i)),
  'enthalpy leaving': (i) => ip(leaving(i)),
  'humidity ratio entering': (i) => entering(i).humidityRatio,
  'humidity ratio leaving': (i) => leaving(i).humidityRatio,
  'volume of a pound of dry air entering': (i) => entering(i).specificVolume / cubicFootPerPound,
  total: (i) => load(i).total / btuPerHour,
  condensate: (i) => load(i).condensate / poundPerHour,
  'total by 4.5·cfm·Δh': (i) => coilLoad({ ...readings(i), dryAirFlow: standardFlow(i) }).total / btuPerHour,
  'total, airflow measured in the supply': (i) =>
    coilLoad({ ...readings(i), dryAirFlow: flowOf(i, leaving(i)) }).total / btuPerHour,
  'latent heat condensate': (i) => {
    const t = fromFahrenheit(at(i, 'temperature'));
    return (vaporEnthalpy + (heatVapor - heatWater) * t) / btuPerPound;
  },
  'condensate in 20 minutes': (i) => (load(i).condensate * 20 * 60) / pound / (8.345 / 8),
  'apparatus dew point': (i) => toFahrenheit(surface(i).dewPoint),
  'bypass factor': (i) => surface(i).bypassFactor,
  'bypass factor at another airflow': (i) => bypassAtFlow(at(i, 'bypassFactor'), at(i, 'flowRatio')),
  'temperature rise of blower heat': (i) => temperatureRise(at(i, 'power'), standardFlow(i), 0) / fahrenheitDegree,
  'ADP/BF model: rated leaving dry bulb': (i) => {
    const duty = { entering: entering(i), dryAirFlow: standardFlow(i), total: ratedTotal };
    return toFahrenheit(leavingAir(duty, rated())?.dryBulb ?? Number.NaN);
  },
  'ADP/BF model: rated bypass factor': () => rated(),
  'ADP/BF model: A0 = -m ln BF': (i) => -standardFlow(i) * Math.log(rated()),
  'ADP/BF model: dry air mass flow': (i) => standardFlow(i),
  'ADP/BF model: operating bypass factor': (i) => operating(i).bypassFactor,
  'ADP/BF model: operating ADP': (i) => toFahrenheit(operating(i).air.apparatusDewPoint),
  'ADP/BF model: operating SHR': (i) => operating(i).air.sensible / operating(i).total,
  'ADP/BF model: capacity factor': curveFactor,
  'ADP/BF model: capacity factor of a dry coil': curveFactor,
  'blower heat by default': (i) => defaultBlowerPower(standardFlow(i)) / btuPerHour,
  'net from gross capacity': (i) =>
    through(at(i, 'total'), at(i, 'total'), 'gross', 0, at(i, 'blowerHeat') * btuPerHour).total / btuPerHour,
  'sensible heat ratio, net to gross': (i) => {
    const inside = at(i, 'powerPerCfm') * at(i, 'cfm');
    const { total, sensible } = through(at(i, 'total'), at(i, 'sensibleHeatRatio') * at(i, 'total'), 'net', inside, 0);
    return (sensible ?? Number.NaN) / total;
  },
  'air-enthalpy worked example: W entering': (i) => entering(i).humidityRatio,
  'air-enthalpy worked example: W leaving': (i) => leaving(i).humidityRatio,
  'air-enthalpy worked example: h entering': (i) => ip(entering(i)),
  'air-enthalpy worked example: h leaving': (i) => ip(leaving(i)),
  'air-enthalpy worked example: volume per lb dry air at nozzle': (i) => leaving(i).specificVolume / cubicFootPerPound,
  'air-enthalpy worked example: total capacity': (i) => load(i).total / btuPerHour,
  'air-enthalpy worked example: sensible capacity': (i) => load(i).sensible / btuPerHour,
  'air-enthalpy worked example: SHR': (i) => load(i).sensibleHeatRatio,
  'air-enthalpy worked example: standard (dry-air) airflow': (i) =>
    standardVolumeFlow(readings(i).dryAirFlow) / cubicFootPerMinute,
  'apparatus dew point, blower heat taken out': (i) => toFahrenheit(surface(i).dewPoint),
  'bypass factor, blower heat taken out': (i) => surface(i).bypassFactor,
  'dry bulb leaving the coil': (i) => toFahrenheit(coilProcess(readings(i)).leavingDryBulb),
  'gross capacity': (i) => (load(i).total + at(i, 'blowerPower')) / btuPerHour,
};

/** Enthalpy on the I-P scale, Btu/lb from dry air at 0 °F. */
function ip(air: MoistAir): number {
  const zero = moistAir({ dryBulb: fromFahrenheit(0), humidityRatio: 0 }).enthalpy;
  const liquid = heatWater * fromFahrenheit(32);
  return (air.enthalpy - zero - liquid * air.humidityRatio) / btuPerPound;
}

/** The heat pump of the model rows: 3 tons at 400 cfm a ton and 0.75 sensible, from its published curve. */
function curveFactor(i: Inputs): number {
  const dryAirFlow = standardFlow(ratedInputs);
  const table = genericRating({
    total: ratedTotal,
    basis: 'gross',
    blowerPower: 0,
    unit: 'heatPump',
    stage: 'one',
    dryAirFlow,
    sensibleHeatRatio: 0.75,
  });
  const conditions = {
    outdoorDryBulb: fromFahrenheit(at(i, 'outdoor')),
    enteringWetBulb: fromFahrenheit(at(i, 'enteringWetBulb')),
    enteringDryBulb: fromFahrenheit(at(i, 'entering')),
    dryAirFlow: (i.flowRatio ?? 1) * dryAirFlow,
  };
  return expectedCapacity(table, conditions, { blowerPower: 0 }).total / ratedTotal;
}

const reasons: Readonly<Record<string, string>> = {
  'latent heat boiling': 'water boils far above what a coil sees: Eq. 30 and 33 are not meant for 212 °F',
  'condensate per latent ton': 'arithmetic on a latent heat of the trade; nothing here works with that figure',
};

const isOurs = ({ quantity }: CoilRow) => quantity in ours;

function titleOf({ quantity, inputs }: CoilRow): string {
  const given = Object.entries(inputs).map(([name, value]) => `${name} ${value}`);
  return `Coil: ${quantity} (${given.join(', ')})`;
}

export const checks: readonly Check[] = coilRows.filter(isOurs).map((row) => ({
  title: titleOf(row),
  expected: row.expected,
  tolerance: row.tolerance,
  unit: row.unit,
  source: row.source,
  known: row.known,
  ...(row.why === undefined ? {} : { why: row.why }),
  ours: () => (ours[row.quantity] as Figure)(row.inputs),
}));

export const notOurs: readonly NotOurs[] = coilRows
  .filter((row) => !isOurs(row))
  .map((row) => ({
    what: `${titleOf(row)}: ${row.expected} ${row.unit}`,
    source: row.source,
    why: reasons[row.quantity] ?? '',
  }));
