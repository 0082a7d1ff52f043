import { Ledger, type LedgerLine } from '~/parts/Ledger.tsx';
import { lineResults } from '~/words/en/lineSetResults.ts';
import { system } from '../jobStore.ts';
import { inUnitOf, ofKind, type Shown } from '../show.ts';
import { found, lines, share } from './model.ts';

const pressure = (pascal: number): Shown => ofKind('pressure', pascal);
/** To a tenth: lines cost parts of a degree. */
const degrees = (kelvin: number): Shown => inUnitOf(kelvin, system.value === 'ip' ? 'degFStep' : 'degCStep', 1);
const velocity = (metres: number): Shown =>
  system.value === 'ip' ? inUnitOf(Math.round(metres / 0.0508) * 0.0508, 'fpm', 0) : inUnitOf(metres, 'mPerS', 1);

/** What the vapour line takes, against the line of the rating. */
export function VaporLedger() {
  const { vapor, rated, factor, massFlow } = found.value ?? {};
  if (!vapor || !rated) return null;
  const [number = '', unit = ''] = factor ? share(factor.factor).split('\u00a0') : [];
  const ledger: LedgerLine[] = [
    { name: lineResults.flow, ...ofKind('massFlow', massFlow ?? 0) },
    { name: lineResults.velocity, ...velocity(vapor.velocity) },
    { name: lineResults.friction, ...pressure(vapor.drop) },
    { name: lineResults.dewDrop, ...degrees(vapor.dewDrop) },
    { name: lineResults.ratedDewDrop, ...degrees(rated.dewDrop) },
    ...(factor ? [{ name: lineResults.left, number, unit, sum: true }] : []),
  ];
  return <Ledger caption={lineResults.vapor} lines={ledger} />;
}

/** What is left of the subcooling on its way to the metering device. */
export function LiquidLedger() {
  const { liquid } = found.value ?? {};
  const run = lines.value.input?.run;
  if (!liquid || !run) return <p>{lineResults.noLiquid}</p>;
  const lifted = { name: liquid.static < 0 ? lineResults.fallen : lineResults.lifted };
  const ledger: LedgerLine[] = [
    { name: lineResults.subcooling, ...degrees(run.subcooling ?? 0) },
    { name: lineResults.liquidFriction, ...pressure(liquid.friction) },
    ...(liquid.static === 0 ? [] : [{ ...lifted, ...pressure(Math.abs(liquid.static)) }]),
    { name: lineResults.subcoolingLeft, ...degrees(liquid.subcoolingLeft), sum: true },
  ];
  return <Ledger caption={lineResults.liquid} lines={ledger} />;
}
