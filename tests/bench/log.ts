/**
 * A logger's record of 100 000 rows: read, judged and drawn, as the worker and the page do it. `npm run bench`; the fastest of
 * twelve records, each with figures of its own.
 */
import { steadyFrame } from '../../src/charts/steadyFrame.ts';
import { judgeLog } from '../../src/job/log/judgeLog.ts';
import { openLog } from '../../src/job/log/openLog.ts';

const rows = 100_000;
const start = Date.UTC(2026, 7, 12);

/** A day and more, a row a second, with dates and five columns of figures. */
function record(run: number): string {
  const lines = Array.from({ length: rows }, (_, second) => {
    const wave = Math.sin(second / 37 + run);
    const figures = [75 + 0.1 * wave, 50 + 0.5 * wave, 56 + 0.3 * wave, 88 + wave, 91 + 0.4 * wave];
    const time = new Date(start + second * 1000).toISOString();
    return [time, ...figures.map((figure) => figure.toFixed(2))].join(',');
  });
  return ['Time,Return T (°F),Return RH (%),Supply T (°F),Supply RH (%),Outdoor (°F)', ...lines].join('\n');
}

let sink = 0;
const times = { read: Infinity, judged: Infinity, drawn: Infinity, all: Infinity };
for (let run = 0; run < 12; run++) {
  const text = record(run);
  const begun = performance.now();
  const open = openLog(text);
  const read = performance.now();
  if (typeof open === 'string') throw new Error(open);
  const { heads, temperatures, pressures, humidityAs } = open;
  const roles = heads.map(({ role }) => role);
  const found = judgeLog(open, {
    roles,
    temperatures,
    pressures,
    humidityAs,
    pressure: 101_325,
    startedAt: null,
    changedAt: null,
  });
  const judged = performance.now();
  if (typeof found === 'string') throw new Error(found);
  const { to, from } = found.steadiness.window;
  const points = found.trace.flatMap(({ time, capacity }) =>
    capacity === null ? [] : [{ minutes: (time - to) / 60, value: capacity }],
  );
  const { path, shown } = steadyFrame({ points, window: (from - to) / 60, width: 440 });
  sink += path(points).length + path(shown).length;
  const drawn = performance.now();
  times.read = Math.min(times.read, read - begun);
  times.judged = Math.min(times.judged, judged - read);
  times.drawn = Math.min(times.drawn, drawn - judged);
  times.all = Math.min(times.all, drawn - begun);
}
if (sink === 0) throw new Error('nothing was drawn');
const print = (title: string, ms: number) => console.log(`${title.padEnd(48)} ${ms.toFixed(2).padStart(8)} ms`);
print('a record of 100 000 rows read', times.read);
print('its rows judged and thinned', times.judged);
print('its plot', times.drawn);
print('all of it', times.all);
