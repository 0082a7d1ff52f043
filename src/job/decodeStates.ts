/** A link to an air chart, read. What comes in is hostile until it is checked: one part that is broken, and nothing is taken. */
import { applyEdits, emptyJob, typed } from './edit.ts';
import type { LinkedChart } from './encodeStates.ts';
import {
  type Figure,
  linkVersion,
  placeCodes,
  pointOfCode,
  readFigure,
  readHumidity,
  withItsUnit,
} from './linkFigures.ts';
import { emptyProcesses } from './processEdits.ts';
import { isProcessKey, isProcessKind } from './processes.ts';
import type { Place } from './readings.ts';
import { emptyStates, isStateKey } from './states.ts';
import type { Edit, Job, System, TypedTable } from './types.ts';

export type LinkRefusal = 'newer' | 'tooLong' | 'broken';
export type ReadLink =
  | { readonly ok: true; readonly chart: LinkedChart }
  /** `part`: the key of the part that is broken. */
  | { readonly ok: false; readonly reason: LinkRefusal; readonly part: string };

const longest = 6000;
const longestName = 40;

/** The chart that a query describes, or why it describes none. Keys without a meaning are passed over. Never throws. */
export function decodeStates(query: string): ReadLink {
  if (query.length > longest) return refuse('tooLong', '');
  const search = new URLSearchParams(query);
  const version = search.get('v') ?? '';
  if (version !== linkVersion) return refuse(/^[1-9]\d{0,5}$/.test(version) ? 'newer' : 'broken', 'v');
  const system: System = search.get('u') === 'si' ? 'si' : 'ip';
  let job = emptyJob('link');
  for (const [key, text] of search) {
    const edits = editsOf(job, key, text, system);
    if (edits === null) return refuse('broken', key);
    job = applyEdits(job, edits);
  }
  const families = search.get('on')?.split(',').slice(0, 8) ?? null;
  return { ok: true, chart: { job: search.get('i') === '1' ? { ...job, invented: true } : job, system, families } };
}

const refuse = (reason: LinkRefusal, part: string): ReadLink => ({ ok: false, reason, part });

/** What one part says; no edits where its key means nothing, `null` where it is broken. */
function editsOf(job: Job, key: string, text: string, system: System): readonly Edit[] | null {
  const place = placeCodes.find(([code]) => code === key)?.[1];
  if (place !== undefined) return placeEdits(job, place, text);
  if (isStateKey(key)) return stateEdits(job, key, text, system);
  if (isProcessKey(key)) return processEdits(job, key, text, system);
  const quantity = key === 'z' ? 'altitude' : key === 'p' ? 'barometer' : null;
  if (quantity === null) return [];
  const found = readFigure(text, quantity);
  return found && [typed(job, quantity, found.text, found.unit)];
}

function placeEdits(job: Job, place: Place, text: string): readonly Edit[] | null {
  const [first = '', second = '', ...more] = text.split(',');
  const dryBulb = readFigure(first, `${place}.dryBulb`);
  const humidity = readHumidity(second);
  if (!dryBulb || !humidity || more.length > 0) return null;
  const { measure } = humidity;
  if (measure !== 'relativeHumidity' && measure !== 'wetBulb') return null;
  // Both probes of a job show the same measure.
  if ((job.chosen.humidityAs ?? measure) !== measure) return null;
  return [
    { slot: 'chosen', key: 'humidityAs', to: measure },
    typed(job, `${place}.dryBulb`, dryBulb.text, dryBulb.unit),
    typed(job, `${place}.${measure}`, humidity.text, humidity.unit),
  ];
}

function stateEdits(job: Job, key: string, text: string, system: System): readonly Edit[] | null {
  const [first = '', second = '', ...rest] = text.split(',');
  const dryBulb = readFigure(first, 'state.dryBulb');
  const humidity = readHumidity(second);
  const name = rest.join(',');
  if (!dryBulb || !humidity || name.length > longestName) return null;
  return withRow('states', job.tables.states ?? emptyStates(system), {
    key,
    name,
    dryBulb,
    [humidity.measure]: humidity,
  });
}

function processEdits(job: Job, key: string, text: string, system: System): readonly Edit[] | null {
  const [kind = '', from = '', other = '', to = '', ...figures] = text.split(',');
  const points = [from, other, to].map((code) => (code === '' ? '' : pointOfCode(code)));
  const [end, flow, second, ...more] = figures.map((figure, index) =>
    figure === ''
      ? ''
      : (readFigure(figure, index === 0 ? 'state.dryBulb' : 'process.airflow') ?? massFlow(figure, index)),
  );
  if (!isProcessKind(kind) || more.length > 0 || [...points, end, flow, second].includes(null)) return null;
  return withRow('processes', job.tables.processes ?? emptyProcesses(system), {
    key,
    kind,
    from: points[0] ?? '',
    with: points[1] ?? '',
    to: points[2] ?? '',
    endDryBulb: end ?? '',
    airflow: flow ?? '',
    secondAirflow: second ?? '',
  });
}

const massFlow = (text: string, index: number) => (index === 0 ? null : readFigure(text, 'process.dryAirFlow'));

/** The table with a row more; `null` where its key stands there already. */
function withRow(
  key: 'states' | 'processes',
  { columns, rows }: TypedTable,
  texts: Readonly<Record<string, Figure | string>>,
): readonly Edit[] | null {
  const keys = columns.findIndex((column) => column.key === 'key');
  if (rows.some((row) => row[keys] === texts['key'])) return null;
  const row = columns.map((column) => {
    const text = texts[column.key] ?? '';
    return typeof text === 'string' ? text : withItsUnit(text, column.unit);
  });
  return [{ slot: 'tables', key, to: { columns, rows: [...rows, row] } }];
}
