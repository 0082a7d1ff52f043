/** Words of the exercises and of their answer sheet. */
import type { ExerciseKind, FigureName } from '../../job/classroom/types.ts';

export const title = 'Exercises';
export const description =
  'Sets of six exercises with invented figures, made from the number of the set, to print for a class; the answers on a sheet of their own.';
export const say =
  'Six exercises, made from the number of the set: the same number gives the same figures on every device. All figures are invented.';

export const answersTitle = 'Answers to the exercises';
export const answersDescription =
  'The answers to a set of exercises, each worked out step by step with the equations and their sources.';
export const answersSay =
  'Worked out by the same calculation that the sheets use, step by step. Rounded results may differ in the last figure.';

export const setName = 'Set number';
export const setProblem = (last: string) => `Type a whole number from 1 to ${last}.`;
export const another = 'Another set';
export const toAnswers = 'Answers to this set';
export const toExercises = 'Exercises of this set';
export const print = 'Print';
export const withoutScripts = 'This is set 1. Other sets need scripts.';
export const setHeading = (set: number) => `Set ${set}`;
export const failed = 'The part that makes other sets could not be loaded. Try again once there is a signal.';

export const given = 'Given';
export const answer = 'Answer';
export const answers = 'Answers';
export const verdictName = 'The verdict';
export const working = 'Step by step';

export const kinds: Readonly<Record<ExerciseKind, { readonly name: string; readonly ask: string }>> = {
  state: {
    name: 'A state of air',
    ask: 'Find the wet bulb, the humidity ratio and the enthalpy of this air.',
  },
  load: {
    name: 'What a coil does',
    ask: 'The airflow was read as actual air at the return. Find the dry air that passes, and the total, the sensible and the latent capacity.',
  },
  interpolation: {
    name: 'Between the rows',
    ask: 'This is a corner of an invented rating table: outdoor temperatures above, wet bulbs of the return air at the left. Find the capacity at the conditions given.',
  },
  traverse: {
    name: 'A traverse',
    ask: 'A vane was read in the middle of each field of a rectangular duct, five lines of five points by the log-Tchebycheff rule. Find the mean velocity and the airflow.',
  },
  budget: {
    name: 'Limits put together',
    ask: 'The capacity is the airflow times the drop in enthalpy. Each is known within these limits, every value inside them equally likely, and the two have nothing to do with each other. Find the standard uncertainty of the capacity.',
  },
  verdict: {
    name: 'Held against the line',
    ask: 'Find the range with nine chances in ten on either side, its ends rounded outward to whole per cents, and say what it says of the line.',
  },
};

export const figures: Readonly<Record<FigureName, string>> = {
  altitude: 'Height above sea level',
  dryBulb: 'Temperature (dry bulb)',
  relativeHumidity: 'Relative humidity',
  wetBulb: 'Wet bulb',
  humidityRatio: 'Humidity ratio',
  enthalpy: 'Enthalpy',
  returnDryBulb: 'Return air, temperature',
  returnHumidity: 'Return air, humidity',
  supplyDryBulb: 'Supply air, temperature',
  supplyHumidity: 'Supply air, humidity',
  airflow: 'Airflow',
  dryAirFlow: 'Dry air',
  total: 'Total',
  sensible: 'Sensible',
  latent: 'Latent',
  outdoors: 'Outdoor temperature',
  returnWetBulb: 'Return air, wet bulb',
  ductWidth: 'Width of the duct',
  ductHeight: 'Height of the duct',
  meanVelocity: 'Mean velocity',
  airflowLimit: 'Airflow, known within plus or minus',
  dropLimit: 'Drop in enthalpy, known within plus or minus',
  uncertainty: 'Standard uncertainty',
  share: 'Share of what it should make',
  line: 'The line agreed on',
  low: 'Low end of the range',
  high: 'High end of the range',
};

export const verdicts = {
  meets: 'It meets the line: the whole range is at the line or past it.',
  short: 'It is short of the line: the whole range is below it.',
  cannotTell: 'These readings cannot tell: the line is inside the range.',
} as const;
