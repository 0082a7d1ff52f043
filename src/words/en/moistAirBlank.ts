/** Words of the charts to print. */
export const blank = {
  title: 'Blank charts to print',
  description:
    'Moist-air charts to write on: in °F or °C, for sea level, 1,600\u00a0m and 2,500\u00a0m. One to a sheet, across.',
  say: 'One chart to a sheet of Letter or A4, across. Draw the process by hand, then check it on the chart that moves.',
  back: 'The chart that moves',
  print: 'Open one and print it: everything but the chart stays off the paper.',
  paper: 'Print this page: the chart comes out across a sheet of its own.',
  systems: { ip: '°F, grains a pound', si: '°C, grams a kilogram' },
  heights: { 0: 'sea level', 1600: '1,600\u00a0m (5,250\u00a0ft)', 2500: '2,500\u00a0m (8,200\u00a0ft)' },
  chart: (system: string, height: string) => `${system}, at ${height}`,
  pressure: (pressure: string) => `${pressure}, by the standard atmosphere.`,
  chartTitle: (system: string, height: string) => `Blank air chart, ${height}, ${system}`,
  chartDescription: (system: string, height: string, pressure: string) =>
    `A moist-air chart to write on, for ${height} (${pressure}), in ${system}.`,
  name: (height: string, pressure: string) => `Moist-air chart for ${height} (${pressure}), without points`,
  head: (height: string, pressure: string) => `Moist air at ${pressure}, ${height} (standard atmosphere)`,
} as const;
