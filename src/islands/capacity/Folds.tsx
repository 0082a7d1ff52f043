import { useState } from 'preact/hooks';
import { href } from '~/parts/href.ts';
import { results } from '~/words/en/results.ts';
import { sureFigures } from '~/words/en/sureFigures.ts';
import { LateFold } from '../LateFold.tsx';
import { lazy } from '../lazy.tsx';
import { inUnitOf, joined } from '../show.ts';
import { assessment, interpreted, source, system } from '../store.ts';
import { Derates } from './Derates.tsx';
import { workingAsked } from './model.ts';
import { verdict } from './sure/verdict.ts';

const LockFigures = lazy(() => import('./Lock.tsx').then((module) => module.LockFigures));
const Figures = lazy(() => import('./sure/Figures.tsx').then((module) => module.Figures));
const SendLink = lazy(() => import('./SendLink.tsx').then((module) => module.SendLink));
const WhereToLook = lazy(() => import('./sure/WhereToLook.tsx').then((module) => module.WhereToLook));
const Working = lazy(() => import('./Working.tsx').then((module) => module.Working));

/** What stands behind the results, folded until somebody asks. */
export function Folds() {
  const { expected, ratio } = assessment.value;
  const nominal = interpreted.value.test.nominalCapacity;
  return (
    <section class="folds">
      <p class="tools">
        <a href={href(source.value === 'demo' ? '/reports/view/?demo' : '/reports/view/')}>{results.report}</a>
      </p>
      {expected.ok && (
        <details class="fold">
          <summary>{nominal === null ? results.whyNotPlain : results.whyNot(nominalText(nominal))}</summary>
          <Derates nominal={nominal} />
          <p class="note">
            <a href={href('/worksheets/expected/#why-not')}>{results.whyNotDrawn}</a>
          </p>
        </details>
      )}
      {ratio.ok && verdict.value?.outcome !== 'meets' && (
        <LateFold summary={results.whenShort}>
          <WhereToLook />
        </LateFold>
      )}
      <LateFold summary={ratio.ok ? sureFigures.fold : sureFigures.foldWithout}>
        <Figures />
      </LateFold>
      <WorkingFold />
      <LateFold summary={results.lockFold} kind="lock-fold">
        <LockFigures />
      </LateFold>
      <LateFold summary={results.linkFold} kind="send-link-fold">
        <SendLink />
      </LateFold>
    </section>
  );
}

const nominalText = (watts: number) =>
  joined(inUnitOf(watts, system.value === 'ip' ? 'btuh' : 'kw', system.value === 'ip' ? 0 : 1));

/** The working is fetched and drawn when it is opened for the first time, by its own key or from a result. */
function WorkingFold() {
  const [seen, setSeen] = useState(false);
  const asked = workingAsked.value !== null;
  return (
    <details
      class="fold"
      open={seen || asked}
      onToggle={(event) => {
        setSeen(event.currentTarget.open);
        if (!event.currentTarget.open) workingAsked.value = null;
      }}
    >
      <summary>{results.working}</summary>
      {(seen || asked) && <Working />}
    </details>
  );
}
