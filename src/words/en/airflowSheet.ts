/** Words of the airflow sheet from its first moment: its methods and what it says before there is an answer. */
export const airflowSheet = {
  title: 'Find the airflow',
  ask: 'How did you get it?',
  notUsed: 'not used',
  counts: 'this one counts',
  nothing: 'Begin with one way that this job allows.',
  nothingLead: 'A second way is the best check of the first. Each of them says how good it is.',
} as const;

export const methodWords = {
  readout: {
    name: 'Control’s readout',
    term: '',
    lead: 'What the blower’s own control shows, and whether it senses that or only asks for it.',
  },
  fanTable: {
    name: 'Fan table',
    term: 'external static pressure',
    lead: 'The pressure on both sides of the rated unit, and the maker’s table for its blower.',
  },
  flowGrid: {
    name: 'Flow grid',
    term: 'metering plate',
    lead: 'A metering plate in the filter’s place, and the pressure before and after it went in.',
  },
  hood: {
    name: 'Hood at the returns',
    term: 'flow hood',
    lead: 'The flow through every return grille, one after the other.',
  },
  traverse: {
    name: 'Traverse of a duct',
    term: '',
    lead: 'Velocities at set points across one section of duct.',
  },
  temperatureRise: {
    name: 'Temperature rise',
    term: 'with heat on',
    lead: 'A known heat, and how much warmer it makes the air.',
  },
  pressureMatch: {
    name: 'Pressure matching',
    term: 'calibrated fan',
    lead: 'A calibrated fan in the place of the return brings the supply to the same pressure.',
  },
  grille: {
    name: 'Vane at a grille',
    term: '',
    lead: 'The weakest way: a velocity over the face of a grille, times an area factor.',
  },
} as const;
