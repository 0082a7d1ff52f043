/**
 * A job as lines of text between tabs, for a link: compressed it is a quarter shorter than JSON, so that more jobs fit into a
 * square that a phone reads from paper. Each line begins with what it is: e a field, c a choice, n a note, t a table, r a row of it.
 */
import type { Entered, Job, Origin, TypedTable } from './types.ts';

const escapes: readonly (readonly [plain: string, written: string])[] = [
  ['\\', '\\\\'],
  ['\t', '\\t'],
  ['\n', '\\n'],
];
/** Stands for what is not there; nothing that is there is written so. */
const absent = '\\-';

const write = (text: string | undefined) =>
  text === undefined ? absent : escapes.reduce((all, [plain, written]) => all.replaceAll(plain, written), text);
const read = (text: string) =>
  text === absent
    ? undefined
    : text.replace(/\\[\\tn]/g, (found) => escapes.find(([, written]) => written === found)?.[0] ?? '');

/** What is absent at the end of a line is not written at all. */
function lineOf(...texts: readonly (string | undefined)[]): string {
  const last = texts.findLastIndex((text) => text !== undefined);
  return texts
    .slice(0, last + 1)
    .map(write)
    .join('\t');
}

/** Most fields are typed. */
const origins: Readonly<Record<Origin, string>> = { typed: '', 'from sheet': 's', assumed: 'a' };

const fieldLine = (key: string, { text, unit, origin, at, limit, shape }: Entered) =>
  lineOf('e', key, text, unit, origins[origin], at, limit, shape);

const tableLines = (key: string, { columns, rows }: TypedTable) => [
  lineOf('t', key, ...columns.flatMap((column) => [column.key, column.unit])),
  ...rows.map((row) => lineOf('r', ...row)),
];

/** The job as text; `unpacked` gives it back. */
export function packed({ version, id, invented, entered, chosen, tables, notes }: Job): string {
  return [
    lineOf(String(version), id, invented && '1'),
    ...Object.entries(entered).map(([key, field]) => fieldLine(key, field)),
    ...Object.entries(chosen).map(([key, choice]) => lineOf('c', key, choice)),
    ...Object.entries(notes).map(([key, note]) => lineOf('n', key, note)),
    ...Object.entries(tables).flatMap(([key, table]) => tableLines(key, table)),
  ].join('\n');
}

type Texts = readonly (string | undefined)[];

/** What a text packs, not yet known to be a job: links of old hold JSON. Throws for a line of no kind. */
export function unpacked(text: string): unknown {
  if (/^[[{]/.test(text)) return JSON.parse(text);
  const [head = [], ...lines] = text.split('\n').map((line) => line.split('\t').map(read));
  const of = (kind: string, entry: (texts: Texts) => unknown) =>
    Object.fromEntries(lines.filter(([first]) => first === kind).map(([, key = '', ...rest]) => [key, entry(rest)]));
  if (lines.some(([kind = '']) => !/^[ecntr]$/.test(kind))) throw new Error('a line of no kind');
  const [version, id, invented] = head;
  return {
    version: Number(version),
    id,
    ...(invented === '1' && { invented: true }),
    entered: of('e', fieldOf),
    chosen: of('c', ([choice]) => choice),
    notes: of('n', ([note]) => note),
    tables: tablesOf(lines),
  };
}

function fieldOf([text, unit, origin, at, limit, shape]: Texts): unknown {
  const [known] = Object.entries(origins).find(([, written]) => written === origin) ?? [];
  const given = Object.entries({ at, limit, shape }).filter(([, value]) => value !== undefined);
  return { text, unit, origin: known, ...Object.fromEntries(given) };
}

/** Tables, each with the rows that stand below it. */
function tablesOf(lines: readonly Texts[]): unknown {
  const tables: [key: string, table: { columns: unknown[]; rows: Texts[] }][] = [];
  for (const [kind, ...texts] of lines) {
    if (kind === 'r') tables.at(-1)?.[1].rows.push(texts);
    if (kind !== 't') continue;
    const [key = '', ...heads] = texts;
    const columns = heads.flatMap((name, index) => (index % 2 === 0 ? [{ key: name, unit: heads[index + 1] }] : []));
    tables.push([key, { columns, rows: [] }]);
  }
  return Object.fromEntries(tables);
}
