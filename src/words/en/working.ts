import { airflowSteps } from './airflowWorking.ts';

/** What each step of working is called, under its id. Steps of a state of air carry the name of the air before their own. */
const names: Readonly<Record<string, string>> = {
  ...airflowSteps,
  standardPressure: 'Pressure at this height',
  'moistAir.saturationPressure': 'saturation pressure',
  'moistAir.enhancementFactor': 'enhancement factor of real air',
  'moistAir.humidityRatio': 'humidity ratio',
  'moistAir.saturatedHumidityRatio': 'humidity ratio at the wet bulb, saturated',
  'moistAir.enthalpy': 'enthalpy',
  'moistAir.specificVolume': 'volume of a kilogram of dry air',
  'moistAir.wetBulb': 'wet bulb',
  'moistAir.dewPoint': 'dew point',
  'dryAirFlow.actual': 'Dry air, from actual airflow',
  'dryAirFlow.standard': 'Dry air, from standard airflow',
  'dryAirFlow.middle': 'Dry air, the middle of what it may be',
  'mix.dryAirFlow': 'Dry air of both streams',
  'mix.humidityRatio': 'Humidity ratio of the mixture',
  'mix.enthalpy': 'Enthalpy of the mixture',
  'mix.dryBulb': 'Temperature of the mixture',
  blowerHeat: 'Heat of the blower',
  'blowerHeat.default': 'Blower power by default',
  'coilLoad.total': 'Total',
  'coilLoad.sensible': 'Sensible',
  'coilLoad.latent': 'Latent',
  'coilLoad.sensibleHeatRatio': 'Sensible heat ratio',
  'coilLoad.condensate': 'Water taken out',
  'coilLoad.condensateEnthalpy': 'Enthalpy of that water (not taken off)',
  'apparatus.leavingCoil': 'Air leaving the coil, before the blower',
  'apparatus.enteringCoil': 'Air entering the coil, after the blower',
  'apparatus.dewPoint': 'Coil temperature (apparatus dew point)',
  'apparatus.bypassFactor': 'Air that misses the coil (bypass factor)',
  'rated.total': 'Read from the table',
  'rated.share.outdoorDryBulb': 'Place between the columns',
  'rated.share.enteringWetBulb': 'Place between the rows',
  'rated.share.enteringDryBulb': 'Place between the dry bulbs',
  'rated.share.dryAirFlow': 'Place between the airflows',
  'lineSet.massFlow': 'Refrigerant in circulation',
  'lineSet.velocity': 'Velocity',
  'lineSet.reynolds': 'Reynolds number',
  'lineSet.frictionFactor': 'Friction factor',
  'lineSet.friction': 'Drop by friction',
  'lineSet.vaporPressure': 'Pressure at the compressor',
  'lineSet.dewDrop': 'Fall of the dew point',
  'lineSet.density': 'Density at the compressor',
  'lineSet.liquidPressure': 'Pressure at the metering device',
  'lineSet.subcoolingLeft': 'Subcooling left',
  'lineSet.factor': 'Share of the capacity that is left',
  'expectation.flowRatio': 'This airflow over the block’s, by mass',
  'expectation.airflow': 'Brought to this airflow',
  'expectation.seaLevelFlow': 'The measured volume as if at sea level',
  'dryOut.surface': 'Surface of the coil when it is dry',
  'dryOut.wetBulb': 'Wet bulb at which it turns dry',
  'expectation.dryCoil': 'With the coil as dry as it is here',
  'expectation.indoorMatch': 'With this indoor unit',
  'expectation.lineSet': 'Behind this line set',
  'expectation.altitude': 'In the thinner air here',
  'expectation.gross': 'Expected, gross',
  'expectation.net': 'Expected, net',
  'ductGain.supply': 'Difference left at the end of the supply (R in m²·K/W)',
  'ductGain.return': 'Difference left at the end of the return (R in m²·K/W)',
  'ductGain.effectiveness': 'Share that reaches the rooms',
  'ductGain.regain': 'The same, with what the rooms get back',
  'ratio.measured': 'Measured, net',
  ratio: 'Share of what it should make',
  'uncertainty.limit': 'Limit as a standard uncertainty',
  'uncertainty.combined': 'Standard uncertainty',
  'uncertainty.low': 'Low end of the range',
  'uncertainty.high': 'High end of the range',
};

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** What comes before the name of a step that is worked out for one of several airflows or blowers. */
const prefixes: Readonly<Record<string, string>> = {
  entering: 'at the return',
  leaving: 'at the supply',
  standard: 'as standard air',
  rating: 'in the rating',
  first: 'of the first stream',
  second: 'of the second stream',
  end: 'at the end',
  lineRated: 'in the line of the rating',
  lineLiquid: 'in the liquid line',
};

export const workingGroups = {
  entering: 'Return air',
  leaving: 'Supply air',
  measured: 'What it makes',
  expected: 'What it should make',
  ratio: 'The share',
} as const;

export type WorkingGroup = keyof typeof workingGroups;

/** Under which heading a step stands, by the beginnings of its id; the longer one first. */
const groups: readonly (readonly [string, WorkingGroup])[] = [
  ['entering.moistAir', 'entering'],
  ['leaving.moistAir', 'leaving'],
  ['rating.', 'expected'],
  ['rated.', 'expected'],
  ['expectation.', 'expected'],
  ['dryOut.', 'expected'],
  ['line', 'expected'],
  ['ratio', 'ratio'],
];

export const workingGroup = (id: string): WorkingGroup =>
  groups.find(([start]) => id.startsWith(start))?.[1] ?? 'measured';

/** The name of a step; an id without a name of its own is spelled out, so that nothing is hidden. */
export function stepWords(id: string): string {
  const [first = '', ...others] = id.split('.');
  const prefix = names[id] === undefined ? prefixes[first] : undefined;
  const own = prefix ? others.join('.') : id;
  const name = capital(
    names[own] ?? own.replace(/\./g, ': ').replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`),
  );
  return prefix && !own.startsWith('moistAir') ? `${name}, ${prefix}` : name;
}
