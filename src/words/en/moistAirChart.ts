/** Words on the moist-air chart and about it. */
export const moistAirChart = {
  dryBulbAxis: { ip: 'dry bulb, °F', si: 'dry bulb, °C' },
  humidityRatioAxis: { ip: 'grains of water a pound of dry air', si: 'grams of water a kilogram of dry air' },
  saturation: 'saturation',
  relativeHumidity: 'relative humidity',
  wetBulb: 'wet bulb',
  enthalpy: 'enthalpy',
  specificVolume: 'specific volume',
  returnAir: 'Return air',
  supplyAir: 'Supply air',
  coil: 'Coil',
  apparatusDewPoint: '(apparatus dew point)',
  sensible: { name: 'cooling (sensible)', short: 'cooling' },
  latent: { name: 'drying (latent)', short: 'drying' },
  bypass: { name: 'bypass factor', short: 'bypass' },
  blower: 'blower',
} as const;

/** The chart told in sentences. */
export const chartSentences = {
  chart: (pressure: string) => `Air chart for ${pressure}: dry bulb across, water in the air up.`,
  state: (name: string, text: string) => `${name}: ${text}.`,
  change: (temperature: string, cooler: boolean, water: string, drier: boolean) =>
    `On the way the air gets ${temperature} ${cooler ? 'cooler' : 'warmer'} and ${water} ${drier ? 'drier' : 'damper'}.`,
  load: (sensible: string, latent: string) =>
    `That is ${sensible} of cooling (sensible) and ${latent} of drying (latent).`,
  coil: (temperature: string, bypassFactor: string) =>
    `Carried on, the coil’s line meets saturation at ${temperature} (apparatus dew point); the bypass factor is ${bypassFactor}.`,
} as const;
