/** A question of a lesson as data: what a class is told, how it answers, and, apart from these, the answer. The words stand in `words/en`. */
import type { Amount, Kind } from '../../../calc/types.ts';
import type { Draw } from '../draw.ts';
import type { FactName, Mistake } from '../spoiltTypes.ts';
import type { Grid } from '../types.ts';

export const lessonKeys = [
  'nominal',
  'drying',
  'lessAir',
  'twoProbes',
  'oneAir',
  'betweenRows',
  'blower',
  'spoilt',
] as const;
export type LessonKey = (typeof lessonKeys)[number];

/** Names of what is told and shown; the words have them under the same key. */
export type TellName =
  | FactName
  | 'tons'
  | 'certifiedShare'
  | 'agreedLine'
  | 'shareWorked'
  | 'shareWithout'
  | 'waterWorked'
  | 'nominal'
  | 'expected'
  | 'room'
  | 'roomHumidity'
  | 'supply'
  | 'supplyHumidityTold'
  | 'airflow'
  | 'total'
  | 'sensible'
  | 'latent'
  | 'seaLevel'
  | 'share'
  | 'temperatureLimit'
  | 'humidityLimit'
  | 'airflowLimit'
  | 'uncertainty'
  | 'high'
  | 'wetBulb'
  | 'printed'
  | 'returnWetBulb'
  | 'blowerPower'
  | 'warming';

export interface Tell extends Pick<Amount, 'kind' | 'value'> {
  readonly name: TellName;
}

/** How a class answers: with a number in a field, with the end of a bar, or with one of a few. */
export type Control = NumberControl | ChoiceControl;
export interface NumberControl {
  readonly by: 'number' | 'barEnd';
  readonly kind: Extract<Kind, 'fraction' | 'temperature' | 'power'>;
  /** What can be said, SI. */
  readonly range: readonly [low: number, high: number];
  /** Places after the point of a per cent. */
  readonly decimals: 0 | 1;
}
interface ChoiceControl {
  readonly by: 'choice';
  readonly options: readonly Mistake[];
}

/**
 * How an answer is drawn on its scale: as a bar from the low end, as what is left of a bar, as the first part of one that is
 * parted, as the low end of a range, or as a place.
 */
export type Look = 'bar' | 'rest' | 'parted' | 'range' | 'place';
export interface Mark {
  readonly name: TellName;
  readonly values: readonly number[];
}
export interface Scale {
  readonly look: Look;
  readonly kind: NumberControl['kind'];
  /** What the answer is: read off instruments, or what should be. */
  readonly pen: 'measured' | 'should';
  readonly ends: readonly [low: number, high: number];
  /** What is on it from the beginning. */
  readonly given: readonly Mark[];
  /** Of a range: where it ends at the top as long as nobody knows better. */
  readonly top: number | null;
}

/** What may be seen while it is asked. */
export interface Asked {
  readonly told: readonly Tell[];
  readonly grid: Grid | null;
  /** Whether what is told stands in a table and not in a sentence. */
  readonly asTable: boolean;
  readonly control: Control;
  readonly scale: Scale;
}

/** What may not. */
export interface Answered {
  /** The answer, SI; of a choice, its place among the options. */
  readonly answer: number;
  /** Marks that come with the answer. */
  readonly marks: readonly Mark[];
  /** Of a range, its high end. */
  readonly top: number | null;
  /** Figures of the sentence that says why. */
  readonly told: readonly Tell[];
}

/** How the questions of a lesson are made. */
export interface Lesson<SetUp> {
  /** The figures that the text of the lesson has: those of question 1. */
  readonly first: SetUp;
  /** Figures from chance; `null` where they would be no sound question, and others are drawn. */
  readonly draw: (draw: Draw) => SetUp | null;
  readonly ask: (of: SetUp) => Asked;
  readonly answer: (of: SetUp) => Answered;
}
