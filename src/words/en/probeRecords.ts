/** Words of loggers' records: what their columns are, and the records of both probes side by side. */
import { steadyRefusals } from './probeSteady.ts';

export const recordWords = {
  is: (rows: string, name: string) => `${name}: ${rows} rows. What is in each column?`,
  roles: {
    none: 'Leave out',
    time: 'Time',
    'entering.dryBulb': 'Return temperature',
    'entering.humidity': 'Return humidity',
    'leaving.dryBulb': 'Supply temperature',
    'leaving.humidity': 'Supply humidity',
    outdoorDryBulb: 'Outdoor temperature',
    supplyStatic: 'Supply static pressure',
  },
  unit: 'Its temperatures are in',
  units: { degF: '°F', degC: '°C' },
  ownUnits: 'Its columns say different units: each is read in the one that it says, the others in this one.',
  pressure: 'Its pressures are in',
  pressures: { inwcDuct: 'in. w.c.', paDuct: 'Pa' },
  reading: 'Reading the record…',
  rowsRead: (rows: string) => `${rows} rows are being looked at…`,
} as const;

export const pairRecordWords = {
  lead: 'One file with both probes, or one file of each (CSV of any logger). The two clocks are brought together by the temperatures that rise and fall in both.',
  open: 'Open one file or two',
  close: 'Put the records away',
  exchange: 'The other way round',
  over: 'Compare the probes over',
  minutes: { ten: 'the last 10 minutes', twenty: 'the last 20 minutes', all: 'the whole record' },
  shift: (seconds: string) => `The clock of the taped probe is ${seconds} behind; that was taken out.`,
  shiftAhead: (seconds: string) => `The clock of the taped probe is ${seconds} ahead; that was taken out.`,
  noShift: 'The two clocks agree.',
  unknownShift:
    'Nothing in the two records rises and falls enough to tell their clocks apart: they are taken as they are. In steady air that does no harm.',
  count: (count: string) => `${count} pairs of readings`,
  asMeans: (count: string) => `${count} pairs of readings, as the means of five parts`,
  differ: (temperature: string) => `differ by ${temperature}`,
  take: 'Take these readings',
  taken: 'These readings stand above.',
  otherMeasure:
    'The record says its humidity otherwise than the probes of this job do: only the temperatures are compared.',
  again: 'What was typed above is put in their place.',
} as const;

export const pairRefusals: Readonly<Record<string, string>> = {
  ...steadyRefusals,
  noProbes: 'Two temperatures are needed, one of each probe: say which columns they are.',
  differentClocks: 'One record has dates and the other does not: their clocks cannot be brought together.',
  noPairs:
    'No reading of one probe stands near one of the other in time: their clocks are more than ten minutes apart, or the records are of different hours.',
  tooMany: 'One file or two, not more.',
};
