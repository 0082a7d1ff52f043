/** Checks that would make the share surer, under their names in the calculation: as part of a sentence, and as what to do. */
export interface ImprovementWords {
  readonly name: string;
  readonly todo: string;
}

export const improvementWords: Readonly<Record<string, ImprovementWords>> = {
  sideBySide: {
    name: 'A side-by-side check',
    todo: 'Check the two probes side by side: ten to fifteen minutes in the return air, then as long in the supply air.',
  },
  sideBySideAgain: {
    name: 'A second side-by-side check, in both airs',
    todo: 'Put the probes side by side once more, in the return air and in the supply air, and compare their humidities too.',
  },
  supplyPoints: {
    name: 'Nine points over the supply plane',
    todo: 'Read the supply temperature at nine points of the plane instead of one.',
  },
  airflowKind: {
    name: 'Knowing where the airflow holds, and which kind it is',
    todo: 'Find out whether the airflow is as it moves or standard air, and at the return or the supply.',
  },
  airflowMethod: {
    name: 'A better airflow, such as a flow grid’s',
    todo: 'Measure the airflow in a better way: a flow grid, or a traverse with many points.',
  },
  secondAirflow: {
    name: 'A second way of finding the airflow',
    todo: 'Find the airflow in a second way: two that agree are worth more than one.',
  },
  ratingBasis: {
    name: 'Knowing whether the table is net or gross',
    todo: 'Look in the table’s footnotes whether the blower’s heat is already taken off.',
  },
  blowerPower: {
    name: 'The blower’s power, read',
    todo: 'Read the blower’s power, or its current, and type it in step 5.',
  },
  makersTable: {
    name: 'The maker’s own table',
    todo: 'Find the expanded ratings of this very pair: the published curves are an estimate.',
  },
  humidityStandard: {
    name: 'A humidity standard, overnight',
    todo: 'Hold the probes over a saturated salt, overnight, or against an aspirated wet bulb.',
  },
  all: {
    name: 'All the checks of this visit together',
    todo: 'No single check does it; all that can be made on this visit, together, would.',
  },
};

export const improvementParts = {
  /** In the answer: what would narrow the range, and to what. */
  wouldNarrow: (name: string, low: string, high: string, time: string) =>
    `${name} would narrow it to about ${low} to ${high} (${time}).`,
  minutes: (count: number) => (count >= 300 ? 'overnight' : `${count}\u00a0minutes`),
  next: (todo: string, low: string, high: string, time: string) =>
    `${todo} If the share stays where it is, that narrows the range to about ${low} to ${high}, in ${time}.`,
} as const;
