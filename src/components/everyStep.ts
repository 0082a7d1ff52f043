/**
 * Every step of working that the calculation package shows, got by running it on invented systems of all kinds: the page of
 * equations is what the package says, and a test holds that none of its equations is missing here.
 */
import {
  airflowFromFanTable,
  airflowFromFlowGrid,
  airflowFromGrille,
  airflowFromHood,
  airflowFromPressureMatch,
  airflowFromReadout,
  airflowFromTemperatureRise,
  airflowFromTraverse,
  airflowPerTon,
  assess,
  btuPerHour,
  clockedInput,
  combineAirflows,
  cubicFootPerMinute,
  defaultBlowerPower,
  dryAirFlow,
  ductGain,
  ductSystem,
  emptyRating,
  emptyTest,
  expectedCapacity,
  type FanTable,
  fromFahrenheit,
  type LineRun,
  lineSet,
  middleOfWays,
  mix,
  moistAir,
  noMultipliers,
  ratingTable,
  type Step,
  standardPressure,
  type Test,
  type Trace,
} from '~/calc/index.ts';

const room = moistAir({ dryBulb: 24, relativeHumidity: 0.5 });
const attic = moistAir({ dryBulb: 50, dewPoint: 18 });
const air = { specificVolume: room.specificVolume, density: room.density };
const [low, high] = [85, 95].map(fromFahrenheit) as [number, number];
const flow = 1200 * cubicFootPerMinute;
const sea = dryAirFlow({ volumeFlow: flow, at: 'standard' });

const printed = [
  [low, fromFahrenheit(57), 32_500],
  [low, fromFahrenheit(67), 36_900],
  [high, fromFahrenheit(57), 30_400],
  [high, fromFahrenheit(67), 34_900],
] as const;
const run: LineRun = {
  refrigerant: 'R-410A',
  capacity: 10_500,
  evaporating: 7,
  superheat: 8,
  liquidTemperature: 38,
  subcooling: 5.5,
  vaporTube: '3/4',
  ratedVaporTube: '3/4',
  liquidTube: '3/8',
  length: 30,
  ratedLength: 7.6,
  fittings: 3,
  lift: 5,
};
const lines = {
  equipment: 'split',
  metering: 'indoors',
  maker: { factor: null, maximumLength: null, maximumLift: null },
  run,
} as const;

const test: Test = {
  ...emptyTest,
  entering: { dryBulb: 24, relativeHumidity: 0.5, wetBulb: null },
  leaving: { dryBulb: 13.3, relativeHumidity: 0.88, wetBulb: null },
  airflow: { volumeFlow: flow, place: 'unsure', kind: 'unsure', limit: 0.07, sources: null },
  altitude: 1500,
  outdoorDryBulb: fromFahrenheit(91),
  fullSpeed: 'oneSpeed',
  rating: {
    ...emptyRating,
    rows: printed.map(([outdoorDryBulb, enteringWetBulb, total]) => ({
      outdoorDryBulb,
      enteringWetBulb,
      dryAirFlow: sea * 1.05,
      total: total * btuPerHour,
    })),
    basis: 'net',
    blowerPower: 300,
    beyond: 'extend',
    multipliers: { ...noMultipliers, indoorMatch: 0.98 },
  },
  lineSet: lines,
  blower: { place: 'after coil', power: 430, kind: null },
  nominalCapacity: 36_000 * btuPerHour,
};

/** Other tests, each for steps that the one above does not come to. */
const otherTests: readonly Partial<Test>[] = [
  { airflow: { ...test.airflow, place: 'entering', kind: 'standard' } },
  { airflow: { ...test.airflow, place: 'entering', kind: 'actual' }, altitude: null, lineSet: null },
  { blower: { place: 'before coil', power: null, kind: 'electronic' } },
  { blower: { place: 'outside probes', power: 430, kind: null } },
  { entering: { dryBulb: 30, relativeHumidity: 0.18, wetBulb: null } },
  {
    rating: {
      ...test.rating!,
      blowerPower: 0,
      multipliers: { ...noMultipliers, airflow: [{ dryAirFlow: 0.9 * sea, total: 0.98, sensible: 0.95 }] },
    },
  },
];

/** A gross table for air of 80 °F whose lowest row is dry, read for less and warmer air that is as dry. */
const eighty = fromFahrenheit(80);
const dryTable = ratingTable(
  [
    [57, 32_500, 32_500],
    [62, 32_700, 31_700],
    [67, 35_500, 26_200],
  ].map(([wetBulb, total, sensible]) => ({
    outdoorDryBulb: 35,
    enteringWetBulb: fromFahrenheit(wetBulb!),
    enteringDryBulb: eighty,
    dryAirFlow: sea,
    total: total! * btuPerHour,
    sensible: sensible! * btuPerHour,
  })),
  { basis: 'gross', blowerPower: 0 },
);
const dryAir = {
  outdoorDryBulb: 35,
  enteringWetBulb: fromFahrenheit(58),
  enteringDryBulb: fromFahrenheit(85),
  dryAirFlow: 0.95 * sea,
};

const fanTable: FanTable = {
  statics: [25, 75, 125, 175, 225],
  speeds: [{ name: 'high', flows: [0.66, 0.62, 0.57, 0.5, null] }],
};

function airflows(t: Trace): void {
  const blower = { power: 400 };
  const rise = { enteringDryBulb: 21, leavingDryBulb: 40, humidityRatio: 0.008, probeLimit: 0.5 } as const;
  const warm = { ...rise, blower, probes: 'several', speed: 'cooling' } as const;
  const input = clockedInput({ volume: 0.0566, time: 72, heatingValue: 38e6 }, t);
  const section = { shape: 'rectangular', width: 0.5, height: 0.4, lines: 5, points: 5 } as const;
  const readings = Array.from({ length: 5 }, () => [9, 10, 11, 10, 9]);
  const pitot = { section, readings, instrument: 'pitot', air, straight: { length: 3, after: 'fan' } } as const;
  const readout = airflowFromReadout({ volumeFlow: 0.55, shows: 'sensed', ways: ['standard', air] }, t);
  const match = { fanFlow: 0.5, shownAs: 'uncorrected', pressureNormal: 60, pressureReached: 48, air } as const;
  const statics = { supplyStatic: 50, returnStatic: -40, pressure: 95e3, air } as const;
  const plates = { shownAs: 'uncorrected', pressureNormal: 60, pressureWithGrid: 48, air } as const;
  const hood = { hood: 'plain', shownAs: 'uncorrected', covers: false, ductsTight: false, air } as const;
  const electric = { kind: 'electric', voltage: 240, current: 40 } as const;
  airflowFromTemperatureRise({ ...warm, heat: { ...electric, phases: 1 } }, t);
  airflowFromTemperatureRise({ ...warm, heat: { ...electric, phases: 3 } }, t);
  const fuel = { kind: 'fuel', input, efficiency: 0.8, efficiencyFrom: 'measured' } as const;
  airflowFromTemperatureRise({ ...warm, heat: fuel }, t);
  airflowFromFanTable({ ...statics, table: fanTable, column: 0, motor: 'constantAirflow' }, t);
  const found = [
    readout,
    airflowFromFanTable({ ...statics, table: fanTable, column: 0, motor: 'unsure' }, t),
    airflowFromTraverse(pitot, t),
    airflowFromFlowGrid({ ...plates, plates: [0.3, 0.25] }, t),
    airflowFromPressureMatch(match, t),
    airflowFromHood({ ...hood, returns: [0.3, 0.27] }, t),
    airflowFromGrille(
      { grilles: [{ readings: [2.1, 2.3], width: 0.6, height: 0.5, areaFactor: 0.7 }], factorFrom: 'guess', air },
      t,
    ),
  ];
  combineAirflows(found, t);
  middleOfWays(0.55, ['standard', air], t);
  airflowPerTon(0.65, test.nominalCapacity!, t);
  ductSystem(
    {
      table: fanTable,
      column: 0,
      flow: 0.57,
      parts: [
        { drop: 60, times: 2 },
        { drop: 65, times: 1 },
      ],
    },
    t,
  );
}

/** Runs everything anew; each step goes to `t`, as often as it comes. */
export function traceEverything(t: Trace): void {
  const pressure = standardPressure(1500, t);
  moistAir({ dryBulb: 24, relativeHumidity: 0.5, pressure }, t);
  moistAir({ dryBulb: 24, wetBulb: 17, pressure }, t);
  moistAir({ dryBulb: 24, dewPoint: 13, pressure }, t);
  moistAir({ dryBulb: 24, enthalpy: 48e3, pressure }, t);
  mix({ air: room, dryAirFlow: 0.6 }, { air: attic, dryAirFlow: 0.1 }, t);
  for (const other of [{}, ...otherTests]) assess({ ...test, ...other }, t);
  defaultBlowerPower(0.65, 'electronic', t);
  expectedCapacity(dryTable, dryAir, { blowerPower: 0 }, t);
  for (const changes of [{}, { lift: 0 }, { capacity: 12 }, { capacity: 60 }, { lift: -5, subcooling: 12 }])
    lineSet({ ...lines, run: { ...run, ...changes } }, t);
  airflows(t);
  const duct = { area: 20, resistance: 1.06, leakage: 0.05, around: attic };
  ductGain({ supply: duct, return: duct, dryAirFlow: 0.65, total: 10e3, supplyDryBulb: 13, room, regain: 0.1 }, t);
}

/** Every step, each equation of each once, in the order of the job. */
export function everyStep(): readonly Step[] {
  const found = new Map<string, Step>();
  traceEverything((step) => {
    const key = `${step.id.split('.').slice(-2).join('.')} ${step.equation}`;
    if (!found.has(key)) found.set(key, step);
  });
  return [...found.values()];
}
