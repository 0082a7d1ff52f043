/** The answer of the airflow sheet. */
export const airflowAnswer = {
  notYet: 'No airflow yet.',
  notYetLead: 'Open one way above and type its figures.',
  choose: 'Which figure counts?',
  chooseLead: 'There are several answers. Choose one, or all that are evidence together.',
  together: 'Together',
  moves: (flow: string) => `It moves ${flow}.`,
  counted: (standard: boolean, sure: string) =>
    `Counted as ${standard ? 'standard air' : 'air as it moves there'}, ${sure} nineteen times in twenty.`,
  ways: 'The same air, counted in other ways',
  wayNames: {
    standard: 'As standard air',
    entering: 'As it moves in the return',
    leaving: 'As it moves in the supply',
  },
  asGiven: 'as found',
  mistaken: (share: string) => `${share} off if the figure were taken for it`,
  useFound: 'Use it on the capacity sheet',
  useTyped: 'Use the typed figure there instead',
  toSheet: 'To the capacity sheet',
} as const;
