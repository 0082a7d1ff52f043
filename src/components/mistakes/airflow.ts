/** What mistakes on the way to an airflow cost. The figures of the examples are invented. */
import {
  airflowFromFanTable,
  airflowFromFlowGrid,
  airflowFromTemperatureRise,
  cubicFootPerMinute,
  fahrenheitDegree,
  fromFahrenheit,
  inchOfWater,
  moistAir,
  standardPressure,
} from '~/calc/index.ts';
import { aloft, type Cost, cooling, example, flowAs, high, off, share } from './example.ts';

const airflow = (by: Cost['by']): Cost => ({ about: 'airflow', by });

const air = moistAir({ dryBulb: fromFahrenheit(75), relativeHumidity: 0.5 });

/** One plate that shows 980 cfm; the supply static is 62 Pa with the filter in. */
const plate = (pressureWithGrid: number) =>
  airflowFromFlowGrid({
    plates: [980 * cubicFootPerMinute],
    shownAs: 'actual',
    pressureNormal: 62,
    pressureWithGrid,
    air,
  }).volumeFlow;

/** A strip of 9.84 kW; its blower draws 480 W. */
const strip = (rise: number, blower: number) =>
  airflowFromTemperatureRise({
    heat: { kind: 'power', power: 9840 },
    blower: { power: blower },
    enteringDryBulb: fromFahrenheit(70),
    leavingDryBulb: fromFahrenheit(70) + rise * fahrenheitDegree,
    humidityRatio: 0.006,
    probes: 'several',
    probeLimit: 0.5,
    speed: 'cooling',
  }).volumeFlow;

/** A column of a fan table, in. w.c. and cfm. */
const column = [
  [0.3, 1270],
  [0.4, 1230],
  [0.5, 1180],
  [0.6, 1125],
  [0.7, 1060],
  [0.8, 980],
] as const;
const fanFlow = (external: number) =>
  airflowFromFanTable({
    table: {
      statics: column.map(([at]) => at * inchOfWater),
      speeds: [{ name: 'cooling', flows: column.map(([, flow]) => flow * cubicFootPerMinute) }],
    },
    column: 0,
    motor: 'fixedSpeed',
    supplyStatic: (external / 2) * inchOfWater,
    returnStatic: (external / 2) * inchOfWater,
    pressure: standardPressure(0),
    air,
  }).volumeFlow;

const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** How fast the air is at places across a duct, by the seventh-root law, over its true mean: in both directions. */
function seventhRoot(places: readonly number[]): number {
  const speeds = places.map((place) => (2 * Math.min(place, 1 - place)) ** (1 / 7));
  return (meanOf(speeds) / (7 / 8)) ** 2;
}
const middlesOf = (count: number) => Array.from({ length: count }, (_, index) => (index + 0.5) / count);

/** Velocity pressures of a traverse, thousandths of an inch of water. */
const pressures = [16, 24, 29, 26, 18, 24, 36, 43, 38, 26, 28, 42, 50, 44, 31, 24, 36, 43, 38, 26, 16, 24, 29, 26, 18];
const roots = meanOf(pressures.map((pressure) => Math.sqrt(pressure)));

const aTenthMore = flowAs({ volumeFlow: 1.1 * 1200 * cubicFootPerMinute });

export const airflowCosts = {
  supplyAsReturn: cooling(flowAs({ place: 'entering' }), flowAs({ place: 'leaving' })(example)),
  actualAsStandard: cooling(flowAs({ kind: 'standard' })),
  actualAsStandardHigh: cooling(flowAs({ kind: 'standard' }), aloft),
  tenthMoreAir: cooling(aTenthMore),
  tenthMoreAirShare: share(aTenthMore),
  ruleOfThumb: airflow(off(400, 320)),
  wholeGrille: airflow(off(1, 0.75)),
  fieldHood: { about: 'airflow', by: [0.11, 0.25], eitherSide: true },
  gridUncorrected: airflow(off(plate(62), plate(48))),
  pressuresAveraged: airflow(off(Math.sqrt(meanOf(pressures)), roots)),
  equalAreas: airflow(off(seventhRoot(middlesOf(5)), 1)),
  middleOnly: airflow(off(seventhRoot([0.5]), 1)),
  hotWireTwice: airflow(off(standardPressure(high), standardPressure(0))),
  blowerHeatLeftOut: airflow(off(strip(29, 0), strip(29, 480))),
  riseOneDegree: airflow(off(strip(30, 480), strip(29, 480))),
  riseThreeDegrees: airflow(off(strip(26, 480), strip(29, 480))),
  annualEfficiency: airflow(off(0.95, 0.88)),
  tenthOfInch: airflow(off(fanFlow(0.5), fanFlow(0.6))),
  returnSideForgotten: airflow(off(fanFlow(0.35), fanFlow(0.7))),
  matchUnreached: airflow(off(Math.sqrt(0.9), 1)),
} as const satisfies Record<string, Cost>;
