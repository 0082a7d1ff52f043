/** What stands on the buttons of every choice, under the key of the table of choices. */
import type { ChoiceKey } from '../../job/types.ts';
import type { airflowChoiceWords } from './airflowChoices.ts';
import type { ductChoiceWords } from './ducts.ts';
import type { identityChoiceWords } from './identityChoices.ts';
import type { lineSetChoiceWords } from './lineSetChoices.ts';
import type { ReadReportChoiceWords } from './readReport.ts';
import type { sureChoiceWords } from './sureFields.ts';

export interface ChoiceWords {
  readonly ask: string;
  readonly options: Readonly<Record<string, string>>;
}

const ofEverySheet = {
  humidityAs: {
    ask: 'What do the probes show?',
    options: { relativeHumidity: 'Humidity', wetBulb: 'Wet bulb' },
  },
  'airflow.method': {
    ask: 'How did you get it?',
    options: {
      readout: 'Control’s readout',
      fanTable: 'Fan table and static pressure',
      flowGrid: 'Flow grid',
      hood: 'Hood at the returns',
      traverse: 'Traverse, Pitot or vane',
      hotWireTraverse: 'Traverse, hot-wire',
      temperatureRise: 'Temperature rise',
      unsure: 'Not sure',
    },
  },
  'airflow.place': {
    ask: 'Where does this airflow hold?',
    options: { entering: 'At the return', leaving: 'At the supply', unsure: 'Not sure' },
  },
  'airflow.kind': {
    ask: 'Which kind of airflow (actual or standard)?',
    options: { actual: 'As it moves', standard: 'As standard air', unsure: 'Not sure' },
  },
  fullSpeed: {
    ask: 'Is it at full speed?',
    options: {
      oneSpeed: 'Yes, one speed',
      highStage: 'Yes, high stage',
      held: 'Yes, held in test mode',
      unsure: 'No or not sure',
    },
  },
  'rating.from': {
    ask: 'What do you have of its rating?',
    options: { cells: 'The table: some cells', sheet: 'The table: all of it', generic: 'Only the certified capacity' },
  },
  'rating.series': {
    ask: 'Wet-bulb rows in your table',
    options: {
      '57': '57 62 67 72 °F',
      '59': '59 63 67 71 °F',
      '15': '15 17 19 21 23 °C',
      '14': '14 16 18 19 20 22 24 °C',
      other: 'Other',
    },
  },
  'rating.basis': {
    ask: 'Is the blower’s heat already taken off?',
    options: { net: 'Yes (net)', gross: 'No (gross)', unsure: 'It doesn’t say' },
  },
  'rating.era': {
    ask: 'Which rating is on the label?',
    options: { seer: 'SEER', seer2: 'SEER2', unsure: 'Not sure' },
  },
  'rating.unit': {
    ask: 'The table is printed in',
    options: { btuh: 'Btu/h or MBh', kw: 'kW', ton: 'tons' },
  },
  'equipment.kind': {
    ask: 'What kind of equipment?',
    options: {
      airHandler: 'Air handler',
      furnaceCoil: 'Furnace with cased coil',
      packaged: 'Packaged unit',
      ductedMiniSplit: 'Ducted mini-split',
    },
  },
  'equipment.stages': {
    ask: 'How many stages does it have?',
    options: { one: 'One', two: 'Two', variable: 'Variable speed' },
  },
  'equipment.heatPump': { ask: 'Is it a heat pump?', options: { yes: 'Yes', no: 'No, cooling only' } },
  'blower.motor': {
    ask: 'What motor drives it?',
    options: { permanentSplit: 'An ordinary one (PSC)', electronic: 'An electronic one (ECM)', unsure: 'Not sure' },
  },
  'blower.place': {
    ask: 'Where is the blower?',
    options: {
      'after coil': 'After the coil',
      'before coil': 'Before the coil',
      'outside probes': 'Not between the probes',
    },
  },
  'stage.heldBy': {
    ask: 'How is it held at full speed?',
    options: { thermostat: 'Thermostat', testMode: 'Test mode', serviceTool: 'Service tool', other: 'Other' },
  },
  sideBySide: {
    ask: 'Did you check the two probes side by side today?',
    options: { yes: 'Yes, type the difference', no: 'No', unsure: 'Not sure' },
  },
} as const satisfies Partial<Record<ChoiceKey, ChoiceWords>>;

/** Those that only one part of a sheet asks join where they are asked: see `joinAirflow.ts` and `joinSure.ts`. */
export const choiceWords = { ...ofEverySheet } as typeof ofEverySheet &
  typeof airflowChoiceWords &
  typeof ductChoiceWords &
  typeof identityChoiceWords &
  typeof lineSetChoiceWords &
  ReadReportChoiceWords &
  typeof sureChoiceWords;

/** The choices that are asked with a question of their own; the others are keys beside what they change. */
export type AskedChoice = keyof typeof choiceWords;
