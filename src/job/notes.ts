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
  'entering.probe',
  'leaving.probe',
  'line.at',
  'rating.page',
] as const;

export type NoteKey = (typeof notes)[number];
