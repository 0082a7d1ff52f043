/** Words of the sheet on long lines that it needs from its first moment: its steps, its bar, the sentences of its answer. */
import type { LineNeed } from '../../job/lineSet.ts';

export const lineSheet = {
  title: 'Long lines',
  description:
    'What a long, narrow or lifted refrigerant line costs: capacity lost in the vapour line as a band, subcooling left at the metering device, oil return.',
  noScript:
    'This sheet works its figures out in your browser, and scripts are switched off. The maker’s table for long lines outranks it anyway.',
  tubeOpen: 'Choose one',
  asInstalled: 'The same as installed',
  ratedTube: 'Vapour tube that the rating names',
  vaporTube: 'Vapour tube (suction), by its trade name',
  liquidTube: 'Liquid tube',
  tube: (name: string, millimetres: string) => `${name} in (${millimetres})`,
  tubeAssumed: (name: string) => `Until you say: ${name} (common practice).`,
  ratedAssumed: 'Until you say, the rating is taken to be for the tube that is installed.',
  bore: (vapor: string, liquid: string) => `Inside: vapour ${vapor}, liquid ${liquid} (ASTM B280).`,
  meteringAssumed: { indoors: 'Taken to be at the indoor coil.', outdoors: 'Taken to be in the outdoor unit.' },
  notNeeded: 'Not asked for a packaged unit.',
  licensed: 'Opening the circuit, brazing and charging are for licensed people.',
} as const;

export const lineSteps = {
  lineSystem: { name: 'The system', term: '', lead: '' },
  lineTubes: { name: 'The tubes', term: '', lead: 'Sizes are trade names: the outside, in inches.' },
  lineLengths: { name: 'Length and lift', term: '', lead: '' },
  lineMaker: {
    name: 'What the maker says',
    term: '',
    lead: 'The maker’s own correction and limits for long lines outrank everything here.',
  },
  lineRunning: {
    name: 'While it runs',
    term: 'pressures and temperatures',
    lead: 'Good guesses stand in for these until somebody licensed reads them.',
  },
} as const;

export const lineNeeds: Readonly<Record<LineNeed, string>> = {
  refrigerant: 'refrigerant',
  nominalCapacity: 'nameplate size',
  'lineSet.vaporTube': 'vapour tube',
  'lineSet.length': 'length of the lines',
};

export const lineBar = {
  start: 'Start with the system',
  fourFigures: 'four figures give the first answer',
  notSaid: 'not said yet',
  nothingSaid: 'nothing said',
  assumed: 'assumed',
  above: (height: string) => `coil ${height} above`,
  below: (height: string) => `coil ${height} below`,
  left: 'of the capacity is left',
  between: (low: string, high: string) => `between ${low} and ${high}`,
  byMaker: 'by the maker’s figure',
  beyond: 'No figure',
  beyondSmall: 'beyond what the maker allows',
  refused: 'Not worked out here',
  reasons: {
    packaged: 'a packaged unit has no lines on site',
    meteringOutdoors: 'metering device in the outdoor unit',
  },
  cannot: 'Check the lines',
  cannotSmall: 'no vapour gets through so',
} as const;

export const lineAnswer = {
  nothing: 'Nothing to tell yet.',
  needs: (needs: string) => `Still needed: ${needs}.`,
  leaves: (share: string) => `These lines leave ${share} of the capacity.`,
  band: (low: string, high: string, length: string, tube: string) =>
    `Between ${low} and ${high}, against ${length} of ${tube} in vapour tube, as the rating has it.`,
  loses: (power: string, of: string) => `About ${power} of ${of} is lost.`,
  gains: (power: string, of: string) => `About ${power} is gained on ${of}.`,
  same: 'That is as good as nothing.',
  maker: 'By the maker’s own figure, which outranks what is worked out here.',
  beyond: 'No figure stands beyond what the maker allows.',
  beyondLength: (length: string, most: string) => `The lines are ${length} long, and the maker allows ${most}.`,
  beyondLift: (lift: string, most: string) => `The lift is ${lift}, and the maker allows ${most}.`,
  refused: 'Here only the maker can say.',
  packaged:
    'A packaged unit leaves the factory with its circuit closed: there are no lines on site, and nothing is lost in them.',
  meteringOutdoors:
    'The metering device stands in the outdoor unit, so the thinner line carries boiling refrigerant to the coil. Nothing here holds for such a line: take the maker’s correction for its length.',
  cannot: 'So much cannot flow through such lines.',
  cannotCodes: {
    vaporDrop:
      'The vapour tube is too narrow, or too long, for this capacity. Look at the sizes and at the unit of the length.',
    length: 'The lines cannot be shorter than what they climb. Look at the length and at the lift.',
    refrigerantPressure:
      'The liquid would lose more pressure than it has. Look at the liquid tube, the length and the lift.',
    other: 'Together these figures are beyond what the tables of the refrigerant hold. Read them again.',
  },
} as const;
