/** Words on the moist-air chart and about it. */
export const moistAirChart = {
  title: 'Air chart',
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
