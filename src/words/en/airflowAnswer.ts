/** The answer of the airflow sheet. */
export const airflowAnswer = {
  choose: 'Which figure counts?',
  chooseLead: 'There are several answers. Choose one, or all that are evidence together.',
  which: 'Which figure counts?',
  option: (name: string, flow: string) => `${name}: ${flow}`,
  together: 'Together',
  moves: (flow: string) => `It moves ${flow}.`,
  counted: (standard: boolean, range: string, by: string) =>
    `${standard ? 'Standard air' : 'Air as it moves there'}, ${range} nineteen times in twenty, by ${by}.`,
  asStandard: (flow: string) => `As standard air: ${flow}.`,
  ways: 'The same air, counted in other ways',
  waysLead:
    'A figure without its place and kind is another airflow. The last column says how far off the cooling would be.',
  sameAir: 'the same air',
  takenFor: 'figure taken for it',
  wayNames: {
    standard: 'As standard air',
    entering: 'As it moves in the return',
    leaving: 'As it moves in the supply',
  },
  asGiven: 'as found',
  airAssumed:
    'The probes have not read both airs yet: usual air stands in, 75\u00a0°F and 50\u00a0% in the return, 56\u00a0°F and 90\u00a0% in the supply (common practice, no source).',
  useFound: 'Use it on the capacity sheet',
  useTyped: 'Use the typed figure there instead',
  isUsed: 'The capacity sheet counts this figure. The one typed there is kept beside it.',
  isNotUsed: 'The capacity sheet still counts the figure typed there; it is kept, whatever is chosen here.',
  toSheet: 'To the capacity sheet',
} as const;
