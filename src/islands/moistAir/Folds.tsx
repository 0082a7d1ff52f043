import { href } from '~/parts/href.ts';
import { airChart } from '~/words/en/moistAir.ts';
import { LateFold } from '../LateFold.tsx';
import { lazy } from '../lazy.tsx';
import { inClass } from './view.ts';

const PointTable = lazy(() => import('./late/index.ts').then((late) => late.PointTable));
const TakeAway = lazy(() => import('./late/TakeAway.tsx').then((module) => module.TakeAway));

/** What is seldom needed: the points as a table, files and links, questions for a class. */
export function Folds() {
  return (
    <section class="folds">
      <PointTable />
      <LateFold summary={airChart.takeFold} kind="air-take">
        <TakeAway />
      </LateFold>
      <details class="fold air-class">
        <summary>{airChart.classFold}</summary>
        <p>{airChart.classLead}</p>
        <p class="tools">
          <button
            type="button"
            class="plain-button"
            onClick={() => {
              inClass.value = 1;
            }}
          >
            {airChart.classBegin}
          </button>
          <a href={href('/worksheets/moist-air/blank/')}>{airChart.blank}</a>
        </p>
      </details>
    </section>
  );
}
