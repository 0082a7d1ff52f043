/**
 * The moist-air chart: the geometry of a whole chart (every family, 1440 px, labels, path data) and one step of a drag (new
 * states, load, regions and the drawing of the process). The fastest of 40 runs of each, after warming up: `npm run bench`.
 */
import { coilLoad, moistAir } from '../../src/calc/index.ts';
import { allFamilies, chartLines } from '../../src/charts/moistAir/families.ts';
import { airAt, chartFrame, xOf, yOf } from '../../src/charts/moistAir/frame.ts';
import { ground } from '../../src/charts/moistAir/ground.ts';
import { processDrawing } from '../../src/charts/moistAir/processDrawing.ts';
import { processWords } from '../../src/charts/moistAir/processWords.ts';
import type { Drawing } from '../../src/charts/shapes.ts';

const runs = 40;
/** What the drawings came to, so that none of them can be left out. */
let sink = 0;

/** ms: the first run and the fastest of forty; every run has other input. */
function measure(work: (run: number) => Drawing): { first: number; fastest: number } {
  const times = Array.from({ length: runs }, (_, run) => {
    const start = performance.now();
    const { strokes, words } = work(run);
    const time = performance.now() - start;
    sink += words.length + strokes.reduce((sum, { d }) => sum + d.length, 0);
    return time;
  });
  return { first: times[0] ?? Number.NaN, fastest: Math.min(...times) };
}

function wholeChart(run: number): Drawing {
  const frame = chartFrame({ system: run % 2 ? 'si' : 'ip', pressure: 70e3 + 780 * run, width: 1440 });
  return ground(frame, chartLines(frame, allFamilies));
}

const frame = chartFrame({ system: 'ip', pressure: 101325, width: 820 });
const pressure = frame.pressure;
const leaving = moistAir({ dryBulb: 13.3, relativeHumidity: 0.88, pressure });
const blower = { heat: 400, place: 'after coil' } as const;
const sure = { dryBulb: 0.29, humidity: 0.017, measure: 'relativeHumidity' } as const;

/** The return air follows the hand. */
function dragStep(run: number): Drawing {
  const held = airAt(frame, xOf(frame, 22) + run, yOf(frame, 0.0095) - run / 2);
  const entering = moistAir({ ...held, pressure });
  const load = coilLoad({ entering, leaving, dryAirFlow: 0.66, blower });
  const process = { entering, leaving, load, blower, uncertainty: { entering: sure, leaving: sure } };
  return processDrawing(frame, process, processWords('ip', process));
}

const figures = [
  { title: 'geometry of a whole chart, 1440 px', budget: 10, ...measure(wholeChart) },
  { title: 'one step of a drag', budget: 2, ...measure(dragStep) },
];
for (const { title, budget, first, fastest } of figures) {
  console.log(
    `${title.padEnd(48)} ${fastest.toFixed(2).padStart(6)} ms  (first ${first.toFixed(1)} ms, budget ${budget} ms)`,
  );
}
if (!(sink > 0) || figures.some(({ fastest, budget }) => !(fastest < budget))) process.exitCode = 1;
