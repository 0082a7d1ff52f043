export * from './airflow/index.ts';
export { type Apparatus, apparatus, type CoilProcess } from './apparatus.ts';
export { assess } from './assess.ts';
export { standardPressure } from './atmosphere.ts';
export { blowerHeat, blowerInside, defaultBlower, defaultBlowerPower } from './blowerHeat.ts';
export { type CoilReadings, coilLoad, coilProcess } from './coilLoad.ts';
export { bypassAtFlow, type CoilDuty, type LeavingAir, leavingAir, ratedApparatus } from './coilModel.ts';
export { type Alignment, alignClocks, type ProbeLog, pairLogs } from './confidence/alignClocks.ts';
export { budget, type Model } from './confidence/budget.ts';
export {
  type Compared,
  compareProbes,
  type ProbePair,
  type ProbeReading,
} from './confidence/compareProbes.ts';
export { type Catch, type CondensateCheck, condensateCheck, usualCatch } from './confidence/condensate.ts';
export { type Conformance, conformance, type Measured } from './confidence/conformance.ts';
export { type Evidence, type Explanation, explanations } from './confidence/explanations.ts';
export { type LogColumn, logColumns } from './confidence/logColumns.ts';
export { probeClasses } from './confidence/probeClasses.ts';
export { type Simulated, type SimulateOptions, simulate } from './confidence/simulate.ts';
export {
  type Drawn,
  type DrawOptions,
  type SimulatedAssessment,
  simulateAssessment,
} from './confidence/simulateAssessment.ts';
export { type Log, type NotSteady, type Steadiness, steady } from './confidence/steady.ts';
export { type SteadyRule, steadyRule } from './confidence/steadyRule.ts';
export * from './constants.ts';
export { coolingCurves, flowFactorOf, temperatureFactor } from './coolingCurves.ts';
export { dewPoint } from './dewPoint.ts';
export { type Airflow, dryAirFlow, standardVolumeFlow } from './dryAirFlow.ts';
export { type DryOut, type DryOutArguments, dryOut } from './dryOut.ts';
export { atticTemperatures, type DuctRun, type Ducts, ductGain } from './ductGain.ts';
export { emptyRating } from './emptyRating.ts';
export { emptyTest } from './emptyTest.ts';
export { enhancementFactor } from './enhancement.ts';
export { enthalpy } from './enthalpy.ts';
export { CalcError, type CalcErrorCode, toProblem, within } from './errors.ts';
export { expectedCapacity, expectedTotal } from './expectation.ts';
export { type ExpectationConditions, tableRange } from './expectationChain.ts';
export { type GenericRating, genericRating } from './genericRating.ts';
export { humidityRatio, saturationHumidityRatio } from './humidityRatio.ts';
export { leaveOut } from './leaveOut.ts';
export { limits } from './limits.ts';
export { lineSet } from './lineSet.ts';
export { shareOfLoss } from './lineSetFactor.ts';
export { lineSetLimits, ratedLineLength } from './lineSetLimits.ts';
export type * from './lineSetTypes.ts';
export { type AirStream, mix } from './mix.ts';
export { type MoistAirInput, moistAir } from './moistAir.ts';
export { drawnCopper, frictionFactor, type PipeDrop, type PipeFlow, pipeDrop } from './pipeDrop.ts';
export { type Beyond, rated } from './rated.ts';
export { noMultipliers, type RatingOptions, ratingTable } from './ratingTable.ts';
export {
  bubblePointOf,
  dewPointOf,
  type Refrigerant,
  type RefrigerantPlace,
  type RefrigerantState,
  refrigerantState,
  refrigerants,
  throttled,
} from './refrigerant.ts';
export { remarkRules } from './remarks.ts';
export { saturationPressure } from './saturation.ts';
export { type Known, type Source, type SourceKey, sources } from './sources.ts';
export { specificVolume } from './specificVolume.ts';
export { axisOrder } from './tableCheck.ts';
export { tableRemarks } from './tableRemarks.ts';
export { temperatureRise } from './temperatureRise.ts';
export { insideDiameter, type Tube, tubes } from './tubes.ts';
export type * from './types.ts';
export * from './units.ts';
export { humidityRatioFromWetBulb, wetBulb } from './wetBulb.ts';
