/** Words inside the steps and folds of the air chart's worksheet. */
export const pointWords = {
  move: 'Drag it, or use the arrow keys: left and right for the temperature, up and down for the humidity.',
  mean: (count: number) => `The mean of ${count} readings. Change them on the sheet.`,
  name: 'Name',
  giveAs: 'Give its humidity as',
  remove: (name: string) => `Remove ${name}`,
  measures: {
    relativeHumidity: 'Humidity',
    wetBulb: 'Wet bulb',
    dewPoint: 'Dew point',
    humidityRatio: 'Water in the air',
  },
} as const;

export const heightWords = {
  stays: (low: string, high: string) =>
    `This chart goes from ${low} to ${high}. It stays as it was until the height or the barometer fits.`,
} as const;

export const readHere = { dryBulb: 'Temperature there', humidity: 'Humidity there' } as const;

/** Air that cannot be, under the code of the calculation or of the reading of the states. */
export const airProblems: Readonly<Record<string, (limit: string) => string>> = {
  wetBulbAboveDryBulb: () => 'A wet bulb cannot stand above the temperature. Look whether the two are exchanged.',
  wetBulbTooLow: () => 'So low a wet bulb is lower than that of perfectly dry air.',
  dewPointAboveDryBulb: () => 'A dew point cannot stand above the temperature.',
  aboveSaturation: (limit) => `That is more water than air can hold at this temperature: ${limit} at most.`,
  beyondEquations: () => 'That is more water than these equations cover.',
  outOfRange: () => 'That is beyond what the equations cover.',
  twoHumidities: () => 'Two measures of humidity are given. Keep one.',
};
/** Said after a problem of a point: where the point is gone to. */
export const notDrawn = 'It is not on the chart.';

export const processSteps = {
  job: 'Return to supply',
  jobSay: 'The job’s own process, with its airflow.',
  name: (number: string) => `Process ${number}`,
  kind: 'What happens',
  from: 'From',
  with: 'With',
  to: 'To',
  choose: 'Choose a point',
  endDryBulb: 'To this temperature',
  airflow: 'Airflow',
  firstAirflow: 'Airflow of the first',
  secondAirflow: 'Airflow of the second',
  flowHint: 'Air as it moves where it begins; or dry air by mass, such as 5000\u00a0lb/h or 0.6\u00a0kg/s.',
  remove: (name: string) => `Remove ${name}`,
  total: { drying: 'Total cooling', cooling: 'Total cooling', heating: 'Total heating', mixing: '' },
  sensible: 'of it sensible',
  latent: 'of it latent',
  none: 'none',
  condensate: 'Water taken out',
  condensateHeat: 'Enthalpy of that water, not taken off',
  apparatus: 'Coil (apparatus dew point)',
  bypass: 'Air that misses it (bypass factor)',
  dryAir: 'Dry air',
  share: (name: string) => `Share of ${name}`,
  adiabatic: 'No heat in or out. By dry air:',
  mixedDryBulb: 'Mixture, temperature',
  mixedWetBulb: 'Mixture, wet bulb',
  mixedHumidity: 'Mixture, humidity',
  typeAirflow: 'Type an airflow and the loads stand here.',
  loads: (name: string) => `Loads of ${name}`,
  working: 'The working',
  waiting: {
    from: 'Choose where it begins.',
    with: 'Choose the second stream.',
    to: 'Choose where it ends.',
    endDryBulb: 'Type the temperature at the end.',
    airflow: 'Type the airflow of the first stream.',
    secondAirflow: 'Type the airflow of the second stream.',
  },
} as const;

/** Why a process cannot be, under the code of `job/processes.ts`; `limit` is what the end may be. */
export const processProblems: Readonly<Record<string, (limit: string) => string>> = {
  samePoint: () => 'It begins and ends in one point. Choose two.',
  wetter: () => 'The end holds more water than the beginning, and nothing here adds water.',
  notCooled: (limit) => `Cooling ends below where it begins, ${limit}.`,
  notHeated: (limit) => `Heating ends above where it begins, ${limit}.`,
  belowDewPoint: (limit) =>
    `Below its dew point, ${limit}, water comes out of the air. Choose “Cooling with drying”, or stop above it.`,
  fogged: () => 'This mixture would be fog: more water than the mixed air can hold.',
  outOfRange: () => 'That is beyond what the equations cover.',
};

export const tableWords = {
  fold: 'Table of points and processes',
  caption: (pressure: string) => `The points of the chart at ${pressure}`,
  point: 'Point',
  processes: 'The processes of the chart',
  process: 'Process',
  way: (starts: readonly string[], end: string) => `${starts.join(' and ')} to ${end}`,
  loads: { total: 'Total', sensible: 'Sensible', latent: 'Latent', condensate: 'Water out' },
} as const;
