/** Words that lessons share. */

export const showAnswer = 'Show the answer';
export const ladder = { measured: 'Measured' };
export const paper = {
  say: 'On paper an answer that is folded stays folded, with a line to write on: a sheet for the class. With the answers open it is yours.',
  open: 'Open all answers',
  print: 'Print',
};
