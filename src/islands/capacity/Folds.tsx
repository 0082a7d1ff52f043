import { useState } from 'preact/hooks';
import { sources } from '~/calc/sources.ts';
import { Ledger, type LedgerLine } from '~/parts/Ledger.tsx';
import { answer, derateNames } from '~/words/en/answer.ts';
import { lazy } from '../lazy.tsx';
import { capacity, inUnitOf, joined } from '../show.ts';
import { assessment, interpreted, system } from '../store.ts';

const Working = lazy(() => import('./Working.tsx').then((module) => module.Working));

/** What stands behind the answer, folded until somebody asks. */
export function Folds() {
  const { expected } = assessment.value;
  const nominal = interpreted.value.test.nominalCapacity;
  return (
    <section class="folds">
      {expected.ok && (
        <details class="fold">
          <summary>{nominal === null ? answer.whyNotPlain : answer.whyNot(nominalText(nominal))}</summary>
          <Derates nominal={nominal} />
        </details>
      )}
      <Opened summary={answer.working}>
        <Working />
      </Opened>
    </section>
  );
}

const nominalText = (watts: number) =>
  joined(inUnitOf(watts, system.value === 'ip' ? 'btuh' : 'kw', system.value === 'ip' ? 0 : 1));

/** A fold whose inside is fetched and drawn when it is opened for the first time. */
function Opened({ summary, children }: { summary: string; children: preact.ComponentChildren }) {
  const [seen, setSeen] = useState(false);
  return (
    <details class="fold" onToggle={(event) => event.currentTarget.open && setSeen(true)}>
      <summary>{summary}</summary>
      {seen && children}
    </details>
  );
}

/** From the nameplate to the expectation, one line a step. */
function Derates({ nominal }: { nominal: number | null }) {
  const { expected } = assessment.value;
  if (!expected.ok) return null;
  const lines: LedgerLine[] = nominal === null ? [] : [{ name: answer.nameplate, ...capacity(nominal) }];
  for (const { cause, factor, before, after, source } of expected.value.derates) {
    const change =
      Math.abs(factor - 1) < 5e-5 && cause !== 'temperatures' ? { number: answer.noStep, unit: '' } : capacity(after);
    const by = cause === 'temperatures' ? '' : ` (${signed(after - before)})`;
    lines.push({
      name: `${derateNames[cause] ?? cause}${change.unit === '' ? '' : by}`,
      ...change,
      source: sources[source].label,
    });
  }
  lines.push({ name: answer.itShould, ...capacity(expected.value.total), sum: true });
  return <Ledger caption={answer.whyNotPlain} lines={lines} />;
}

function signed(watts: number): string {
  const text = joined(inUnitOf(Math.abs(watts), system.value === 'ip' ? 'btuh' : 'kw'));
  return `${watts < 0 ? '−' : '+'}${text}`;
}
