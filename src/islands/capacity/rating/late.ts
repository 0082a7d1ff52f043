/** What step 5 does not need before the readings are there: one file, fetched with the expected half. */
export { Certified } from './Certified.tsx';
export { Figures } from './Figures.tsx';
export { MorePanel } from './MorePanel.tsx';
export { RatingTools } from './RatingTools.tsx';
