/** Words of the airflow sheet from its first moment: its methods and what it says before there is an answer. */
export const airflowSheet = {
  title: 'Find the airflow',
  ask: 'How did you get it?',
  notUsed: 'not used',
  counts: 'this one counts',
  use: 'Let this one count',
  line: (flow: string, low: string, high: string) => `${flow} (${low} to ${high})`,
  nothing: 'Begin with one way that this job allows.',
  nothingLead: 'A second way is the best check of the first. Each of them says how good it is.',
  between: (low: string, high: string) => `between ${low} and ${high}`,
} as const;

export const airflowBar = {
  start: 'Choose a way to find it',
  startSmall: 'a second way is the best check of the first',
  choose: 'Which figure counts?',
  answers: (count: number) => `${count} answers: choose one, or all together`,
  check: 'Check these figures',
  checkSmall: 'one by one they can be, together they cannot',
  by: (way: string) => `by ${way}`,
  together: 'several ways together',
} as const;

/** What a method waits for that is no field of its own, by the name of the grid. */
export const airflowNeeds: Readonly<Record<string, string>> = {
  fanTable: 'two rows of the fan table',
  'traverse.pressures': 'the readings',
  'traverse.velocities': 'the readings',
  'flowGrid.plates': 'the airflow on the plate',
  'hood.returns': 'the airflow at the grilles',
  grilles: 'size, factor and readings of every grille',
};

export const methodWords = {
  readout: {
    name: 'Control’s readout',
    inSentence: 'the control’s readout',
    term: '',
    lead: 'What the blower’s own control shows, and whether it senses that or only asks for it.',
  },
  fanTable: {
    name: 'Fan table',
    inSentence: 'the fan table',
    term: 'external static pressure',
    lead: 'The pressure on both sides of the rated unit, and the maker’s table for its blower.',
  },
  flowGrid: {
    name: 'Flow grid',
    inSentence: 'the flow grid',
    term: 'metering plate',
    lead: 'A metering plate in the filter’s place, and the pressure before and after it went in.',
  },
  hood: {
    name: 'Hood at the returns',
    inSentence: 'a hood at the returns',
    term: 'flow hood',
    lead: 'The flow through every return grille, one after the other.',
  },
  traverse: {
    name: 'Traverse of a duct',
    inSentence: 'a traverse of the duct',
    term: '',
    lead: 'Velocities at set points across one section of duct.',
  },
  temperatureRise: {
    name: 'Temperature rise',
    inSentence: 'the temperature rise',
    term: 'with heat on',
    lead: 'A known heat, and how much warmer it makes the air.',
  },
  pressureMatch: {
    name: 'Pressure matching',
    inSentence: 'pressure matching',
    term: 'calibrated fan',
    lead: 'A calibrated fan in the place of the return brings the supply to the same pressure.',
  },
  grille: {
    name: 'Vane at a grille',
    inSentence: 'a vane at the grilles',
    term: '',
    lead: 'The weakest way: a velocity over the face of a grille, times an area factor.',
  },
} as const;
