/** Words of the questions of the lessons. Nothing here may give an answer away before “Show”. */
import type { LessonKey, TellName } from '../../job/classroom/lessons/types.ts';

/** A figure that is told, with its unit. */
export type Texts = (name: TellName) => string;

interface Words {
  readonly told: (text: Texts) => string;
  readonly ask: string;
  /** Name of the field or of the end that is moved. */
  readonly guess: string;
}

const coil = (text: Texts) =>
  `${text('airflow')} of return air at ${text('room')} and ${text('roomHumidity')} leave the coil at ${text('supply')} and ${text('supplyHumidityTold')}.`;

export const lessonQuestions: Readonly<Record<LessonKey, Words>> = {
  nominal: {
    told: (text) =>
      `A system is called “${text('tons')}”. Its certificate says ${text('certified')}. Today its return air is at ${text('room')} and ${text('roomHumidity')}, it is ${text('outdoors')} outdoors, and the house stands ${text('altitude')}.`,
    ask: 'Which share of its name should it make, here and now?',
    guess: 'Your share of the name',
  },
  drying: {
    told: coil,
    ask: 'The air got cooler, and drier. Which share of the work went into drying?',
    guess: 'Your share for drying',
  },
  lessAir: {
    told: (text) =>
      `At sea level ${coil(text)} Another house has the same readings and the same airflow, ${text('altitude')}.`,
    ask: 'How much less does the system make up there?',
    guess: 'Your loss',
  },
  twoProbes: {
    told: (text) =>
      `${coil(text)} The airflow is known within ±${text('airflowLimit')}, each probe within ±${text('temperatureLimit')} and ±${text('humidityLimit')}. The share comes out at ${text('share')}.`,
    ask: 'There are nine chances in ten that the truth lies above the low end of the range. Where is this end?',
    guess: 'Your low end',
  },
  oneAir: {
    told: (text) =>
      `A room is at ${text('room')} and ${text('roomHumidity')}. A glass of water with ice in it stands on the table.`,
    ask: 'At which temperature of the glass does it begin to mist?',
    guess: 'Your temperature',
  },
  betweenRows: {
    told: (text) =>
      `It is ${text('outdoors')} outdoors, and the return air has a wet bulb of ${text('returnWetBulb')}. This corner of a table is invented.`,
    ask: 'What does the table say here?',
    guess: 'Your capacity',
  },
  blower: {
    told: (text) =>
      `One probe stands before the coil, one behind the blower. ${coil(text)} The blower draws ${text('blowerPower')}.`,
    ask: 'How much is the heat of the blower, in per cent of what the house gets?',
    guess: 'Your share for the blower',
  },
  spoilt: {
    told: () => 'From the notes of an invented test, and what was made of them:',
    ask: 'Which of three mistakes spoilt it?',
    guess: 'Your mistake',
  },
};

/** Where a house stands, in a sentence. */
export const height = { sea: 'at sea level', above: (height: string) => `${height} above the sea` };

/** What stands on the scale of a question. */
export const markNames: Readonly<Partial<Record<TellName, string>>> = {
  nominal: 'The name',
  certifiedShare: 'In the laboratory',
  seaLevel: 'At sea level',
  share: 'The share',
  agreedLine: 'The line',
  room: 'The thermometer',
  wetBulb: 'Its wet bulb',
  printed: 'The four printed figures',
  shareWorked: 'As written down',
  shareWithout: 'Put right',
};
export const restCools = 'the rest cools';

export const tableName = 'Notes and result';
export const toldInTable: Readonly<Partial<Record<TellName, string>>> = {
  shareWorked: 'Share',
  waterWorked: 'Water that this result takes out',
};

export const toSay = {
  number: 'Type what you think.',
  barEnd: 'Move the end, or type it.',
  choice: 'Choose one.',
  /** The line to write on, on paper. */
  onPaper: 'Your guess:',
};
export const badGuess = (low: string, high: string) => `Type a number from ${low} to ${high}.`;
export const failed = 'The answer could not be loaded. Try again once there is a signal.';
export const pictureOf = (ask: string, rows: string) => `${ask} ${rows}.`;
