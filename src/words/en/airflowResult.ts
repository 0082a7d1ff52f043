/** What is said of an airflow that was found. */
import { quantityWords } from './quantities.ts';

export const airflowResult = {
  name: 'What it comes to',
  asItMoves: 'As it moves there (actual)',
  asStandard: 'As standard air',
  perTon: 'For the nameplate size',
  uncertainty: 'Standard uncertainty',
  why: 'Why so unsure?',
  use: 'Let this one count',
  counts: 'This one counts',
  partial: 'Not every reading is there. This is a first answer, and its range is wider for it.',
  waiting: (names: readonly string[]) => `Still needed: ${names.join(', ')}.`,
} as const;

const grids: Readonly<Record<string, string>> = {
  fanTable: 'two rows of the fan table',
  'traverse.pressures': 'the readings',
  'traverse.velocities': 'the readings',
  'flowGrid.plates': 'the airflow on the plate',
  'hood.returns': 'the airflow at the grilles',
  grilles: 'size, factor and readings of every grille',
};

/** What a method waits for, by the name of its field or grid. */
export function waitingName(key: string): string {
  const words = (quantityWords as Readonly<Record<string, { readonly inSentence: string }>>)[key];
  return words?.inSentence ?? grids[key] ?? key;
}

/** The causes of error of all methods. */
export const causeNames: Readonly<Record<string, string>> = {
  'airflow.way': 'How the figure counts the air',
  'readout.motor': 'The control’s own figure',
  'fanTable.curve': 'Wheel, filter and voltage as the table wants them',
  'fanTable.place': 'Place of the holes',
  'fanTable.density': 'Warmth and dampness of the air',
  'fanTable.altitude': 'What this motor does in thin air',
  'gauge.manometer': 'The gauge',
  'traverse.section': 'The section of duct',
  'traverse.area': 'The area',
  'traverse.zero': 'The gauge’s zero',
  'traverse.yaw': 'The tube held askew',
  'traverse.missing': 'Points without a reading',
  'instrument.vane': 'The vane',
  'instrument.hotWire': 'The hot wire',
  'heat.meters': 'Voltage and current',
  'heat.clocking': 'Clocking the meter',
  'heat.efficiency': 'The efficiency',
  'heat.blower': 'The blower’s heat',
  'probe.entering': 'The return probe',
  'probe.leaving': 'The supply probe',
  'temperatureRise.position': 'Place of the supply probe',
  'temperatureRise.dryCoil': 'A dry coil lets more through',
  'flowGrid.plate': 'The plate',
  'flowGrid.flutter': 'A pressure that flutters',
  'flowGrid.zero': 'The gauge’s zero',
  'flowGrid.missing': 'Plates without a reading',
  'pressureMatch.fan': 'The calibrated fan',
  'pressureMatch.flutter': 'A pressure that flutters',
  'pressureMatch.exponent': 'A pressure that was not met',
  'hood.instrument': 'The hood on the grille',
  'hood.leaks': 'Air drawn in behind the grille',
  'hood.uncovered': 'A grille that the hood does not cover',
  'hood.missing': 'Grilles without a reading',
  'grille.areaFactor': 'The area factor',
  'grille.missing': 'Readings that are missing',
};
