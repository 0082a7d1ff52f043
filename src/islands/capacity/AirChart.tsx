import { useMemo } from 'preact/hooks';
import { describe } from '~/charts/moistAir/describe.ts';
import { chartLines, firstFamilies } from '~/charts/moistAir/families.ts';
import { chartFrame } from '~/charts/moistAir/frame.ts';
import { MoistAirGround } from '~/charts/moistAir/MoistAirGround.tsx';
import { Process } from '~/charts/moistAir/Process.tsx';
import { type ChartProcess, pointsOf } from '~/charts/moistAir/process.ts';
import { processBoxes } from '~/charts/moistAir/processDrawing.ts';
import { processWords } from '~/charts/moistAir/processWords.ts';
import { href } from '~/parts/href.ts';
import { results } from '~/words/en/results.ts';
import { jobProcess } from '../jobProcess.ts';
import { regionText } from '../regionText.ts';
import { capacityEnds } from '../show.ts';
import { assessment, system } from '../store.ts';
import { isDesk } from './model.ts';

/** What the coil does to the air, on the chart of this job's own pressure. */
export function AirChart() {
  const range = assessment.value.ranges.total;
  return (
    <div class="sheet-air-chart">
      <ProcessChart width={isDesk.value ? 600 : 358} />
      <p class="note">
        {range && `${results.chartRange(...capacityEnds(range.interval))} `}
        {regionText()} <a href={href('/worksheets/moist-air/')}>{results.wholeChart}</a>
      </p>
    </div>
  );
}

/** The process of the job alone, drawn for a width. */
export function ProcessChart({ width, height }: { width: number; height?: number }) {
  const process = jobProcess.value;
  return process && <Drawn process={process} width={width} height={height} />;
}

function Drawn({ process, width, height }: { process: ChartProcess; width: number; height: number | undefined }) {
  const { pressure, measured } = assessment.value;
  const shownIn = system.value;
  const { frame, lines } = useMemo(() => {
    const paper = chartFrame({ system: shownIn, pressure, width, height, view: 'process', around: pointsOf(process) });
    const taken = processBoxes(paper, process, processWords(shownIn, process));
    return { frame: paper, lines: chartLines(paper, firstFamilies, taken) };
  }, [shownIn, pressure, width, height, process]);
  const said = describe(frame, process.entering, process.leaving, measured.ok ? measured.value : null);
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${frame.width} ${frame.height}`} role="img" aria-label={said}>
      <MoistAirGround frame={frame} lines={lines} />
      <Process frame={frame} {...process} />
    </svg>
  );
}
