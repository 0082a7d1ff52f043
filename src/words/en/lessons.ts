/** Words that lessons share. */

export const showAnswer = 'Show the answer';
export const ladder = { measured: 'Measured' };
