import { useMemo } from 'preact/hooks';
import { describe } from '~/charts/moistAir/describe.ts';
import { chartLines, firstFamilies } from '~/charts/moistAir/families.ts';
import { chartFrame } from '~/charts/moistAir/frame.ts';
import { MoistAirGround } from '~/charts/moistAir/MoistAirGround.tsx';
import { Process } from '~/charts/moistAir/Process.tsx';
import { type ChartProcess, pointsOf } from '~/charts/moistAir/process.ts';
import { processBoxes } from '~/charts/moistAir/processDrawing.ts';
import { processWords } from '~/charts/moistAir/processWords.ts';
import type { ReadingUncertainty } from '~/charts/moistAir/region.ts';
import { href } from '~/parts/href.ts';
import { results } from '~/words/en/results.ts';
import { jobProcess } from '../jobProcess.ts';
import { assessment, interpreted, system } from '../store.ts';
import { isDesk } from './model.ts';

/** A limit is the half-width of a rectangular distribution; its standard uncertainty is that over the root of three (JCGM 100, 4.3.7). */
const standard = (limit: number) => limit / Math.sqrt(3);

/** What the coil does to the air, on the chart of this job's own pressure. */
export function AirChart() {
  const process = jobProcess.value;
  return (
    <div class="sheet-air-chart">
      {process && <Drawn process={process} />}
      <p class="note">
        <a href={href('/worksheets/moist-air/')}>{results.wholeChart}</a>
      </p>
    </div>
  );
}

/** How sure each of the two readings of a probe is. */
function ofProbe(): ReadingUncertainty {
  const { entering, probeLimits } = interpreted.value.test;
  const dryBulb = standard(probeLimits.dryBulb);
  return entering.wetBulb === null
    ? { dryBulb, humidity: standard(probeLimits.relativeHumidity), measure: 'relativeHumidity' }
    : { dryBulb, humidity: standard(probeLimits.wetBulb), measure: 'wetBulb' };
}

function Drawn({ process }: { process: ChartProcess }) {
  const { pressure, measured } = assessment.value;
  const shownIn = system.value;
  const width = isDesk.value ? 600 : 358;
  const { frame, lines } = useMemo(() => {
    const paper = chartFrame({ system: shownIn, pressure, width, view: 'process', around: pointsOf(process) });
    const taken = processBoxes(paper, process, processWords(shownIn, process));
    return { frame: paper, lines: chartLines(paper, firstFamilies, taken) };
  }, [shownIn, pressure, width, process]);
  const said = describe(frame, process.entering, process.leaving, measured.ok ? measured.value : null);
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${frame.width} ${frame.height}`} role="img" aria-label={said}>
      <MoistAirGround frame={frame} lines={lines} />
      <Process frame={frame} {...process} uncertainty={{ entering: ofProbe(), leaving: ofProbe() }} />
    </svg>
  );
}
