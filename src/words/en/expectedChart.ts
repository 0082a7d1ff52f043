/** Words on the drawings of what a table says, and the units of their figures. */
export const surfaceScales = {
  total: { ip: '1,000\u00a0Btu/h', si: 'kW' },
  sensible: { ip: '1,000\u00a0Btu/h', si: 'kW' },
  ratio: { ip: '%', si: '%' },
  power: { ip: 'kW', si: 'kW' },
  efficiency: { ip: 'Btu/h per W', si: 'W per W' },
} as const;

export const surfaceWords = {
  outdoors: { ip: 'outdoors, °F', si: 'outdoors, °C' },
  wetBulb: { ip: 'entering wet bulb, °F', si: 'entering wet bulb, °C' },
  contours: (unit: string) => `contours: ${unit}`,
  outside: 'not in the table',
  tried: (amount: string) => `tried out, ${amount}`,
  jobHere: (amount: string) => `here and now, ${amount}`,
  cell: { 1: 'on a printed figure', 2: 'between two figures', 4: 'between four figures', 8: 'between eight figures' },
  cellMany: 'between sixteen figures',
} as const;

export const sliceWords = {
  measured: (amount: string) => `measured ${amount}`,
} as const;

export const valueScaleWords = {
  table: (amount: string) => `in the table ${amount}`,
  curves: (amount: string) => `by the curves ${amount}`,
  should: (amount: string) => `should make ${amount}`,
  measured: (amount: string) => `measured ${amount}`,
  between: (low: string, high: string) => `between ${low} and ${high}`,
} as const;
