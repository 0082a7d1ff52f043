import { traceAirflowStep } from './airflowStep.ts';
import { standardPressureAtSeaLevel } from './constants.ts';
import { dryOut } from './dryOut.ts';
import type { Chain, ExpectationConditions } from './expectationChain.ts';
import { traceRated } from './ratedTrace.ts';
import type { SourceKey } from './sources.ts';
import { amount } from './trace.ts';
import type { RatingTable, Trace } from './types.ts';

/** The working of an expectation: every step that applies, from the reading of the table on. */
export function traceChain(table: RatingTable, conditions: ExpectationConditions, chain: Chain, t: Trace): void {
  const { steps } = chain;
  const { flow, line, altitude, inside, blowerPower } = chain.factors;
  const { indoorMatch } = table.multipliers;
  traceSeaLevelFlow(conditions, chain, t);
  traceRated(table, { ...conditions, dryAirFlow: chain.seaLevelFlow }, chain.place, chain.printed, t);
  traceDryCoil(conditions, chain, t);
  const printed = steps.atTemperatures === chain.printed ? 'Q' : 'Q₀';
  if (indoorMatch !== null) {
    multiplied(t, 'indoorMatch', [printed, steps.atTemperatures], indoorMatch, 'Q₁', 'makersTable');
  }
  const matched = indoorMatch === null ? printed : 'Q₁';
  if (flow.applies) traceAirflowStep(table, chain.seaLevelFlow as number, flow, [matched, steps.matched], inside, t);
  const reading = flow.applies ? 'Q₂' : matched;
  t({
    id: 'expectation.gross',
    equation: `Q₃ = ${reading} + Pᵣ`,
    puts: [amount(reading, 'power', steps.atAirflow), amount('Pᵣ', 'power', inside)],
    gives: amount('Q₃', 'power', steps.gross),
    source: 'coilModel',
  });
  if (line !== null) multiplied(t, 'lineSet', ['Q₃', steps.gross], line.factor, 'Q₄', line.source);
  const lined = line === null ? 'Q₃' : 'Q₄';
  const thinner = steps.here / steps.lined;
  if (thinner !== 1) multiplied(t, 'altitude', [lined, steps.lined], thinner, 'Q₅', altitude.source);
  const here = thinner === 1 ? lined : 'Q₅';
  t({
    id: 'expectation.net',
    equation: `Q₆ = ${here} − Pᵦ`,
    puts: [amount(here, 'power', steps.here), amount('Pᵦ', 'power', blowerPower)],
    gives: amount('Q₆', 'power', steps.net),
    source: 'coilModel',
  });
}

/** Where the coil turns dry, if it is; and what that, or the dry bulb of a dry row, makes of the reading. */
function traceDryCoil({ enteringDryBulb }: ExpectationConditions, chain: Chain, t: Trace): void {
  const { dryCoil: found, printed, pressure, flowHere } = chain;
  const { atTemperatures, here } = chain.steps;
  if (found?.coil.dry) {
    const { bypassFactor } = found.coil;
    const air = { dryBulb: enteringDryBulb as number, dryAirFlow: flowHere as number };
    dryOut({ ...air, total: here, bypassFactor, pressure }, t);
  }
  if (atTemperatures === printed) return;
  t({
    id: 'expectation.dryCoil',
    equation: 'Q₀ = Q + ΔQ',
    puts: [amount('Q', 'power', printed), amount('ΔQ', 'power', atTemperatures - printed)],
    gives: amount('Q₀', 'power', atTemperatures),
    source: 'coilModel',
  });
}

/** The mass that the measured volume would hold at sea level: only where the pressure is another. */
function traceSeaLevelFlow(conditions: ExpectationConditions, { seaLevelFlow = 0, pressure }: Chain, t: Trace): void {
  const { dryAirFlow = 0 } = conditions;
  if (dryAirFlow === seaLevelFlow) return;
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
