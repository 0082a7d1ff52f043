/** What the sheet does not need before its first answer: one file, fetched when there is one. */
export { CapacityBlock } from './CapacityBlock.tsx';
export { Margin } from './Margin.tsx';
export { Results } from './Results.tsx';
export { barOfVerdict, sentencesOfVerdict } from './sure/said.tsx';
