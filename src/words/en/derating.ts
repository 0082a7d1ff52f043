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
  stepsTitle: 'The steps, one by one',
  leftOut: 'left out',
  doesNotApply: 'does not apply',
  noChange: 'no change',
  counts: 'This step counts',
  source: 'Source:',
  working: 'The working',
  band: (low: string, high: string) =>
    `Sources differ on how much this step takes: after it the figure lies between ${low} and ${high}.`,
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

/** What a step is, for anyone. */
export const stepSays: Steps<string> = {
  certified:
    'A size of 3 tons is a name for a class. What this very pair of outdoor and indoor unit makes was measured in a laboratory at one point, and that figure is often smaller.',
  temperatures:
    'The hotter the air into the outdoor unit, the harder it is to get rid of the heat; the damper the air into the coil, the more there is to take out. Read from the table at the place on the surface above.',
  indoorMatch:
    'A table is often printed for one indoor unit only. The maker then gives a factor for each of the others.',
  airflow:
    'More air through the coil carries more heat to it, but much less than in proportion: a tenth more air is worth two in a hundred.',
  blowerInside:
    'The blower’s motor heats the air that the coil has cooled. A net table has that heat of its own blower taken off already. It is put back, so that the next steps act on what the coil alone does.',
  lineSet:
    'Long or narrow pipes cost pressure between the two units, and the compressor gets thinner vapour for it. Ratings are for a short line of the stated size.',
  altitude:
    'Thin air weighs less: the same volume carries less heat to the coil and away from the outdoor unit. How much the outdoor side counts, sources do not agree on.',
  blowerHere: 'Now the heat of the blower that stands here comes off: what is left is what the rooms get.',
};

/** Why a step does nothing here. */
export const stepRests: Steps<string> = {
  certified:
    'Does not apply here, because no certified capacity is given: the next step goes straight from the first figure to the table.',
  temperatures: '',
  indoorMatch: 'Does not apply here, because the table is taken to be for this very pair.',
  airflow:
    'Does not apply here, because the table itself is read at this airflow, or does not say which airflow it is for.',
  blowerInside: 'Does not apply here, because the table is gross, or nothing is said of a blower inside it.',
  lineSet: 'Does not apply here, because the line set is taken to be as rated.',
  altitude: 'Does not apply here, because this is worked out at sea level.',
  blowerHere: 'Does not apply here, because no blower power is given.',
};

/** What the sliders move. */
export const stepSliders = {
  certified: 'Certified capacity',
  outdoorDryBulb: 'Outdoors',
  enteringWetBulb: 'Entering wet bulb',
  indoorMatch: 'Factor for the indoor unit',
  dryAirFlow: 'Airflow',
  blowerInside: 'Blower power inside the rating',
  lineSet: 'What the line leaves',
  altitude: 'Height above the sea',
  blowerHere: 'Power of this blower',
} as const;
