/** The picture of the factor 4.5 at any height. Its figure is 4.5 in pounds an hour for a cfm, 4.3 in kilograms an hour for a litre a second. */
export const tryHeight = {
  caption:
    'Return air at 75\u00a0°F (24\u00a0°C) and 50\u00a0%. The level line is the factor that habit takes everywhere, the curve the air that is there. Invented readings.',
  height: 'Height above sea level',
  heightAxis: (unit: string) => `height, ${unit}`,
  factor: { ip: 'dry air that a cfm carries, lb/h', si: 'dry air that a L/s carries, kg/h' },
  habit: (factor: string) => `habit: ${factor}`,
  off: (share: string) => `${share} too much`,
  table: 'The factor and what it costs at this height',
  rows: { habit: 'By habit', here: 'At this height', off: 'The habit reads the cooling high by' },
  said: (height: string, habit: string, here: string, off: string) =>
    `At ${height} the factor ${habit} should be ${here}; with it and a chart for sea level the cooling reads ${off} high.`,
} as const;
