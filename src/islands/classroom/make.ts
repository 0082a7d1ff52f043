/** The part that makes sets of exercises, fetched when a set is asked for that does not stand in the page. */
export const makeExercises = async () => (await import('~/job/classroom/exercises.ts')).exercisesOf;
export const makeSpoilt = async () => (await import('~/job/classroom/spoilt.ts')).spoiltTestsOf;
