/** Words of the spoilt tests and of what spoilt them. */
import type { FactName, Mistake } from '../../job/classroom/spoiltTypes.ts';

export const title = 'Spoilt tests';
export const description =
  'Invented tests of a cooling system with one mistake planted in each, and a sound one among them: find the mistake from the figures.';
export const say =
  'Five tests of five houses. In four of them one thing was done wrong, in one nothing was. The figures give it away. All of it is invented.';
export const ask =
  'Which figures do not fit the others? What was done wrong? Would the result have been higher or lower without it?';

export const answersTitle = 'What spoilt the tests';
export const answersDescription =
  'What was done wrong in each of the spoilt tests, which figures give it away, and what the result is without it.';
export const answersSay = 'What was done wrong, which figures give it away, and what the result is without it.';

export const toAnswers = 'What spoilt them';
export const toTests = 'Tests of this set';
export const test = (number: number) => `Test ${number}`;
export const notes = 'What the tester wrote down';
export const result = 'What the tester made of it';
export const results = {
  measured: 'Measured, net',
  expected: 'What it should make',
  share: 'Share',
  water: 'Water that this result takes out',
};
export const yourAnswer = 'What was wrong';
export const giveaway = 'The figures that give it away';
export const without = (share: string) => `Without the mistake the share is ${share}.`;
export const lost = 'No figure can be put right afterwards: the test has to be made again.';
export const nothing = {
  name: 'Nothing is wrong with this test',
  why: 'The three points of the supply agree, the water that was caught is that of the result, the airflow is that of the fan table, and the outdoor unit takes the power of its table. A share a little off 100\u00a0% is no mistake.',
};

export const mistakes: Readonly<Record<Mistake, { readonly name: string; readonly why: string }>> = {
  lowStage: {
    name: 'The machine ran at its low stage',
    why: 'Everything hangs together, airflow and drop and water; only the outdoor unit takes far less power than its table has for full speed. The table of full speed says nothing of this machine now.',
  },
  bypassOpen: {
    name: 'A bypass was open',
    why: 'The return was read at the grille. At the unit the air is several degrees colder, because supply air comes straight back. The coil never saw the warmer air, so the difference and the water come out too large.',
  },
  probeSeesCoil: {
    name: 'The supply probe stood in sight of the coil',
    why: 'Two other points of the same duct agree with each other and not with the one that was used. A probe that sees the cold surface, or its spray, reads too low.',
  },
  wetProbe: {
    name: 'The supply probe was wet',
    why: 'Air behind a coil and a blower is seldom at 100\u00a0%. The result takes hardly any water out of the air, and the drain caught a good deal of it.',
  },
  seaLevelPressure: {
    name: 'The pressure is that of sea level',
    why: 'The house stands high above the sea. A weather report is corrected to sea level; with its pressure the air counts as denser than it is.',
  },
  grossRow: {
    name: 'The row of the table is gross',
    why: 'At the rating point the table has more than the certificate of the same pair, by the heat of a blower. What was measured is net.',
  },
  demandedAirflow: {
    name: 'The airflow is what the control asked for',
    why: 'The static pressure is far too high for it: at that pressure the fan table has a fifth less. A control shows what it wants, and the blower does what it can.',
  },
  furnaceTap: {
    name: 'The airflow was found on the heating speed',
    why: 'When the airflow was found the static pressure was higher than while it cooled: the blower ran on another speed. The fan table at the cooling speed has less.',
  },
};

export const facts: Readonly<Record<FactName, string>> = {
  altitude: 'Height above sea level',
  pressureUsed: 'Pressure of the air, as it was put in',
  outdoors: 'Outdoor temperature',
  returnDryBulb: 'Return air, temperature (used)',
  returnHumidity: 'Return air, humidity (used)',
  returnAtUnit: 'Return air right at the unit, temperature',
  supplyDryBulb: 'Supply air, temperature (used)',
  supplySecond: 'Supply air, second point',
  supplyThird: 'Supply air, third point',
  supplyHumidity: 'Supply air, humidity (used)',
  airflowUsed: 'Airflow (used)',
  airflowFanTable: 'Airflow by the fan table, cooling speed, at the static pressure while cooling',
  staticAtAirflow: 'External static pressure when the airflow was found',
  staticCooling: 'External static pressure while cooling',
  waterCaught: 'Water caught at the drain',
  power: 'Power of the outdoor unit',
  powerInTable: 'Power of the outdoor unit by its table',
  certified: 'Certified capacity, net',
  tableAtRating: 'The table’s figure at the certified conditions',
};
