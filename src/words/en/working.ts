/** What each step of working is called, under its id. Steps of a state of air carry the name of the air before their own. */
const airs: Readonly<Record<string, string>> = { entering: 'Return air', leaving: 'Supply air' };

const names: Readonly<Record<string, string>> = {
  'moistAir.enhancement': 'enhancement factor of real air',
  'moistAir.saturationPressure': 'saturation pressure',
  'moistAir.humidityRatio': 'humidity ratio',
  'moistAir.enthalpy': 'enthalpy',
  'moistAir.specificVolume': 'volume',
  'moistAir.wetBulb': 'wet bulb',
  'moistAir.dewPoint': 'dew point',
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
  'expectation.gross': 'Expected, gross',
  'expectation.net': 'Expected, net',
  'expectation.airflow': 'Brought to this airflow',
};

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** The name of a step; an id without a name of its own is spelled out, so that nothing is hidden. */
export function stepWords(id: string): string {
  const [first = '', ...others] = id.split('.');
  const air = airs[first];
  const own = air ? others.join('.') : id;
  const name = names[own] ?? own.replace(/\./g, ': ').replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
  return air ? `${air}, ${name}` : capital(name);
}
