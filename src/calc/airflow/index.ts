export type { Grid } from './cells.ts';
export { type CombinedAirflow, combineAirflows, type LeftOut, type Weighed } from './combine.ts';
export { type Disagreement, type DisagreementCode, usualReason } from './disagreement.ts';
export {
  type DuctPart,
  type DuctPoint,
  type DuctSystem,
  type DuctSystemFound,
  ductSystem,
  partlyShut,
  systemStatic,
} from './ductSystem.ts';
export { airflowFromFanTable, type FanTableFound, type FanTableReading, type Motor } from './fanTable.ts';
export { type FanPoint, type FanRow, type FanTable, fanFlowAt, holdsAirflow } from './fanTableRead.ts';
export { airflowFromFlowGrid, type FlowGrid, type FlowGridFound } from './flowGrid.ts';
export type {
  AirflowFound,
  AirflowSource,
  BlowerSpeed,
} from './found.ts';
export { airflowFromGrille, type Grille, type GrilleVane, type GrilleVaneFound } from './grille.ts';
export { type Clocked, clockedInput, type HeatSource } from './heat.ts';
export {
  airflowFromTemperatureRise,
  type ProbePlace,
  type TemperatureRise,
  type TemperatureRiseFound,
} from './heatRise.ts';
export { airflowFromHood, type Hood } from './hood.ts';
export { type AirThere, type Gauge, manometer, type ShownAs } from './instruments.ts';
export { airflowLimits, practice } from './limits.ts';
export { type AirflowMethod, airflowMethods } from './methods.ts';
export { type AtAirflow, airflowFactors, atOtherAirflows, atOtherAirflowsByCoil } from './moreOrLess.ts';
export { airflowPerTon, type PerTon, type PerTonName, type PerTonRange } from './perTon.ts';
export { airflowFromPressureMatch, type PressureMatch, type PressureMatchFound } from './pressureMatch.ts';
export { airflowFromReadout, type Readout } from './readout.ts';
export { airflowFromTraverse, type Traverse, type TraverseFound } from './traverse.ts';
export type { Again, Straight } from './traverseChecks.ts';
export {
  type LineCount,
  linesFor,
  logLinear,
  logTchebycheff,
  type PointCount,
  pointsFor,
  type Section,
  type TraverseLine,
  type TraversePoint,
  type TraversePoints,
  traversePoints,
} from './traversePoints.ts';
export type { Anemometer } from './velocity.ts';
export { airflowWays, middleOfWays, type Unsure, type Way, type WayName } from './ways.ts';
