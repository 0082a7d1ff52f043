import { within } from './errors.ts';
import { limits } from './limits.ts';
import { lineFactor } from './lineSetFactor.ts';
import { lineSetLimits } from './lineSetLimits.ts';
import type { LineCaution, LineRun, LineSet, LineSetInput, MakersLineLimits } from './lineSetTypes.ts';
import { liquidLine } from './liquidLine.ts';
import { refrigerantState } from './refrigerant.ts';
import { amount, prefixed } from './trace.ts';
import { insideDiameter } from './tubes.ts';
import type { Trace } from './types.ts';
import { fahrenheitDegree } from './units.ts';
import { oilReturn, vaporLine } from './vaporLine.ts';

/** Subcooling that should be left before the metering device, K: 2 °F. Common practice, no source. */
const littleSubcooling = 2 * fahrenheitDegree;

/**
 * What a line set does to a split system that is cooling: the drop of the vapour line and of the line in the rating, the
 * capacity that is left against the rating as a band, whether oil comes back, and what is left of the subcooling.
 *
 * Nothing is worked out (`applies` false, with the `reason`) for packaged units, which have no lines on site, nor where the
 * metering device stands in the outdoor unit; there only the maker's factor is taken. The maker's factor outranks ours
 * everywhere, and beyond the maker's length or lift there is none. Heat that comes through the insulation is not in it.
 *
 * Throws a `CalcError` for what is outside `lineSetLimits`, an `unknown` tube or refrigerant, a tube that cannot carry so much
 * (`vaporDrop`), or a pressure beyond the rows of the refrigerant.
 */
export function lineSet({ equipment, metering, maker, run }: LineSetInput, t?: Trace): LineSet {
  checkMaker(maker);
  const reason = equipment === 'packaged' ? 'packaged' : metering === 'outdoors' ? 'meteringOutdoors' : null;
  const beyond = run && reason !== 'packaged' ? beyondMaker(run, maker) : [];
  const bare: LineSet = {
    applies: reason === null,
    reason,
    massFlow: null,
    factor: beyond.length > 0 ? null : lineFactor(maker, null),
    vapor: null,
    rated: null,
    liquid: null,
    oilReturn: null,
    cautions: beyond,
  };
  if (reason !== null || run === null) return bare;
  checkRun(run);
  return { ...bare, ...workedOut(run, maker, beyond, t) };
}

function workedOut(run: LineRun, maker: MakersLineLimits, beyond: readonly LineCaution[], t?: Trace): Partial<LineSet> {
  const { refrigerant, lift, length, fittings } = run;
  const entering = refrigerantState(refrigerant, { dewPoint: run.evaporating, superheat: run.superheat });
  const subcooling = run.subcooling ?? 0;
  const leaving = refrigerantState(refrigerant, { bubblePoint: run.liquidTemperature + subcooling, subcooling });
  const massFlow = run.capacity / (entering.enthalpy - leaving.enthalpy);
  t?.({
    id: 'lineSet.massFlow',
    equation: 'ṁ = Q/(h₁ − h₃)',
    puts: [
      amount('Q', 'power', run.capacity),
      amount('h₁', 'enthalpy', entering.enthalpy),
      amount('h₃', 'enthalpy', leaving.enthalpy),
    ],
    gives: amount('ṁ', 'massFlow', massFlow),
    source: 'definition',
  });
  const wide = insideDiameter(run.vaporTube);
  const ratedWide = insideDiameter(run.ratedVaporTube);
  const narrow = insideDiameter(run.liquidTube);
  const flow = { refrigerant, massFlow };
  const rated = vaporLine(
    { ...flow, diameter: ratedWide, length: run.ratedLength, lift: 0 },
    entering,
    prefixed(t, 'lineRated'),
  );
  const vapor = vaporLine({ ...flow, diameter: wide, length: length + fittings, lift }, entering, t);
  // The straight length that counts for a fitting goes with the diameter of the tube.
  const liquidRun = { ...flow, diameter: narrow, length: length + (fittings * narrow) / wide, lift };
  const liquid = run.subcooling === null ? null : liquidLine(liquidRun, leaving, prefixed(t, 'lineLiquid'));
  const oil = oilReturn(vapor.velocity, lift);
  const found: readonly (readonly [LineCaution, boolean])[] = [
    ['otherVaporTube', wide !== ratedWide],
    ['liquidFlashes', liquid?.flashes === true],
    ['littleSubcooling', liquid !== null && !liquid.flashes && liquid.subcoolingLeft < littleSubcooling],
    ['viscosityEstimated', entering.viscosityWithin > 0.05],
  ];
  return {
    massFlow,
    vapor,
    rated,
    liquid,
    oilReturn: oil,
    factor: beyond.length > 0 ? null : lineFactor(maker, vapor.density / rated.density, t),
    cautions: [
      ...beyond,
      ...(oil === 'carried' ? [] : [oil]),
      ...found.flatMap(([code, holds]) => (holds ? [code] : [])),
    ],
  };
}

function beyondMaker({ length, lift }: LineRun, maker: MakersLineLimits): readonly LineCaution[] {
  const tooLong = maker.maximumLength !== null && length > maker.maximumLength;
  const tooHigh = maker.maximumLift !== null && Math.abs(lift) > maker.maximumLift;
  return [...(tooLong ? (['beyondMakersLength'] as const) : []), ...(tooHigh ? (['beyondMakersLift'] as const) : [])];
}

function checkMaker({ factor, maximumLength, maximumLift }: MakersLineLimits): void {
  if (factor !== null) within('maker.factor', factor, lineSetLimits.factor);
  if (maximumLength !== null) within('maker.maximumLength', maximumLength, lineSetLimits.length);
  if (maximumLift !== null) within('maker.maximumLift', maximumLift, lineSetLimits.length);
}

function checkRun(run: LineRun): void {
  within('capacity', run.capacity, limits.capacity);
  within('evaporating', run.evaporating, lineSetLimits.evaporating);
  within('superheat', run.superheat, lineSetLimits.superheat);
  within('liquidTemperature', run.liquidTemperature, lineSetLimits.liquidTemperature);
  if (run.subcooling !== null) within('subcooling', run.subcooling, lineSetLimits.subcooling);
  within('lift', run.lift, lineSetLimits.lift);
  // A line cannot be shorter than what it climbs.
  within('length', run.length, [Math.abs(run.lift), lineSetLimits.length[1]]);
  within('ratedLength', run.ratedLength, lineSetLimits.length);
  within('fittings', run.fittings, lineSetLimits.length);
}
