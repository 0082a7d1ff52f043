/** Words of the questions at the air chart. Nothing here may give an answer away before “Show”. */
export const lesson = {
  leave: 'Back to my points',
  air: (dryBulb: string, humidity: string) => `${dryBulb} and ${humidity}`,
  ask: {
    wetBulb: (air: string) => `This air is at ${air}. What is its wet bulb?`,
    heating: (air: string, end: string) =>
      `Air at ${air} is heated to ${end}, and no water is added. What is its humidity then?`,
    mixing: (share: string, outdoors: string, room: string) =>
      `${share} outdoor air (${outdoors}) is mixed with return air (${room}). Where is the mixed air?`,
    lessAir: (share: string) =>
      `The coil cools return air to this supply air. The filter clogs, and ${share} of the airflow is left. Where does the supply air go?`,
  },
  say: {
    figure: 'Type what you think.',
    place: 'Tap the chart where you think it is, or type it.',
  },
  guess: { dryBulb: 'Your temperature', relativeHumidity: 'Your humidity', wetBulb: 'Your wet bulb' },
  givenNames: {
    wetBulb: ['This air'],
    heating: ['Before'],
    mixing: ['Outdoor air', 'Return air'],
    lessAir: ['Return air', 'Supply air before'],
  },
  resultNames: { wetBulb: 'Its wet bulb', heating: 'After', mixing: 'Mixed air', lessAir: 'Supply air now' },
  why: {
    wetBulb:
      'A wet thermometer gives off heat until it is as cold as this air can make it: follow the wet-bulb line up to saturation.',
    heating:
      'The water stays, and warm air can hold more of it: straight to the right, the lines of humidity are crossed downwards.',
    mixing:
      'A mixture lies on the straight line between its two streams, nearer to the larger one by their shares of dry air.',
    lessAir:
      'Slower air stays longer on the cold surface: it leaves colder and drier. The coil does a little less work in all (bypass factor with the flow as in EnergyPlus, capacity by a published flow curve).',
  },
} as const;
