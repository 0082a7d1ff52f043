import { useRef } from 'preact/hooks';
import type { MoistAir } from '~/calc/types.ts';
import { clipLine, onPlot } from '~/charts/clip.ts';
import type { AirPoint, ChartFrame } from '~/charts/moistAir/frame.ts';
import { MoistAirGround } from '~/charts/moistAir/MoistAirGround.tsx';
import { arrowStroke, type MarkKind, markStroke } from '~/charts/moistAir/marks.ts';
import { pointNames } from '~/charts/moistAir/pointNames.ts';
import { placeOf } from '~/charts/moistAir/process.ts';
import { Strokes, Words } from '~/charts/Shapes.tsx';
import { pathOf, type Stroke } from '~/charts/shapes.ts';
import { airChart } from '~/words/en/moistAir.ts';
import { lesson } from '~/words/en/moistAirLesson.ts';
import { Aim } from '../Aim.tsx';
import { Paper } from '../Paper.tsx';
import { airOfSpot } from '../points.ts';
import { spokenAir } from '../said.ts';
import { answerAir, frame, guess, lines, question, shown, texts } from './model.ts';
import { figureOf, type Question } from './questions.ts';

/** The chart of a question: what is given, the guess, and once it is shown the answer with the way that leads there. */
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
            <Drawn frame={paper} of={now} />
            {byPlace && (
              <Aim
                frame={paper}
                svg={svg}
                air={guess.value ?? now.given[0]!}
                name={lesson.guessName}
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

interface Placed {
  readonly air: MoistAir;
  readonly name: string;
  readonly mark: MarkKind;
}

function Drawn({ frame: paper, of }: { frame: ChartFrame; of: Question }) {
  const given = of.given.map(
    (air, index): Placed => ({ air, name: lesson.givenNames[of.kind][index] ?? '', mark: markFor(of, index) }),
  );
  const answer: Placed[] = shown.value
    ? [{ air: answerAir(of), name: lesson.resultNames[of.kind], mark: 'state' }]
    : [];
  const said: Placed[] = shown.value && guess.value ? [{ air: guess.value, name: lesson.guessName, mark: 'coil' }] : [];
  const all = [...given, ...answer, ...said].filter(({ air }) => onPlot(paper, placeOf(paper, air)));
  const size = paper.letter / 14;
  return (
    <g aria-hidden="true">
      <Strokes
        of={[
          ...(shown.value ? waysOf(paper, of) : []),
          ...all.map(({ air, mark }) => markStroke(mark, placeOf(paper, air), size)),
        ]}
      />
      <Words
        of={pointNames(
          paper,
          all.map(({ air, name }) => ({ place: placeOf(paper, air), name })),
        )}
      />
    </g>
  );
}

function markFor({ kind, given }: Question, index: number): MarkKind {
  if (kind === 'wetBulb' || kind === 'heating' || (kind === 'mixing' && index === 0)) return 'state';
  return kind === 'lessAir' && index === given.length - 1 ? 'supply' : 'return';
}

/** How the answer comes about. */
function waysOf(paper: ChartFrame, of: Question): Stroke[] {
  const to = answerAir(of);
  const starts = of.kind === 'lessAir' ? of.given.slice(0, 1) : of.given;
  return starts.flatMap((from): Stroke[] => {
    const line = clipLine(paper, placeOf(paper, from), placeOf(paper, to));
    if (!line) return [];
    const pen = of.kind === 'wetBulb' ? 'line-beyond' : 'line-step';
    return [{ pen, d: pathOf(line) }, ...arrowStroke(line[0], line[1], 0.6, paper.letter / 14)];
  });
}
