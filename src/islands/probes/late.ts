/** What the sheet does not need before its first answer: one file, fetched when there is one. */
export { Notes } from './Notes.tsx';
export { Results } from './Results.tsx';
