/** What an airflow is worth: for the size of the system, and what more of it or less would do. And the margin of the sheet. */
import type { PerTonName } from '../../calc/airflow/perTon.ts';
import type { SourceKey } from '../../calc/sources.ts';

export const perTonWords = {
  head: 'For the size of the system',
  each: (flow: string) => `${flow} of standard air, by the nameplate.`,
  size: 'With the nameplate’s size this is set beside what is usual.',
  names: {
    humid: 'Humid climates',
    ordinary: 'Ordinary climates',
    dry: 'Dry climates',
    rated: 'Rated for',
    working: 'At work at all',
  } as const satisfies Record<PerTonName, string>,
  range: (low: string, high: string) => `${low} to ${high}`,
  positions: { below: 'below it', inside: 'inside', above: 'above it' },
  outranked:
    'By climate: a habit of the trade, no public source. The maker’s setting and table outrank all of these ranges.',
  summary: (flow: string) =>
    `${flow} as a thick line with its range, beside five usual ranges; the table says the same.`,
} as const;

export const moreOrLess = {
  head: 'More air, or less',
  airflow: 'Standard air',
  total: 'Capacity',
  sensible: 'Cooling',
  ratio: 'Sensible share',
  share: (percent: string) => `(${percent})`,
  outside: 'not in the table',
  byRating: 'Net capacity at the conditions of this job, by its rating. Everything else as it is.',
  byCoil:
    'Gross capacity of the coil as the two probes measured it: an estimate, by the published flow curve and the coil’s own bypass factor.',
  band: (percent: string) => `Its steps admit ${percent} either way.`,
  shares:
    'This rating gives no cooling share: the shares are those of the coil as the two probes measured it, an estimate.',
  note: 'More air cools more and dries less; less air the other way round, down to ice on the coil.',
  needs: (flow: string) =>
    `What more or less than ${flow} would do is worked out once both probes are read on the capacity sheet, or its rating is there.`,
} as const;

export const airflowMargin = {
  title: 'What this rests on',
  open: 'no airflow yet',
  notes: [
    { say: 'Where to read in a duct, and whether a section will do.', source: 'traverseRules' },
    { say: 'Straight duct, readings again, velocities averaged.', source: 'fieldTraverse' },
    { say: 'Hoods, metering plates and calibrated fans.', source: 'californiaAirflow' },
    { say: 'Fixed speeds move the same volume in thin air.', source: 'fanLaws' },
    { say: 'Hoods on the grilles of homes.', source: 'fieldHoods' },
    { say: 'The probe behind a furnace.', source: 'furnacePosition' },
    { say: 'Several ways as one, and wider where they differ.', source: 'birgeRatio' },
    { say: 'What each way is good for, where no work says.', source: 'commonPractice' },
  ] as const satisfies readonly { readonly say: string; readonly source: SourceKey }[],
} as const;
