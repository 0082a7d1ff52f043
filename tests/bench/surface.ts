/**
 * The explorer of a rating table: one step of a slider, which moves the place (point, two lines, scale, ledger of steps) or the
 * airflow (the bands too), and the fine bands that follow when it rests. The fastest of 40 runs of each: `npm run bench`.
 */
import { expectedCapacity, leaveOut, ratingTable } from '../../src/calc/index.ts';
import { ledgerDrawing } from '../../src/charts/derating/ledger.ts';
import type { Drawing } from '../../src/charts/shapes.ts';
import { bandsOf, type Detail, sampled } from '../../src/charts/surface/contours.ts';
import { surfaceFrame } from '../../src/charts/surface/frame.ts';
import { bandStrokes, ground, groundBoxes } from '../../src/charts/surface/ground.ts';
import { pointDrawing } from '../../src/charts/surface/point.ts';
import { type Air, fieldOf, readTable, type SurfaceQuantity } from '../../src/charts/surface/reading.ts';
import { levelsOf, scaleOf } from '../../src/charts/surface/scale.ts';
import { sliceDrawing } from '../../src/charts/surface/slice.ts';
import { valueScale } from '../../src/charts/surface/valueScale.ts';
import { demoJob } from '../../src/job/demo.ts';
import { typedRows } from '../../src/job/ratingTyped.ts';
import type { Job } from '../../src/job/types.ts';

const runs = 40;
/** What the drawings came to, so that none of them can be left out. */
let sink = 0;
const count = ({ strokes, words }: Drawing<string>) => {
  sink += words.length + strokes.reduce((sum, { d }) => sum + d.length, 0);
};

/** The demo with both of its airflow blocks. */
const bothBlocks: Job = { ...demoJob, chosen: { ...demoJob.chosen, 'rating.blocks': 'two' } };
const table = ratingTable(typedRows(bothBlocks), { basis: 'net', blowerPower: 300 });
const frame = surfaceFrame({ table, system: 'ip', width: 840 });

/** ms: the first run and the fastest of forty; every run has other input. */
function measure(work: (run: number) => void): { first: number; fastest: number } {
  const times = Array.from({ length: runs }, (_, run) => {
    const start = performance.now();
    work(run);
    return performance.now() - start;
  });
  return { first: times[0] ?? Number.NaN, fastest: Math.min(...times) };
}

const air = (run: number): Air => ({ dryAirFlow: 0.58 + 0.002 * run, enteringDryBulb: 24 });

function surface(quantity: SurfaceQuantity, of: Air, detail: Detail) {
  const scale = scaleOf(quantity, 'ip');
  const levels = levelsOf(scale, quantity === 'total' ? [7600, 11700] : [4900, 10000]);
  const bands = bandsOf(frame, sampled(frame, fieldOf(table, quantity, of), detail), levels);
  const still = ground(frame, bands, scale);
  return { scale, levels, bands, still, taken: groundBoxes(still, frame.letter) };
}

/** Everything that moves with the place. */
function placeStep(quantity: SurfaceQuantity, of: Air, drawn: ReturnType<typeof surface>, run: number): void {
  const place = { outdoorDryBulb: 30 + 0.2 * run, enteringWetBulb: 15 + 0.1 * run };
  const { scale, levels, taken } = drawn;
  const found = readTable(table, place, of);
  count(pointDrawing(frame, scale, { table, air: of, place, job: null }, taken));
  for (const along of ['outdoorDryBulb', 'enteringWetBulb'] as const)
    count(sliceDrawing({ table, along, air: of, place, scale, levels, system: 'ip', width: 404, measured: null }));
  count(
    valueScale({
      scale,
      levels,
      width: 472,
      table: found?.[quantity] ?? null,
      estimated: false,
      should: null,
      measured: null,
    }),
  );
  const nominal = 10551;
  const { derates } = expectedCapacity(table, { ...place, ...of, nominal, beyond: 'extend' }, { blowerPower: 430 });
  const rows = leaveOut(derates, new Set(['airflow'])).map(({ cause, before, after }) => ({
    name: cause,
    amount: String(Math.round(after)),
    value: after,
    change: after === before ? null : String(Math.round(after - before)),
    note: null,
    tried: false,
  }));
  count(ledgerDrawing({ rows, width: 840, unit: 'W', measured: null, range: null, should: 'should make' }));
}

function airStep(quantity: SurfaceQuantity) {
  return (run: number) => {
    const drawn = surface(quantity, air(run), 'quick');
    count({ strokes: bandStrokes(frame, drawn.bands, drawn.levels), words: [] });
    count(drawn.still);
    placeStep(quantity, air(run), drawn, run);
  };
}

const stillTotal = surface('total', air(0), 'fine');
const stillSensible = surface('sensible', air(0), 'fine');
const figures = [
  {
    title: 'slider step: the place, total',
    budget: 4,
    ...measure((run) => placeStep('total', air(0), stillTotal, run)),
  },
  {
    title: 'slider step: the place, sensible',
    budget: 4,
    ...measure((run) => placeStep('sensible', air(0), stillSensible, run)),
  },
  { title: 'slider step: the airflow, total', budget: 4, ...measure(airStep('total')) },
  { title: 'slider step: the airflow, sensible', budget: 4, ...measure(airStep('sensible')) },
  { title: 'bands at rest, total', budget: 10, ...measure((run) => count(surface('total', air(run), 'fine').still)) },
  {
    title: 'bands at rest, sensible',
    budget: 30,
    ...measure((run) => count(surface('sensible', air(run), 'fine').still)),
  },
];
for (const { title, budget, first, fastest } of figures) {
  console.log(
    `${title.padEnd(48)} ${fastest.toFixed(2).padStart(6)} ms  (first ${first.toFixed(1)} ms, budget ${budget} ms)`,
  );
}
if (!(sink > 0) || figures.some(({ fastest, budget }) => !(fastest < budget))) process.exitCode = 1;
