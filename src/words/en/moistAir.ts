/** Words of the air chart's worksheet that are seen at once. What stands on the chart itself is in `moistAirChart.ts`. */
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
  pointRole: 'point on the chart',
  points: 'Points',
  processes: 'Processes',
  heightFold: 'Height and pressure',
  takeFold: 'Take it away, bring it in',
  classFold: 'In class',
  classLead: 'A question at the chart: say first, then see. Guesses are kept nowhere.',
  classBegin: 'Ask a question',
} as const;

export const stateWords = {
  return: 'Return air',
  supply: 'Supply air',
  state: (code: string) => `State ${code}`,
  empty: 'not typed yet',
  check: 'check it',
  add: 'Add a state',
  full: 'Eight states: there is no room for another.',
} as const;

export const processWords = {
  job: 'Return to supply',
  add: 'Add a process',
  full: 'Eight processes: there is no room for another.',
  waiting: 'not yet',
  kinds: {
    drying: 'Cooling with drying',
    cooling: 'Cooling, no water',
    heating: 'Heating, no water',
    mixing: 'Mixing two streams',
  },
  endNames: { drying: 'End', cooling: 'Cooled air', heating: 'Heated air', mixing: 'Mixed air' },
} as const;

export const readingWords = {
  title: 'The air there',
  under: 'Under the cross-hair',
  hint: 'Point at the chart, tap it, or type a place below.',
  fold: 'Read a place by its figures',
  crossName: 'Cross-hair',
  away: 'put away; an arrow key brings it out',
  clear: 'Put the cross-hair away',
  properties: {
    dryBulb: 'Temperature',
    wetBulb: 'Wet bulb',
    dewPoint: 'Dew point',
    relativeHumidity: 'Humidity',
    humidityRatio: 'Water',
    enthalpy: 'Enthalpy',
    specificVolume: 'Volume',
    vaporPressure: 'Vapour',
  },
} as const;
