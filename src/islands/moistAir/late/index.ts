/** What comes after the chart: the insides of steps and folds. One file, fetched when the page has come to rest. */
export { HeightBody } from './HeightBody.tsx';
export { JobAirBody } from './JobAirBody.tsx';
export { JobProcessBody } from './JobProcessBody.tsx';
export { NamedBody } from './NamedBody.tsx';
export { PointTable } from './PointTable.tsx';
export { ProcessBody } from './ProcessBody.tsx';
export { ReadHere } from './ReadHere.tsx';
export { UndoKey } from './UndoKey.tsx';
export { Visitor } from './Visitor.tsx';
