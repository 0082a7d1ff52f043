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
  const start = nominal ?? certified ?? chain.atTemperatures;
  const rating = certified ?? start;
  const { line, altitude, flow } = chain;
  const readingBand = bandAt(table, chain.place) + (chain.dryCoil?.smear ?? 0);
  return [
    step('certified', start, rating, 'certifiedRating', certified !== undefined),
    step('temperatures', rating, chain.atTemperatures, reading, true, readingBand),
    step('indoorMatch', chain.atTemperatures, chain.matched, 'makersTable', table.multipliers.indoorMatch !== null),
    step('airflow', chain.matched, chain.atAirflow, flow.source, flow.applies),
    step('blowerInside', chain.atAirflow, chain.gross, 'coilModel', chain.inside > 0),
    step(
      'lineSet',
      chain.gross,
      chain.lined,
      line?.source ?? 'makersTable',
      line !== null,
      line === null ? 0 : (line.high - line.low) / 2 / line.factor,
    ),
    step('altitude', chain.lined, chain.here, altitude.source, altitude.applies, altitude.band),
    step('blowerHere', chain.here, chain.net, 'coilModel', chain.blowerPower > 0),
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
