import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { refused, source } from '../jobStore.ts';
import { lazy } from '../lazy.tsx';
import { noticed } from '../opening.ts';
import { Chart } from './Chart.tsx';
import { Folds } from './Folds.tsx';
import { ownProcess } from './own.ts';
import { Reading } from './Reading.tsx';
import { Steps } from './Steps.tsx';
import { refusedLink, start } from './start.ts';
import { Title } from './Title.tsx';
import { Toolbar } from './Toolbar.tsx';
import { inClass } from './view.ts';

const AskCopy = lazy(() => import('../AskCopy.tsx').then((module) => module.AskCopy));
const Notices = lazy(() => import('../Notices.tsx').then((module) => module.Notices));
const RegionNote = lazy(() => import('./late/RegionNote.tsx').then((module) => module.RegionNote));
const Visitor = lazy(() => import('./late/index.ts').then((late) => late.Visitor));
const Lesson = lazy(() => import('./lesson/Lesson.tsx').then((module) => module.Lesson));

/** The air chart: the picture, what can be read from it, its points and its processes. In class it is a question instead. */
export function AirChart({ children }: { children?: ComponentChildren }) {
  useEffect(start, []);
  if (inClass.value !== null) return <Lesson />;
  return (
    <div class="air">
      <div class="air-main">
        {noticed.value && <Notices />}
        {children}
        {(source.value === 'visitor' || refusedLink.value) && <Visitor />}
        <figure class="air-figure">
          <Title />
          <Chart />
          <Toolbar />
          {ownProcess.value?.uncertainty?.entering && <RegionNote />}
        </figure>
        <Reading />
      </div>
      <Steps />
      <Folds />
      {refused.value && <AskCopy />}
    </div>
  );
}
