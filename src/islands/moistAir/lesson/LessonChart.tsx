import { useRef } from 'preact/hooks';
import type { AirPoint } from '~/charts/moistAir/frame.ts';
import { MoistAirGround } from '~/charts/moistAir/MoistAirGround.tsx';
import { Shapes } from '~/charts/Shapes.tsx';
import { airChart } from '~/words/en/moistAir.ts';
import { lesson } from '~/words/en/moistAirLesson.ts';
import { predict } from '~/words/en/predict.ts';
import { Aim } from '../Aim.tsx';
import { Paper } from '../Paper.tsx';
import { airOfSpot } from '../points.ts';
import { spokenAir } from '../said.ts';
import { drawn, lines } from './drawn.ts';
import { frame, guess, question, shown, texts } from './model.ts';
import { figureOf } from './questions.ts';

/** The chart of a question, on which a guess by place is put. */
export function LessonChart() {
  const svg = useRef<SVGSVGElement>(null);
  const paper = frame.value;
  const now = question.value;
  const byPlace = figureOf[now.kind] === null && !shown.value;
  const put = (air: AirPoint) => {
    texts.value = {};
    guess.value = airOfSpot(air);
  };
  return (
    <figure class="lesson-chart">
      <Paper
        frame={paper}
        name={airChart.chartName}
        svg={svg}
        onPlace={byPlace ? (air, over) => !over && put(air) : undefined}
      >
        {paper && (
          <>
            <MoistAirGround frame={paper} lines={lines.value} />
            <Drawn />
            {byPlace && (
              <Aim
                frame={paper}
                svg={svg}
                air={guess.value ?? now.given[0]!}
                name={predict.guessName}
                said={guess.value ? spokenAir(guess.value, 'relativeHumidity') : lesson.say.place}
                away={guess.value === null}
                onMove={put}
              />
            )}
          </>
        )}
      </Paper>
    </figure>
  );
}

/** What is given, and what has been said and shown. */
function Drawn() {
  return (
    <g aria-hidden="true">
      <Shapes of={drawn.value} />
    </g>
  );
}
