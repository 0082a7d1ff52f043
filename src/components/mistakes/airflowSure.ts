/** How sure the ways of finding an airflow are, as the package has it: standard uncertainties of invented readings. */
import {
  airflowFromFanTable,
  airflowFromFlowGrid,
  airflowFromGrille,
  airflowFromHood,
  airflowFromPressureMatch,
  airflowFromReadout,
  airflowFromTemperatureRise,
  airflowFromTraverse,
  cubicFootPerMinute,
  fahrenheitDegree,
  fromFahrenheit,
  inch,
  inchOfWater,
  moistAir,
  standardPressure,
  traversePoints,
} from '~/calc/index.ts';

const air = moistAir({ dryBulb: fromFahrenheit(75), relativeHumidity: 0.5 });
const cfm = (figure: number) => figure * cubicFootPerMinute;

const readout = (shows: 'sensed' | 'demanded') =>
  airflowFromReadout({ volumeFlow: cfm(1200), shows, ways: ['standard'] }).u;

const duct = { shape: 'rectangular', width: 20 * inch, height: 16 * inch } as const;
const traverse = (length: number) =>
  airflowFromTraverse({
    section: duct,
    instrument: 'thermal',
    readings: traversePoints(duct).lines.map((line) => line.points.map(() => 3)),
    air,
    straight: { length, after: 'other' },
  }).u;

const hood = (kind: 'powered' | 'compensated' | 'plain') =>
  airflowFromHood({ returns: [cfm(1200)], hood: kind, shownAs: 'actual', covers: true, ductsTight: true, air }).u;

const rise = (kind: 'electric' | 'fuel', probes: 'several' | 'one') =>
  airflowFromTemperatureRise({
    heat:
      kind === 'fuel'
        ? { kind, input: 20000, efficiency: 0.8, efficiencyFrom: 'measured' }
        : { kind, phases: 1, voltage: 240, current: 41 },
    blower: { power: 480 },
    enteringDryBulb: fromFahrenheit(70),
    leavingDryBulb: fromFahrenheit(70) + 29 * fahrenheitDegree,
    humidityRatio: 0.006,
    probes,
    probeLimit: 0.9 * fahrenheitDegree,
    speed: 'cooling',
  }).u;

const grille = (factorFrom: 'maker' | 'traverse' | 'guess') =>
  airflowFromGrille({
    grilles: [
      { readings: Array.from({ length: 9 }, () => 1.5), width: 30 * inch, height: 20 * inch, areaFactor: 0.75 },
    ],
    factorFrom,
    air,
  }).u;

/** Whole per cents. */
const percent = (u: number) => Math.round(100 * u);

export const airflowSure = {
  sensed: percent(readout('sensed')),
  demanded: percent(readout('demanded')),
  fanTable: percent(
    airflowFromFanTable({
      table: {
        statics: [0.4, 0.5, 0.6].map((step) => step * inchOfWater),
        speeds: [{ name: 'cooling', flows: [1230, 1180, 1125].map(cfm) }],
      },
      column: 0,
      motor: 'fixedSpeed',
      supplyStatic: 0.3 * inchOfWater,
      returnStatic: 0.25 * inchOfWater,
      pressure: standardPressure(0),
      air,
    }).u,
  ),
  flowGrid: percent(
    airflowFromFlowGrid({ plates: [cfm(980)], shownAs: 'actual', pressureNormal: 62, pressureWithGrid: 48, air }).u,
  ),
  straightTraverse: percent(traverse(5)),
  disturbedTraverse: percent(traverse(1)),
  poweredHood: percent(hood('powered')),
  compensatedHood: percent(hood('compensated')),
  plainHood: percent(hood('plain')),
  pressureMatch: percent(
    airflowFromPressureMatch({ fanFlow: cfm(1200), shownAs: 'actual', pressureNormal: 60, pressureReached: 60, air }).u,
  ),
  electricSeveral: percent(rise('electric', 'several')),
  electricOne: percent(rise('electric', 'one')),
  gasSeveral: percent(rise('fuel', 'several')),
  gasOne: percent(rise('fuel', 'one')),
  grilleMaker: percent(grille('maker')),
  grilleGuess: percent(grille('guess')),
} as const;
