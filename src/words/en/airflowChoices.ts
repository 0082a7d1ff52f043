/** What stands on the buttons where the airflow is found. */
import type { ChoiceWords } from './choices.ts';

const shownAs = {
  ask: 'What does it show?',
  options: {
    actual: 'Air as it moves (it was told the density)',
    standard: 'Standard air',
    uncorrected: 'Neither: it was told nothing',
  },
} as const;
const speed = {
  ask: 'Which speed did the blower run on?',
  options: { cooling: 'The cooling speed', other: 'Another', unsure: 'Not sure' },
} as const;

export const airflowChoiceWords = {
  'readout.shows': {
    ask: 'Does the control sense it, or only ask for it?',
    options: { sensed: 'Senses it', demanded: 'Asks for it', unsure: 'Not sure' },
  },
  'readout.speed': speed,
  'fanTable.speed': speed,
  'fanTable.motor': {
    ask: 'What kind of motor?',
    options: { fixedSpeed: 'Fixed speeds', constantAirflow: 'Holds its airflow', unsure: 'Not sure' },
  },
  'traverse.speed': speed,
  'traverse.shape': { ask: 'The duct is', options: { rectangular: 'Rectangular', round: 'Round' } },
  'traverse.instrument': {
    ask: 'Read with',
    options: {
      pitot: 'Pitot tube',
      vane: 'Vane',
      thermal: 'Hot wire, standard air',
      thermalActual: 'Hot wire, corrected',
    },
  },
  'traverse.place': {
    ask: 'Which duct is it?',
    options: { entering: 'Return', leaving: 'Supply' },
  },
  'traverse.lines': {
    ask: 'How many holes? Open: as many as the rule has for this size',
    options: { '2': '2', '3': '3', '5': '5', '6': '6', '7': '7' },
  },
  'traverse.points': {
    ask: 'How many points in each?',
    options: { '5': '5', '6': '6', '7': '7', '8': '8', '10': '10' },
  },
  'traverse.behind': {
    ask: 'What stands before the straight duct?',
    options: { fan: 'The blower', other: 'A bend or branch', unsure: 'Not sure' },
  },
  'rise.heat': {
    ask: 'What makes the heat?',
    options: {
      single: 'Electric, single phase',
      three: 'Electric, three phases',
      power: 'Electric, power measured',
      fuel: 'Gas furnace',
    },
  },
  'rise.efficiencyFrom': {
    ask: 'Known from',
    options: { measured: 'Measured in the flue', annual: 'The label', guessed: 'A guess' },
  },
  'rise.probes': {
    ask: 'Supply points',
    options: { several: 'Several, shielded', one: 'One, shielded', inSight: 'Sees the heat' },
  },
  'rise.blowerBetween': { ask: 'Is the blower between the two probes?', options: { yes: 'Yes', no: 'No' } },
  'rise.speed': { ...speed, ask: 'Blower speed' },
  'flowGrid.speed': speed,
  'flowGrid.shownAs': shownAs,
  'match.speed': speed,
  'match.shownAs': shownAs,
  'hood.speed': speed,
  'hood.shownAs': shownAs,
  'hood.kind': {
    ask: 'What kind of hood?',
    options: { powered: 'With a fan of its own', compensated: 'Read twice, flap open and shut', plain: 'Plain' },
  },
  'hood.covers': { ask: 'Does it cover the whole grille?', options: { yes: 'Yes', no: 'No' } },
  'hood.tight': {
    ask: 'Are the return ducts tested or sealed?',
    options: { yes: 'Yes', no: 'No or not sure' },
  },
  'grille.speed': speed,
  'grille.factorFrom': {
    ask: 'Where is the area factor from?',
    options: { maker: 'The grille’s maker', traverse: 'A traverse here', guess: 'A guess' },
  },
} as const satisfies Record<string, ChoiceWords>;
