/** Words of the home page. */

export const title = 'How much cooling does it really deliver?';
export const description =
  'Two probes and an airflow figure tell how much cooling an air conditioner delivers right now. See it beside what the same system should deliver in this weather.';
export const sentence =
  'Two probes and an airflow figure tell how much cooling an air conditioner delivers right now. This site works it out, works out what the same system should deliver in this weather, and shows every step.';
export const promise = 'No account, no signal needed; what you type stays on this device.';

export const doors = [
  {
    name: 'I am on a job.',
    say: 'About twelve figures, one question at a time.',
    links: [
      { path: '/worksheets/capacity/?new', label: 'Start a new job', main: true },
      { path: '/worksheets/capacity/', label: 'Go on with my job', main: false, kept: 'Go on with' },
    ],
    more: { path: '/method/measured-cooling/', label: 'How to measure, in order' },
  },
  {
    name: 'I teach or learn.',
    say: 'A lesson that asks first and answers after, with every figure worked out.',
    links: [{ path: '/classroom/', label: 'Open the classroom', main: false }],
    more: { path: '/reference/drawings/', label: 'How to read our drawings' },
  },
  {
    name: 'I was given a report.',
    say: 'What its figures show, what they cannot, what to ask.',
    links: [{ path: '/reports/read/', label: 'Read my report', main: false }],
    more: { path: '/cautions/your-own-house/', label: 'What is safe to do yourself' },
  },
] as const;

export const demo = 'Look at the demo job (invented)';
export const demoReport = 'and at its report';
export const fieldSheet = 'A blank field sheet, to print and fill in with a pencil';
export const coveredAsk = 'For which systems?';
export const covered =
  'For ducted air conditioners and heat pumps with one indoor coil: split systems, furnaces with a cased coil, packaged units, ducted mini-splits on an outdoor unit of their own.';
export const notCovered =
  'Not for ductless heads, several indoor units on one outdoor unit, reheat modes or chilled water.';

export const picture = {
  name: 'How a result is drawn. Invented figures: measured 93\u00a0% of what it should make, between 85 and 101\u00a0%, with the agreed line at 90\u00a0%.',
  line: 'the agreed line, 90\u00a0%',
  should: 'what it should make',
  measured: 'measured, 93\u00a0%',
  low: '85',
  high: '101\u00a0%',
  caption: 'A share is worth its range. Invented figures: the line lies inside, so these readings cannot tell.',
};
