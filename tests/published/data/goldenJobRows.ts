/**
 * Three whole jobs, their scenarios invented: every figure computed with CoolProp 8.0.0 (`HAPropsSI`) by a script outside this
 * project. Readings in °F and fractions, airflow in cfm, rating rows as outdoor °F, entering wet bulb °F, total Btu/h; results
 * in kg/s, W and °C. The blower stands between the probes; sensible is at the leaving humidity ratio; standard air is
 * 1.2014 kg/m³; the airflow of the rating equals the measured one. `uncertainty` is the relative standard uncertainty of the
 * ratio, all errors rectangular within the limits (K, fractions, the outdoor one in °F) and independent, no side-by-side check; `tolerance` is relative.
 */
export interface GoldenJob {
  readonly name: string;
  readonly pressure: number;
  readonly entering: readonly [dryBulb: number, relativeHumidity: number];
  readonly leaving: readonly [dryBulb: number, relativeHumidity: number];
  readonly cfm: number;
  readonly airflowAt: 'entering' | 'leaving' | 'standard';
  readonly outdoor: number;
  readonly ratingRows: readonly (readonly [outdoor: number, wetBulb: number, total: number])[];
  readonly basis: 'net' | 'gross';
  readonly blowerInside: number;
  readonly blowerHere: number;
  readonly dryAirFlow: number;
  readonly total: number;
  readonly sensible: number;
  readonly latent: number;
  readonly condensate: number;
  readonly enteringWetBulb: number;
  readonly expectedNet: number;
  readonly ratio: number;
  readonly uncertainty: number;
  /** What each cause adds to it. */
  readonly contributions: {
    readonly enteringDryBulb: number;
    readonly enteringHumidity: number;
    readonly leavingDryBulb: number;
    readonly leavingHumidity: number;
    readonly outdoorDryBulb: number;
    readonly airflow: number;
  };
  readonly dryBulbLimit: number;
  readonly humidityLimit: number;
  readonly airflowLimit: number;
  /** °F. */
  readonly outdoorLimit: number;
  readonly tolerance: number;
}

export const goldenJobRows: readonly GoldenJob[] = [
  {
    name: 'draw-through heat pump, sea level',
    pressure: 101325,
    entering: [75, 0.5],
    leaving: [56, 0.88],
    cfm: 1180,
    airflowAt: 'entering',
    outdoor: 91,
    ratingRows: [
      [85, 62, 33600],
      [85, 67, 36900],
      [95, 62, 31700],
      [95, 67, 34900],
    ],
    basis: 'net',
    blowerInside: 300,
    blowerHere: 430,
    dryAirFlow: 0.652328,
    total: 8465.55,
    sensible: 7036.81,
    latent: 1428.74,
    condensate: 0.00056166,
    enteringWetBulb: 16.9704,
    expectedNet: 9486.91,
    ratio: 0.89234,
    uncertainty: 0.10258,
    contributions: {
      enteringDryBulb: 0.0450361,
      enteringHumidity: 0.0535676,
      leavingDryBulb: 0.0539831,
      leavingHumidity: 0.0326508,
      outdoorDryBulb: 0.00340826,
      airflow: 0.0404145,
    },
    dryBulbLimit: 0.5,
    humidityLimit: 0.03,
    airflowLimit: 0.07,
    outdoorLimit: 1.0,
    tolerance: 0.002,
  },
  {
    name: 'furnace with cased coil, 1609 m',
    pressure: 83437,
    entering: [76, 0.42],
    leaving: [56.5, 0.78],
    cfm: 1010,
    airflowAt: 'leaving',
    outdoor: 82,
    ratingRows: [
      [75, 59, 25100],
      [75, 63, 26900],
      [85, 59, 23800],
      [85, 63, 25500],
    ],
    basis: 'gross',
    blowerInside: 0,
    blowerHere: 390,
    dryAirFlow: 0.476301,
    total: 5953.3,
    sensible: 5279.49,
    latent: 673.813,
    condensate: 0.000264745,
    enteringWetBulb: 15.535,
    expectedNet: 6821.46,
    ratio: 0.872732,
    uncertainty: 0.12927,
    contributions: {
      enteringDryBulb: 0.0510967,
      enteringHumidity: 0.0728314,
      leavingDryBulb: 0.0604904,
      leavingHumidity: 0.0423484,
      outdoorDryBulb: 0.00328434,
      airflow: 0.057735,
    },
    dryBulbLimit: 0.5,
    humidityLimit: 0.03,
    airflowLimit: 0.1,
    outdoorLimit: 1.0,
    tolerance: 0.002,
  },
  {
    name: 'packaged unit, 300 m',
    pressure: 97773,
    entering: [79.5, 0.45],
    leaving: [59, 0.84],
    cfm: 1850,
    airflowAt: 'standard',
    outdoor: 101.5,
    ratingRows: [
      [95, 63, 56900],
      [95, 67, 61000],
      [105, 63, 53100],
      [105, 67, 57000],
    ],
    basis: 'net',
    blowerInside: 700,
    blowerHere: 880,
    dryAirFlow: 1.04893,
    total: 14276.9,
    sensible: 12228.0,
    latent: 2048.85,
    condensate: 0.000803947,
    enteringWetBulb: 18.0642,
    expectedNet: 16212.7,
    ratio: 0.880601,
    uncertainty: 0.071423,
    contributions: {
      enteringDryBulb: 0.028135,
      enteringHumidity: 0.0424439,
      leavingDryBulb: 0.0325486,
      leavingHumidity: 0.0240559,
      outdoorDryBulb: 0.00606747,
      airflow: 0.0288675,
    },
    dryBulbLimit: 0.3,
    humidityLimit: 0.02,
    airflowLimit: 0.05,
    outdoorLimit: 1.5,
    tolerance: 0.002,
  },
];
