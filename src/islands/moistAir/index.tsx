import { useEffect } from 'preact/hooks';
import { AskCopy } from '../AskCopy.tsx';
import { lazy } from '../lazy.tsx';
import { Notices } from '../Notices.tsx';
import { Chart } from './Chart.tsx';
import { Folds } from './Folds.tsx';
import { Reading } from './Reading.tsx';
import { Steps } from './Steps.tsx';
import { start } from './start.ts';
import { Title } from './Title.tsx';
import { Toolbar } from './Toolbar.tsx';
import { Visitor } from './Visitor.tsx';
import { inClass } from './view.ts';

const Lesson = lazy(() => import('./lesson/Lesson.tsx').then((module) => module.Lesson));

/** The air chart: the picture, what can be read from it, its points and its processes. In class it is a question instead. */
export function AirChart() {
  useEffect(start, []);
  if (inClass.value !== null) return <Lesson />;
  return (
    <div class="air">
      <div class="air-main">
        <Notices />
        <Visitor />
        <figure class="air-figure">
          <Title />
          <Chart />
          <Toolbar />
        </figure>
        <Reading />
        <Folds />
      </div>
      <Steps />
      <AskCopy />
    </div>
  );
}
