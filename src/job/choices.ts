/**
 * What a person may choose. `assumed` is what an unanswered question counts as; without it an unanswered question stays open,
 * or follows from another answer: place and kind of the airflow from its method, place of the blower from the equipment.
 */
import type { Refrigerant } from '../calc/refrigerant.ts';
import type { Tube } from '../calc/tubes.ts';
import type { AirflowKind, AirflowPlace, BlowerPlace } from '../calc/types.ts';
import type { airflowChoices } from './airflow/choices.ts';
import type { ductChoices } from './ducts/choices.ts';
import type { readReportChoices } from './readReport/choices.ts';
import type { sureChoices } from './sure/choices.ts';
import type { Job } from './types.ts';

interface Choice {
  readonly values: readonly string[];
  readonly assumed?: string;
}

/** Tubes by their trade names, those that carry vapour and those that carry liquid in systems of this size. */
const vaporTubes = ['1/2', '5/8', '3/4', '7/8', '1-1/8', '1-3/8'] as const satisfies readonly Tube[];
const liquidTubes = ['1/4', '5/16', '3/8', '1/2', '5/8'] as const satisfies readonly Tube[];

export const choices = {
  /** Which figure counts on the capacity sheet: the one typed there, or the one found on the airflow sheet. */
  'airflow.from': { values: ['typed', 'found'], assumed: 'typed' },
  humidityAs: { values: ['relativeHumidity', 'wetBulb'], assumed: 'relativeHumidity' },
  'airflow.method': {
    values: ['readout', 'fanTable', 'flowGrid', 'hood', 'traverse', 'hotWireTraverse', 'temperatureRise', 'unsure'],
  },
  'airflow.place': { values: ['entering', 'leaving', 'unsure'] },
  'airflow.kind': { values: ['actual', 'standard', 'unsure'] },
  fullSpeed: { values: ['oneSpeed', 'highStage', 'held', 'unsure'] },
  'stage.heldBy': { values: ['thermostat', 'testMode', 'serviceTool', 'other'] },
  'equipment.kind': { values: ['airHandler', 'furnaceCoil', 'packaged', 'ductedMiniSplit'] },
  'equipment.stages': { values: ['one', 'two', 'variable'] },
  'equipment.heatPump': { values: ['yes', 'no'], assumed: 'no' },
  'blower.motor': { values: ['permanentSplit', 'electronic', 'unsure'] },
  'blower.place': { values: ['before coil', 'after coil', 'outside probes'] },
  certifiedMatch: { values: ['yes', 'no', 'unsure'] },
  filter: { values: ['clean', 'dirty', 'unsure'] },
  coil: { values: ['clean', 'dirty', 'iced', 'unsure'] },
  sideBySide: { values: ['yes', 'no', 'unsure'] },
  /** Cells around the conditions, a whole sheet, or published curves through the certified capacity. */
  'rating.from': { values: ['cells', 'sheet', 'generic'], assumed: 'cells' },
  /** Wet bulbs of the maker's rows: 57 62 67 72 °F, 59 63 67 71 °F, 15 17 19 21 23 °C, 14 16 18 19 20 22 24 °C, or typed. */
  'rating.series': { values: ['57', '59', '15', '14', 'other'] },
  'rating.basis': { values: ['net', 'gross', 'unsure'], assumed: 'unsure' },
  'rating.era': { values: ['seer', 'seer2', 'unsure'] },
  /** Of a whole table, as its maker names it. */
  'rating.stage': { values: ['one', 'high', 'low'] },
  'rating.unit': { values: ['btuh', 'kw', 'ton'] },
  'rating.withSensible': { values: ['yes', 'no'], assumed: 'no' },
  'rating.blocks': { values: ['one', 'two'], assumed: 'one' },
  /** Whether outdoors stands down the side and wet bulb across, as some data sheets print it. */
  'rating.turned': { values: ['no', 'yes'], assumed: 'no' },
  'rating.beyond': { values: ['refuse', 'extend'], assumed: 'refuse' },
  refrigerant: { values: ['R-410A', 'R-32', 'R-454B', 'R-22'] satisfies readonly Refrigerant[] },
  'lineSet.vaporTube': { values: vaporTubes },
  'lineSet.ratedVaporTube': { values: vaporTubes },
  'lineSet.liquidTube': { values: liquidTubes },
  'lineSet.meteringAt': { values: ['indoors', 'outdoors', 'unsure'] },
} as const satisfies Record<string, Choice>;

/** Those of the airflow sheet, of the ducts and of how sure come with who asks them: no other page carries their rows. */
type Choices = typeof choices &
  typeof airflowChoices &
  typeof ductChoices &
  typeof readReportChoices &
  typeof sureChoices;
export type ChoiceKey = keyof Choices;
export type ChoiceValue<Key extends ChoiceKey> = Choices[Key]['values'][number];

const rows: Partial<Record<ChoiceKey, Choice>> = { ...choices };

/** Brings in the rows of a sheet of its own. Every module that reads them calls it first; twice is once. */
export function joinChoices(more: Readonly<Partial<Record<ChoiceKey, Choice>>>): void {
  Object.assign(rows, more);
}

/** The row of a choice. */
export function choiceOf(key: ChoiceKey): Choice {
  const row = rows[key];
  if (row === undefined) throw new Error(`the rows of ${key} have not joined the table of choices`);
  return row;
}
export type AirflowMethod = ChoiceValue<'airflow.method'>;

/** Whether a text is one of the values of a choice. */
export function isChoice<Key extends ChoiceKey>(key: Key, value: string | undefined): value is ChoiceValue<Key> {
  return (choiceOf(key).values as readonly (string | undefined)[]).includes(value);
}

/**
 * What a way of finding the airflow usually gives: where, which kind, and its limit as a fraction of the figure (half-width).
 * Common practice, no source: each is shown as assumed and can be changed.
 * A fan moves the same volume at any density, so its table counts as air as it moves.
 */
export const airflowMethods = {
  readout: { place: 'unsure', kind: 'unsure', limit: 0.1 },
  fanTable: { place: 'unsure', kind: 'actual', limit: 0.1 },
  flowGrid: { place: 'entering', kind: 'actual', limit: 0.07 },
  hood: { place: 'entering', kind: 'actual', limit: 0.1 },
  traverse: { place: 'entering', kind: 'actual', limit: 0.1 },
  hotWireTraverse: { place: 'entering', kind: 'standard', limit: 0.1 },
  temperatureRise: { place: 'entering', kind: 'standard', limit: 0.1 },
  unsure: { place: 'unsure', kind: 'unsure', limit: 0.15 },
} as const satisfies Record<AirflowMethod, { place: AirflowPlace; kind: AirflowKind; limit: number }>;

/** Where the blower stands in each kind of equipment, the probes being on either side of the cabinet. Common practice, no source. */
export const blowerPlaces = {
  airHandler: 'after coil',
  furnaceCoil: 'before coil',
  packaged: 'after coil',
  ductedMiniSplit: 'after coil',
} as const satisfies Record<ChoiceValue<'equipment.kind'>, BlowerPlace>;

/** What a person chose, and nothing that only follows. */
export function said<Key extends ChoiceKey>(job: Pick<Job, 'chosen'>, key: Key): ChoiceValue<Key> | null {
  const value = job.chosen[key];
  return isChoice(key, value) ? value : null;
}

/** What was chosen, or what an unanswered question counts as; `undefined` where it stays open. */
export function chosen<Key extends ChoiceKey>(job: Pick<Job, 'chosen'>, key: Key): ChoiceValue<Key> | undefined {
  const value = job.chosen[key];
  if (isChoice(key, value)) return value;
  const { assumed } = choiceOf(key);
  return isChoice(key, assumed) ? assumed : undefined;
}
