/** What a report of somebody else's may say of its figures. */
export const readReportChoices = {
  /** What its per cent is a share of. */
  'report.shareOf': { values: ['hereAndNow', 'nameplate', 'unsaid'] },
  'report.airflowBy': { values: ['measured', 'readout', 'rule', 'unsaid'] },
  'report.compared': { values: ['yes', 'no', 'unsaid'] },
} as const;
