/** Words of the steps from the nameplate to what a system should make here and now. */
import type { DerateCause } from '../../calc/types.ts';

export const derating = {
  whyNot: (nominal: string) => `Why not ${nominal}?`,
  plain: 'From the certified capacity to here and now',
  fromTable: 'From the table to here and now',
  say: (nominal: string, total: string) =>
    `The name ${nominal} stands for a class of size. Here and now this system should make ${total}.`,
  sayPlain: (total: string) => `Here and now this system should make ${total}.`,
  triedSay: (total: string, own: string, change: string) =>
    `Tried out: ${total} instead of ${own}, ${change}. Nothing of it changes the job.`,
  reset: 'Put everything back',
  faults:
    'Faults are not in it. A dirty coil, too little refrigerant or a leaking duct explain why a system makes less; they never lower what it should make.',
  ledger: (from: string, to: string) => `From ${from} to ${to}, step by step`,
  nameplate: 'On the nameplate',
  certifiedStart: 'As certified',
  tableStart: 'In the table',
  should: (share: string) => `should make, ${share}`,
  triedTotal: (share: string) => `tried out, ${share}`,
  measured: (share: string) => `measured, ${share}`,
  measuredBetween: (share: string, low: number, high: number) => `measured, ${share} (${low} to ${high}\u00a0%)`,
  stepsTitle: 'The steps, one by one',
  leftOut: 'left out',
  doesNotApply: 'does not apply',
  noChange: 'no change',
  outside: 'Outside the table: carried on in the line of its last cell, an estimate.',
} as const;

type Steps<T> = Readonly<Record<DerateCause, T>>;

/** The name of a step; what it is named with is the place, the airflow or the height. */
export const stepNames: Steps<(what: string) => string> = {
  certified: (point) => `Certified for this pair, at ${point}`,
  temperatures: (place) => `At ${place}`,
  indoorMatch: () => 'With this indoor unit',
  airflow: (flow) => (flow === '' ? 'At this airflow' : `At ${flow}`),
  blowerInside: () => 'Blower’s heat inside the rating put back: gross',
  lineSet: () => 'Behind this line set',
  altitude: (height) => `In the air at ${height}`,
  blowerHere: () => 'This blower’s heat taken off: net',
};

export const seaLevel = 'sea level';
