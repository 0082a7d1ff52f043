/** Words of two jobs side by side. */
import type { SameCause } from '../../calc/confidence/difference.ts';

export const compareWords = {
  before: 'Before',
  after: 'After',
  choose: 'Choose a job',
  toJobs: 'To the list of jobs',
  tooFew:
    'Two jobs are needed, one read before the work and one after. Copy a job in the list and type the new readings into the copy, or bring one in from a file.',
  sameAsk: 'What was the same both times?',
  sameLead:
    'An error that was there both times goes out of the difference, but for what of it is new at each visit; one that was not counts twice. Tick only what you know.',
  ledger: 'The two jobs, line by line',
  difference: 'Difference',
  read: 'Read',
  returnAir: 'Return air',
  supplyAir: 'Supply air',
  airflow: 'Airflow',
  outdoors: 'Outdoors',
  makes: 'It makes, measured',
  should: 'It should make, here and now',
  share: 'Share',
  between: 'between',
  notRead: 'not read',
  and: (one: string, other: string) => `${one}, ${other}`,
  ends: (low: string, high: string) => `${low} to ${high}`,
  answers: {
    more: 'It makes a larger share than before.',
    less: 'It makes a smaller share than before.',
    cannotTell: 'These readings cannot tell the two apart.',
    moreCapacity: 'It makes more than before.',
    lessCapacity: 'It makes less than before.',
  },
  beyond: 'They differ by more than these readings are unsure.',
  noDifference: 'no difference',
  shareWent: (from: string, to: string, by: string, ends: string) =>
    `The share went from ${from} to ${to}: ${by}, between ${ends}.`,
  capacityWent: (by: string, ends: string) => `It makes ${by}, between ${ends}.`,
  weather:
    'Weather and return air differ from one visit to the next: compare the shares, which allow for that, before the capacities.',
  noShare:
    'One of the two has no expectation, so that only what was measured can be compared. Another day’s weather alone changes that.',
  points: (amount: string) => `${amount} points`,
  more: (text: string) => `${text} more`,
  less: (text: string) => `${text} less`,
  none: 'nothing',
  toBoth: (low: string, high: string) => `${low} and ${high}`,
  waits: (name: string, needs: string) => `${name} still needs: ${needs}.`,
  waitsAnything: (name: string) => `What ${name} measured cannot be worked out. Open it to see why.`,
  odds: (chances: string) => `${chances} on either side. To first order.`,
  chances: { nine: 'Nine chances in ten', nineteen: 'Nineteen chances in twenty' },
  probesDiffer:
    'The probes were checked side by side at one visit only, so their errors were not the same: that tick does nothing here.',
  estimate: 'One of the two expectations is an estimate from published curves.',
  sameJob: 'That is the same job twice.',
} as const;

export const sameWords: Readonly<Record<SameCause, string>> = {
  probes: 'The same two probes, each in the same place',
  airflow: 'The same instrument and way of finding the airflow',
  place: 'The supply probe at the same spot',
  system: 'The same system, table, lines and blower',
};
