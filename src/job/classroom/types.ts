/** An exercise as data: what is given, what is asked, and the way there. The words stand in `words/en/exercises.ts`. */
import type { Amount, Step } from '../../calc/types.ts';

export const exerciseKinds = ['state', 'load', 'interpolation', 'traverse', 'budget', 'verdict'] as const;
export type ExerciseKind = (typeof exerciseKinds)[number];

/** Names of what is given and asked; the words have them under the same key. */
export type FigureName =
  | 'altitude'
  | 'dryBulb'
  | 'relativeHumidity'
  | 'wetBulb'
  | 'humidityRatio'
  | 'enthalpy'
  | 'returnDryBulb'
  | 'returnHumidity'
  | 'supplyDryBulb'
  | 'supplyHumidity'
  | 'airflow'
  | 'dryAirFlow'
  | 'total'
  | 'sensible'
  | 'latent'
  | 'outdoors'
  | 'returnWetBulb'
  | 'ductWidth'
  | 'ductHeight'
  | 'meanVelocity'
  | 'airflowLimit'
  | 'dropLimit'
  | 'uncertainty'
  | 'share'
  | 'line'
  | 'low'
  | 'high';

export interface Figure extends Pick<Amount, 'kind' | 'value'> {
  readonly name: FigureName;
}

/** Figures in rows and columns: a corner of a rating table, the readings of a traverse. Heads and cells in SI. */
export interface Grid {
  readonly name: 'rating' | 'velocities';
  readonly columns: readonly number[];
  readonly rows: readonly { readonly head: number; readonly cells: readonly number[] }[];
}

export interface Exercise {
  readonly kind: ExerciseKind;
  readonly given: readonly Figure[];
  readonly grid: Grid | null;
  readonly answers: readonly Figure[];
  /** Only where a verdict is asked. */
  readonly verdict: 'meets' | 'short' | 'cannotTell' | null;
  readonly steps: readonly Step[];
}
