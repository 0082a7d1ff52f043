/** A set of exercises by its number: one of each kind, with invented figures, the same on every device. */
import { loadExercise, stateExercise } from './air.ts';
import { type Draw, drawing } from './draw.ts';
import { interpolationExercise, traverseExercise } from './reading.ts';
import { budgetExercise, verdictExercise } from './sure.ts';
import type { Exercise, ExerciseKind } from './types.ts';

const makers: Readonly<Record<ExerciseKind, (draw: Draw) => Exercise>> = {
  state: stateExercise,
  load: loadExercise,
  interpolation: interpolationExercise,
  traverse: traverseExercise,
  budget: budgetExercise,
  verdict: verdictExercise,
};

/** The exercises of a set, in the order in which a class meets them. */
export function exercisesOf(set: number): readonly Exercise[] {
  return Object.values(makers).map((make, place) => make(drawing(set * 16 + place)));
}
