/** Words inside each step from the nameplate to the expectation. */
import type { DerateCause } from '../../calc/types.ts';

export const stepWords = {
  counts: 'This step counts',
  source: 'Source:',
  working: 'The working',
  band: (low: string, high: string) =>
    `Sources differ on how much this step takes: after it the figure lies between ${low} and ${high}.`,
} as const;

type Steps<T> = Readonly<Record<DerateCause, T>>;

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
  blowerHere:
    'Now the heat of the blower that stands here comes off: what is left is what the system sends into its ducts.',
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
