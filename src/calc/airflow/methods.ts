/** The ways of finding an airflow, those that a job allows most often first. The order in which they are shown and answered. */
export const airflowMethods = [
  'readout',
  'fanTable',
  'flowGrid',
  'hood',
  'traverse',
  'temperatureRise',
  'pressureMatch',
  'grille',
] as const;

export type AirflowMethod = (typeof airflowMethods)[number];
