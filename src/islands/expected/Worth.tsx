import { readTable } from '~/charts/surface/reading.ts';
import { changeText } from '~/charts/surface/scale.ts';
import { Ledger, type LedgerLine } from '~/parts/Ledger.tsx';
import { worthWords } from '~/words/en/expected.ts';
import { conditions, quantity, reading, scale, table } from './model.ts';
import { oneMore } from './said.ts';
import { type Axis, rangeOf } from './shown.ts';

const axes = ['outdoorDryBulb', 'enteringWetBulb', 'dryAirFlow', 'enteringDryBulb'] as const;

/** What one degree, or a little more air, changes the figure by at this place. */
export function Worth() {
  const lines = axes.flatMap(lineOf);
  if (lines.length === 0) return null;
  return (
    <section class="expected-worth" aria-labelledby="expected-worth">
      <h2 id="expected-worth">{worthWords.title}</h2>
      <Ledger caption={worthWords.ledger} lines={lines} />
    </section>
  );
}

function lineOf(axis: Axis): LedgerLine[] {
  const [of, at, now] = [table.value, conditions.value, reading.value?.[quantity.value] ?? null];
  if (!of || !at || now === null || at[axis] === undefined || !rangeOf(of, axis)) return [];
  const more = oneMore(axis);
  const moved = { ...at, [axis]: at[axis] + more.si };
  const { outdoorDryBulb, enteringWetBulb, ...air } = moved;
  const then = readTable(of, { outdoorDryBulb, enteringWetBulb }, air)?.[quantity.value] ?? null;
  const name = worthWords[axis](more.text);
  if (then === null) return [{ name, number: worthWords.unknown, unit: '' }];
  const [number = '', ...unit] = changeText(scale.value, Math.abs(then - now)).split('\u00a0');
  const sign = then >= now ? '+' : '−';
  return /[1-9]/.test(number)
    ? [{ name, number: `${sign}${number}`, unit: unit.join('\u00a0') }]
    : [{ name, number: worthWords.none, unit: '' }];
}
