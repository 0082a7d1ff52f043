/** Words of the air chart's worksheet. What stands on the chart itself is in `moistAirChart.ts`. */
export const airChart = {
  title: 'Air chart',
  description:
    'A moist-air chart for the pressure of your job: move points, read the air anywhere, work out heating, cooling, drying and mixing.',
  noScript: 'This chart moves with a script, and scripts are switched off. Charts to print, without one, stand under',
  blank: 'Blank charts to print',
  pressure: (pressure: string) => `Moist air at ${pressure}`,
  seaLevel: 'sea level (assumed)',
  height: (height: string) => `${height} above the sea`,
  station: 'barometer on the spot',
  chartName: 'Moist-air chart: dry bulb across, water in the air up',
  nothing: 'No points yet. Type the return air, or add a state.',
  at: (name: string, air: string) => `${name} ${air}`,
  view: { whole: 'Whole chart', process: 'Close-up' },
  lines: 'Lines',
  families: {
    saturation: 'Saturation',
    relativeHumidity: 'Humidity',
    wetBulb: 'Wet bulb',
    enthalpy: 'Enthalpy',
    specificVolume: 'Volume',
    grid: 'Grid',
  },
  heightFold: 'Height and pressure',
  pressureStays: (low: string, high: string) =>
    `This chart goes from ${low} to ${high}. It stays as it was until the height or the barometer fits.`,
  move: 'Drag it, or use the arrow keys: left and right for the temperature, up and down for the humidity.',
  pointRole: 'point on the chart',
  mean: (count: number) => `The mean of ${count} readings. Change them on the sheet.`,
  points: 'Points',
  processes: 'Processes',
} as const;

export const stateWords = {
  return: 'Return air',
  supply: 'Supply air',
  state: (code: string) => `State ${code}`,
  empty: 'not typed yet',
  check: 'check it',
  add: 'Add a state',
  full: 'Eight states: there is no room for another.',
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

export const processWords = {
  job: 'Return to supply',
  jobSay: 'The job’s own process, with its airflow.',
  add: 'Add a process',
  full: 'Eight processes: there is no room for another.',
  name: (number: string) => `Process ${number}`,
  kinds: {
    drying: 'Cooling with drying',
    cooling: 'Cooling, no water',
    heating: 'Heating, no water',
    mixing: 'Mixing two streams',
  },
  endNames: { drying: 'End', cooling: 'Cooled air', heating: 'Heated air', mixing: 'Mixed air' },
  kind: 'What happens',
  from: 'From',
  with: 'With',
  to: 'To',
  choose: 'Choose a point',
  endDryBulb: 'To this temperature',
  airflow: 'Airflow',
  firstAirflow: 'Airflow of the first',
  secondAirflow: 'Airflow of the second',
  remove: (name: string) => `Remove ${name}`,
  line: (from: string, to: string) => `${from} to ${to}`,
  mixed: (from: string, other: string) => `${from} with ${other}`,
  total: { drying: 'Total cooling', cooling: 'Total cooling', heating: 'Total heating', mixing: '' },
  sensible: 'of it sensible',
  latent: 'of it latent',
  none: 'none',
  condensate: 'Water taken out',
  condensateHeat: 'Enthalpy of that water, not taken off',
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
  waitingPoint: 'not yet',
  check: 'check it',
  flowHint: 'Air as it moves where it begins; or dry air by mass, such as 5000 lb/h or 0.6 kg/s.',
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

export const readingWords = {
  title: 'The air there',
  under: 'Under the cross-hair',
  hint: 'Point at the chart, tap it, or type a place below.',
  fold: 'Read a place by its figures',
  crossName: 'Cross-hair',
  away: 'put away; an arrow key brings it out',
  dryBulb: 'Temperature there',
  humidity: 'Humidity there',
  properties: {
    dryBulb: 'Temperature',
    wetBulb: 'Wet bulb',
    dewPoint: 'Dew point',
    relativeHumidity: 'Humidity',
    humidityRatio: 'Water',
    enthalpy: 'Enthalpy',
    specificVolume: 'Volume',
    vaporPressure: 'Vapour pressure',
  },
  terms: {
    dryBulb: 'dry bulb',
    relativeHumidity: 'relative',
    humidityRatio: 'humidity ratio',
    enthalpy: 'of dry air',
    specificVolume: 'of dry air',
  },
  clear: 'Put the cross-hair away',
} as const;

export const tableWords = {
  fold: 'Table of the points',
  caption: (pressure: string) => `The points of the chart at ${pressure}`,
  point: 'Point',
} as const;
