import { useState } from 'preact/hooks';
import { href } from '~/parts/href.ts';
import { airChart } from '~/words/en/moistAir.ts';
import { lesson } from '~/words/en/moistAirLesson.ts';
import { take } from '~/words/en/moistAirTake.ts';
import { lazy } from '../lazy.tsx';
import { PointTable } from './PointTable.tsx';
import { inClass } from './view.ts';

const TakeAway = lazy(() => import('./TakeAway.tsx').then((module) => module.TakeAway));

/** What is seldom needed: the points as a table, files and links, questions for a class. */
export function Folds() {
  return (
    <section class="folds">
      <PointTable />
      <TakeFold />
      <details class="fold">
        <summary>{lesson.fold}</summary>
        <p>{lesson.lead}</p>
        <p class="tools">
          <button
            type="button"
            class="plain-button"
            onClick={() => {
              inClass.value = 1;
            }}
          >
            {lesson.begin}
          </button>
          <a href={href('/worksheets/moist-air/blank/')}>{airChart.blank}</a>
        </p>
      </details>
    </section>
  );
}

/** Fetched when it is opened for the first time. */
function TakeFold() {
  const [seen, see] = useState(false);
  return (
    <details class="fold" onToggle={(event) => event.currentTarget.open && see(true)}>
      <summary>{take.fold}</summary>
      {seen && <TakeAway />}
    </details>
  );
}
