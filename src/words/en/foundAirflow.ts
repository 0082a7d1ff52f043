/** Where the airflow of the capacity sheet comes from. */
export const foundAirflow = {
  lead: 'No figure yet, or a second one to check it by?',
  way: 'Find the airflow',
  from: (flow: string) => `${flow} of standard air, from the airflow sheet, counts here.`,
  notYet: 'The airflow sheet has no figure yet; its figure would count here.',
  typed: 'Count the typed figure',
} as const;
