/** What the sheet does not need before its first answer: one file, fetched when there is one. */
export { Answer } from './Answer.tsx';
export { Margin } from './Margin.tsx';
