/** Free text that a person may write; it changes no figure. */
export const notes = [
  'address',
  'system',
  'outdoor.model',
  'outdoor.serial',
  'indoor.model',
  'indoor.serial',
  'furnace.model',
  'certificate',
  'tester',
  'readAt',
  'step.entering',
  'step.leaving',
  'step.airflow',
  'step.outdoors',
  'step.rating',
  'step.sure',
  'step.lineSystem',
  'step.lineTubes',
  'step.lineLengths',
  'step.lineMaker',
  'step.lineRunning',
  'step.probesReturn',
  'step.probesSupply',
  'step.probesShared',
  'step.probesSteady',
  'step.probesPoints',
  'step.probesEnd',
  'step.readout',
  'step.fanTable',
  'step.flowGrid',
  'step.hood',
  'step.traverse',
  'step.temperatureRise',
  'step.pressureMatch',
  'step.grille',
  'entering.probe',
  'leaving.probe',
  /** When full speed and full airflow began, and when anything was changed after: ISO 8601. */
  'steady.startedAt',
  'steady.changedAt',
  'line.at',
  'rating.page',
  'rating.typedAt',
  /** When each step of the visit was done: ISO 8601. */
  'visit.rating',
  'visit.probes',
  'visit.airflow',
  'visit.placed',
  'visit.steady',
  'visit.read',
  'visit.outdoors',
  /** When the figures were locked, ISO 8601, and the code that the sheet had then. */
  'locked.at',
  'locked.code',
  /** The tester's words on the report. */
  'report.next',
  'report.remarks',
  'report.instruments',
  'report.calibration',
] as const;

export type NoteKey = (typeof notes)[number];

/** Who and where: a link may leave these out. */
export const personalNotes: readonly NoteKey[] = ['address', 'tester'];

/** Whether a note is no part of what a lock stamps: who and where, what is written around the figures, the stamp itself. */
export const isOutsideLock = (key: string): boolean =>
  personalNotes.some((one) => one === key) || /^(report|visit|locked)\./.test(key);
