/** How this package works out the airflow figures that were found outside, by what they are. */
import {
  type AirThere,
  airflowFromFanTable,
  airflowFromFlowGrid,
  airflowFromPressureMatch,
  airflowFromTemperatureRise,
  airflowFromTraverse,
  btuPerHour,
  btuPerPoundFahrenheit,
  cubicFootPerMinute,
  fahrenheitDegree,
  foot,
  footPerMinute,
  fromFahrenheit,
  type HeatSource,
  heatDryAir,
  heatVapor,
  inch,
  inchOfWater,
  linesFor,
  logLinear,
  logTchebycheff,
  moistAir,
  poundPerCubicFoot,
  poundPerSquareInch,
  practice,
  type Section,
  standardAirDensity,
  standardPressure,
  standardVolumeFlow,
  systemStatic,
  traversePoints,
} from '../../../src/calc/index.ts';
import type { AirflowRow } from './airflowRows.ts';

type Inputs = AirflowRow['inputs'];
type Figure = (inputs: Inputs, i: number) => number;

const at = (inputs: Inputs, name: string): number => inputs[name] as number;
const list = (inputs: Inputs, name: string) => inputs[name] as readonly number[];

/** Air of which a cubic metre has so many kilograms, all of them counted as dry. */
const airOf = (density: number): AirThere => ({ density, specificVolume: 1 / density });
const standardAir = airOf(standardAirDensity);
const airHere = (inputs: Inputs) =>
  inputs['rho_lb_ft3'] === undefined ? standardAir : airOf(at(inputs, 'rho_lb_ft3') * poundPerCubicFoot);

/** The same velocity pressure (in. w.c.) at every point of a duct. */
function evenTraverse(inputs: Inputs, pressure: number) {
  const section: Section = { shape: 'rectangular', width: 0.4, height: 0.4 };
  const readings = traversePoints(section).lines.map(({ points }) => points.map(() => pressure * inchOfWater));
  return airflowFromTraverse({ section, instrument: 'pitot', readings, air: airHere(inputs), straight: null });
}

function workedTraverse(inputs: Inputs) {
  const rows = inputs['VP_inwc'] as readonly (readonly number[])[];
  const readings = (rows[0] as readonly number[]).map((_, line) =>
    rows.map((row) => (row[line] as number) * inchOfWater),
  );
  const section = {
    shape: 'rectangular',
    width: at(inputs, 'width_in') * inch,
    height: at(inputs, 'height_in') * inch,
  } as const;
  return airflowFromTraverse({ section, instrument: 'pitot', readings, air: airHere(inputs), straight: null });
}

/** Relative error, %, of the mean over the positions on a profile (y·(1 − y) mirrored to the wall)^(1/7) in both directions. */
function profileError(lines: keyof typeof logTchebycheff): number {
  const velocity = (fraction: number) => (2 * Math.min(fraction, 1 - fraction)) ** (1 / 7);
  const section = { shape: 'rectangular', width: 1, height: 1, lines, points: lines } as const;
  const readings = traversePoints(section).lines.map(({ points }) =>
    points.map(({ x, y }) => velocity(x) * velocity(y)),
  );
  const { meanVelocity } = airflowFromTraverse({
    section,
    instrument: 'vane',
    readings,
    air: standardAir,
    straight: null,
  });
  return 100 * (meanVelocity / (7 / 8) ** 2 - 1);
}

/** Standard cfm from a rise in °F of air without water. */
function riseFlow(heat: HeatSource, blower: number, rise: number): number {
  const entering = fromFahrenheit(70);
  const { volumeFlow } = airflowFromTemperatureRise({
    heat,
    blower: { power: blower },
    enteringDryBulb: entering,
    leavingDryBulb: entering + rise * fahrenheitDegree,
    humidityRatio: 0,
    probes: 'several',
    probeLimit: 0.5,
    speed: 'cooling',
  });
  return volumeFlow / cubicFootPerMinute;
}

const electric = (i: Inputs): HeatSource => ({
  kind: 'electric',
  phases: 1,
  voltage: at(i, 'V'),
  current: at(i, 'A'),
  powerFactor: (i['pf'] as number | undefined) ?? 1,
});

/** Btu/(h·cfm·°F) of air that has so many kilograms of dry air in a cubic metre. */
const sensibleFactor = (density: number, W: number) =>
  ((density * (heatDryAir + heatVapor * W) * foot ** 3) / (btuPerPoundFahrenheit * poundPerCubicFoot * foot ** 3)) * 60;

function localFactor(i: Inputs): number {
  const pressure = at(i, 'p_psia') * poundPerSquareInch;
  const air = moistAir({ dryBulb: fromFahrenheit(at(i, 't_F')), relativeHumidity: at(i, 'rh_pct') / 100, pressure });
  return sensibleFactor(1 / air.specificVolume, air.humidityRatio);
}

function fanTableFlow(i: Inputs): number {
  const statics = list(i, 'esp').map((one) => one * inchOfWater);
  const flows = list(i, 'cfm').map((one) => one * cubicFootPerMinute);
  const half = (at(i, 'esp_test') / 2) * inchOfWater;
  const { volumeFlow } = airflowFromFanTable({
    table: { statics, speeds: [{ name: 'high', flows }] },
    column: 0,
    motor: 'fixedSpeed',
    supplyStatic: half,
    returnStatic: -half,
    pressure: standardPressure(0),
    air: standardAir,
  });
  return volumeFlow / cubicFootPerMinute;
}

export const airflowFigures: Readonly<Record<string, Figure>> = {
  log_tchebycheff_rect_positions: (i, n) =>
    logTchebycheff[at(i, 'points_per_side') as keyof typeof logTchebycheff][n] as number,
  log_tchebycheff_points_per_side: (i) => linesFor(at(i, 'side_in') * inch),
  log_linear_round_positions: (i, n) => logLinear[at(i, 'points_per_diameter') as keyof typeof logLinear][n] as number,
  log_linear_round_positions_4digit: (i, n) =>
    logLinear[(2 * at(i, 'points_per_radius')) as keyof typeof logLinear][n] as number,
  traverse_rule_error_rect_1_7_power_profile: (i) => profileError(at(i, 'n') as keyof typeof logTchebycheff),
  velocity_from_velocity_pressure: (i) => evenTraverse(i, at(i, 'VP_inwc')).meanVelocity / footPerMinute,
  velocity_pressure_constant: (i) => evenTraverse(i, 1).meanVelocity / footPerMinute,
  traverse_mean_velocity: (i) => workedTraverse(i).meanVelocity / footPerMinute,
  traverse_cfm_standard_air: (i) => workedTraverse(i).volumeFlow / cubicFootPerMinute,
  traverse_acfm: (i) => workedTraverse(i).volumeFlow / cubicFootPerMinute,
  traverse_scfm: (i) => standardVolumeFlow(workedTraverse(i).dryAirFlow) / cubicFootPerMinute,
  hotwire_actual_from_standard_velocity: (i) => {
    const section = { shape: 'round', diameter: 0.25, lines: 2, points: 6 } as const;
    const speed = at(i, 'V_std_fpm') * footPerMinute;
    const readings = [0, 1].map(() => new Array<number>(6).fill(speed));
    const { dryAirFlow, area } = airflowFromTraverse({
      section,
      instrument: 'thermal',
      readings,
      air: airHere(i),
      straight: null,
    });
    return (dryAirFlow * airHere(i).specificVolume) / area / footPerMinute;
  },
  traverse_min_straight_duct_after_fan: () => practice.straightAfterFan,
  traverse_min_straight_duct_after_disturbance: () => practice.straightAfterOther,
  traverse_repeat_check_limit: () => 100 * practice.repeat,
  pitot_min_velocity_for_use: () => practice.pitotVelocity / footPerMinute,
  sensible_factor_standard_air: () => sensibleFactor(standardAirDensity, 0),
  sensible_factor_local: localFactor,
  standard_pressure_at_elevation: (i) => standardPressure(at(i, 'elev_ft') * foot) / poundPerSquareInch,
  temp_rise_cfm_electric_1ph: (i) => riseFlow(electric(i), at(i, 'blower_W'), at(i, 'dT_F')),
  temp_rise_cfm_electric_published: (i) => riseFlow(electric(i), 0, at(i, 'dT_F')),
  temp_rise_cfm_gas: (i) =>
    riseFlow(
      { kind: 'fuel', input: at(i, 'input_Btuh') * btuPerHour, efficiency: at(i, 'eff'), efficiencyFrom: 'measured' },
      0,
      at(i, 'dT_F'),
    ),
  fan_table_interpolation: fanTableFlow,
  high_esp_warning: () => practice.highStatic / inchOfWater,
  flow_grid_correction_factor: (i) =>
    airflowFromFlowGrid({
      plates: [0.5],
      shownAs: 'actual',
      pressureNormal: at(i, 'P_normal_Pa'),
      pressureWithGrid: at(i, 'P_with_grid_Pa'),
      air: standardAir,
    }).correction,
  pressure_matching_extrapolated: (i) =>
    airflowFromPressureMatch({
      fanFlow: at(i, 'Qmax') * cubicFootPerMinute,
      shownAs: 'actual',
      pressureNormal: at(i, 'Psp'),
      pressureReached: at(i, 'Pmax'),
      air: standardAir,
    }).volumeFlow / cubicFootPerMinute,
  fan_law_pressure_ratio: (i) => {
    const ducts = { flow: 0.5, parts: [{ drop: 100, times: 1 }] };
    return systemStatic(ducts, 0.5 * at(i, 'cfm_ratio')) / systemStatic(ducts, 0.5);
  },
  energyplus_rated_flow_range: (_, n) => practice.ratedPerTon[n] as number,
  energyplus_operating_flow_range: (_, n) => practice.workingPerTon[n] as number,
};
