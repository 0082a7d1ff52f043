import { sourceLabels } from '~/calc/sourceLabels.ts';
import { Ledger, type LedgerLine } from '~/parts/Ledger.tsx';
import { derateNames, results } from '~/words/en/results.ts';
import { changeText, fine } from '../fine.ts';
import { assessment } from '../store.ts';

/** From the nameplate to the expectation, one line a step, to a figure more than the results so that the column adds up. */
export function Derates({ nominal }: { nominal: number | null }) {
  const { expected } = assessment.value;
  if (!expected.ok) return null;
  const lines: LedgerLine[] = nominal === null ? [] : [{ name: results.nameplate, ...fine(nominal) }];
  for (const { cause, factor, before, after, source } of expected.value.derates) {
    const words = derateNames[cause] ?? cause;
    const reads = cause === 'temperatures';
    if (!reads && Math.abs(factor - 1) < 5e-5) lines.push({ name: words, number: results.noStep, unit: '' });
    else {
      const by = reads ? '' : ` (${changeText(after - before)})`;
      lines.push({ name: <Named words={`${words}${by}`} source={sourceLabels[source]} />, ...fine(after) });
    }
  }
  lines.push({ name: results.itShould, ...fine(expected.value.total), sum: true });
  return <Ledger caption={results.whyNotPlain} lines={lines} />;
}

function Named({ words, source }: { words: string; source: string }) {
  return (
    <>
      {words} <small class="quiet">{source}</small>
    </>
  );
}
