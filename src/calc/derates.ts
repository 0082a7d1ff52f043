import { bandAt } from './bandAt.ts';
import type { Chain, ExpectationConditions } from './expectationChain.ts';
import type { SourceKey } from './sources.ts';
import type { Derate, DerateCause, RatingTable } from './types.ts';

/** The steps of an expectation, each beginning where the one before it ended. One that does not apply has the factor 1. */
export function deratesOf(
  table: RatingTable,
  { nominal, certified }: ExpectationConditions,
  chain: Chain,
): readonly Derate[] {
  const reading = table.from === 'table' ? 'makersTable' : 'genericCurves';
  const { steps } = chain;
  const { line, altitude, flow, inside, blowerPower } = chain.factors;
  const start = nominal ?? certified ?? steps.atTemperatures;
  const rating = certified ?? start;
  const readingBand = bandAt(table, chain.place) + (chain.dryCoil?.smear ?? 0);
  return [
    step('certified', start, rating, 'certifiedRating', certified !== undefined),
    step('temperatures', rating, steps.atTemperatures, reading, true, readingBand),
    step('indoorMatch', steps.atTemperatures, steps.matched, 'makersTable', table.multipliers.indoorMatch !== null),
    step('airflow', steps.matched, steps.atAirflow, flow.source, flow.applies),
    step('blowerInside', steps.atAirflow, steps.gross, 'coilModel', inside > 0),
    step(
      'lineSet',
      steps.gross,
      steps.lined,
      line?.source ?? 'makersTable',
      line !== null,
      line === null ? 0 : (line.high - line.low) / 2 / line.factor,
    ),
    step('altitude', steps.lined, steps.here, altitude.source, altitude.applies, altitude.band),
    step('blowerHere', steps.here, steps.net, 'coilModel', blowerPower > 0),
  ];
}

function step(
  cause: DerateCause,
  before: number,
  after: number,
  source: SourceKey,
  applies: boolean,
  band = 0,
): Derate {
  return { cause, applies, factor: after / before, before, after, band, source };
}
