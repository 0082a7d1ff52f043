import { useRef } from 'preact/hooks';
import { MoistAirGround } from '~/charts/moistAir/MoistAirGround.tsx';
import { Shapes, Strokes, Words } from '~/charts/Shapes.tsx';
import { airChart } from '~/words/en/moistAir.ts';
import { CrossHair } from './CrossHair.tsx';
import { drawnAlone, listedProcess, markOf, namesOf, ownDrawing } from './drawings.ts';
import { Handle } from './Handle.tsx';
import { Paper } from './Paper.tsx';
import { points, processes } from './points.ts';
import { cross, frame, holding, lines } from './view.ts';

/** The chart: its lines, which stay, and above them what moves. */
export function Chart() {
  const svg = useRef<SVGSVGElement>(null);
  const paper = frame.value;
  const movable = points.value.filter((point) => point.movable);
  return (
    <Paper
      frame={paper}
      name={airChart.chartName}
      svg={svg}
      onPlace={(air) => {
        if (!holding.value) cross.value = air;
      }}
    >
      <Ground />
      <Processes />
      <Points />
      <CrossHair svg={svg} />
      {paper && movable.map((point) => <Handle key={point.key} point={point} frame={paper} svg={svg} />)}
    </Paper>
  );
}

/** What does not move. It is drawn anew only when its lines are. */
function Ground() {
  const paper = frame.value;
  return paper && <MoistAirGround frame={paper} lines={lines.value} />;
}

function Processes() {
  const paper = frame.value;
  if (!paper) return null;
  const own = ownDrawing(paper);
  return (
    <g class="air-processes" aria-hidden="true">
      {processes.value.map((process) => (
        <g key={process.key}>
          <Shapes of={listedProcess(paper, process)} />
        </g>
      ))}
      {own && (
        <g key="own">
          <Shapes of={own} />
        </g>
      )}
    </g>
  );
}

function Points() {
  const paper = frame.value;
  if (!paper) return null;
  const alone = drawnAlone(ownDrawing(paper) !== null);
  return (
    <g class="air-points" aria-hidden="true">
      {alone.map((point) => (
        <g key={point.key} data-point={point.key}>
          <Strokes of={markOf(paper, point)} />
        </g>
      ))}
      <Words of={namesOf(paper, alone)} />
    </g>
  );
}
