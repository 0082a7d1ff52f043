import { sourceLabels } from '~/calc/sourceLabels.ts';
import type { Amount, Step } from '~/calc/types.ts';
import { displayUnit, fromSi, type UnitKey } from '~/job/units.ts';
import { stepWords } from '~/words/en/working.ts';
import { system } from './jobStore.ts';
import { inUnitOf, joined, type Shown } from './show.ts';

/** SI units in which the package works, where they differ from those that an SI reader is shown. */
const worked: Readonly<Partial<Record<Amount['kind'], UnitKey>>> = { massFlow: 'kgPerS', power: 'watt' };

const inSi = (amount: Amount) => joined(amountIn(amount, worked[amount.kind] ?? displayUnit[amount.kind].si));
const inOwn = (amount: Amount) => joined(amountIn(amount, displayUnit[amount.kind].ip));

/** Steps of working in their order: the equation, the numbers put in, what it gives, and where it stands. */
export function WorkingLines({ steps }: { steps: readonly Step[] }) {
  return (
    <ol class="working-list">
      {steps.map((step, index) => (
        <Line key={index} step={step} />
      ))}
    </ol>
  );
}

function Line({ step }: { step: Step }) {
  const result = inSi(step.gives);
  const own = system.value === 'ip' ? inOwn(step.gives) : result;
  return (
    <li>
      <p class="working-name">
        <b>{stepWords(step.id)}</b> <cite>{sourceLabels[step.source]}</cite>
      </p>
      <p class="working-equation">{step.equation}</p>
      <p class="working-puts">
        {step.puts.map((put, index) => (
          <span key={index}>
            {put.symbol} = {inSi(put)}
          </span>
        ))}
      </p>
      <p class="working-gives">
        {step.gives.symbol} = <b>{result}</b>
        {own !== result && ` = ${own}`}
      </p>
    </li>
  );
}

/** Digits that working shows of each unit: enough to follow the arithmetic by hand. */
const workingDecimals: Readonly<Partial<Record<UnitKey, number>>> = {
  degF: 2,
  degC: 2,
  degFStep: 2,
  degCStep: 2,
  percent: 2,
  watt: 0,
  btuh: 0,
  kgPerS: 4,
  lbPerHour: 2,
  gPerKg: 3,
  grainsPerLb: 2,
  m3PerKg: 4,
  ft3PerLb: 3,
  count: 0,
  fpm: 0,
  inch: 4,
  mm: 4,
  microPaS: 2,
  kgPerM3: 4,
  kpa: 3,
  one: 4,
};

/** An amount of working. A constant too small for its decimals is written in powers of ten. */
function amountIn({ value }: Amount, unit: UnitKey): Shown {
  const shown = inUnitOf(value, unit, workingDecimals[unit] ?? 3);
  const lost = value !== 0 && Math.abs(fromSi(value, unit)) < 0.001;
  return lost ? { ...shown, number: powers(fromSi(value, unit)) } : shown;
}

function powers(value: number): string {
  const [digits = '', exponent = ''] = value.toExponential(3).split('e');
  const raised = exponent
    .replace(/\d/g, (digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)] ?? '')
    .replace('-', '⁻')
    .replace('+', '');
  return `${digits.replace('-', '−')} · 10${raised}`;
}
