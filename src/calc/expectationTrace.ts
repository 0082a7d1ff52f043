import { traceAirflowStep } from './airflowStep.ts';
import { blowerInside } from './blowerHeat.ts';
import { standardPressureAtSeaLevel } from './constants.ts';
import type { Chain, ExpectationConditions } from './expectationChain.ts';
import { traceRated } from './ratedTrace.ts';
import type { SourceKey } from './sources.ts';
import { amount } from './trace.ts';
import type { Installation, RatingTable, Trace } from './types.ts';

/** The working of an expectation: every step that applies, from the reading of the table on. */
export function traceChain(
  table: RatingTable,
  conditions: ExpectationConditions,
  installation: Installation,
  chain: Chain,
  t: Trace,
): void {
  const { flow, line, altitude } = chain;
  const { indoorMatch } = table.multipliers;
  traceSeaLevelFlow(conditions, chain, t);
  const read = chain.seaLevelFlow === undefined ? conditions : { ...conditions, dryAirFlow: chain.seaLevelFlow };
  traceRated(table, read, chain.place, chain.atTemperatures, t);
  if (indoorMatch !== null) multiplied(t, 'indoorMatch', ['Q', chain.atTemperatures], indoorMatch, 'Q₁', 'makersTable');
  const matched = indoorMatch === null ? 'Q' : 'Q₁';
  if (flow.applies) traceAirflowStep(table, chain.seaLevelFlow as number, flow, [matched, chain.matched], t);
  const reading = flow.applies ? 'Q₂' : matched;
  t({
    id: 'expectation.gross',
    equation: `Q₃ = ${reading} + Pᵣ`,
    puts: [amount(reading, 'power', chain.atAirflow), amount('Pᵣ', 'power', blowerInside(table))],
    gives: amount('Q₃', 'power', chain.gross),
    source: 'coilModel',
  });
  if (line !== null) multiplied(t, 'lineSet', ['Q₃', chain.gross], line.factor, 'Q₄', line.source);
  const lined = line === null ? 'Q₃' : 'Q₄';
  if (altitude.factor !== 1) multiplied(t, 'altitude', [lined, chain.lined], altitude.factor, 'Q₅', altitude.source);
  const here = altitude.factor === 1 ? lined : 'Q₅';
  t({
    id: 'expectation.net',
    equation: `Q₆ = ${here} − Pᵦ`,
    puts: [amount(here, 'power', chain.here), amount('Pᵦ', 'power', installation.blowerPower)],
    gives: amount('Q₆', 'power', chain.net),
    source: 'coilModel',
  });
}

/** The mass that the measured volume would hold at sea level: only where the pressure is another. */
function traceSeaLevelFlow({ dryAirFlow }: ExpectationConditions, { seaLevelFlow, pressure }: Chain, t: Trace): void {
  if (dryAirFlow === undefined || seaLevelFlow === undefined || dryAirFlow === seaLevelFlow) return;
  t({
    id: 'expectation.seaLevelFlow',
    equation: 'ṁ₀ = ṁ·p₀/p',
    puts: [
      amount('ṁ', 'massFlow', dryAirFlow),
      amount('p₀', 'pressure', standardPressureAtSeaLevel),
      amount('p', 'pressure', pressure),
    ],
    gives: amount('ṁ₀', 'massFlow', seaLevelFlow),
    source: 'definition',
  });
}

function multiplied(
  t: Trace,
  cause: string,
  [symbol, before]: readonly [string, number],
  factor: number,
  gives: string,
  source: SourceKey,
): void {
  t({
    id: `expectation.${cause}`,
    equation: `${gives} = ${symbol}·k`,
    puts: [amount(symbol, 'power', before), amount('k', 'ratio', factor)],
    gives: amount(gives, 'power', before * factor),
    source,
  });
}
