import { sourceLabels } from '~/calc/sourceLabels.ts';
import type { Amount, Step } from '~/calc/types.ts';
import { displayUnit, type UnitKey } from '~/job/units.ts';
import { stepWords } from '~/words/en/working.ts';
import { system } from './jobStore.ts';
import { amountIn, joined } from './show.ts';

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
