/** Pasted or opened text as a grid of cells. */
import Papa from 'papaparse';
import { importLimits } from './limits.ts';
import type { Sheet } from './types.ts';

/** `workbook`, `pdf`, `webPage`: not a table as text, but a file of another kind. */
export type TextRefusal = 'empty' | 'tooLong' | 'tooManyRows' | 'tooManyColumns' | 'workbook' | 'pdf' | 'webPage';

export type Parsed =
  | { readonly ok: true; readonly sheet: Sheet; readonly separator: string }
  | { readonly ok: false; readonly code: TextRefusal; readonly count: number };

const otherKinds: readonly (readonly [(start: string) => boolean, TextRefusal])[] = [
  [(start) => start.startsWith('PK\u0003\u0004') || start.startsWith('\u00d0\u00cf\u0011\u00e0'), 'workbook'],
  [(start) => start.startsWith('%PDF-'), 'pdf'],
  [(start) => /^\s*<(!doctype|html|head|meta|table|div|\?xml)\b/i.test(start), 'webPage'],
];

/** Control characters that a table may hold are tabs and line ends; the others come from broken files. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is to be taken out.
const controls = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\ufeff]/g;
/** A quote sign that no text has: then quotes are letters like any other. */
const noQuote = '\u0001';
const longestCell = 200;

/** The cells of a text parted by tabs, semicolons, commas or runs of spaces. Never throws, whatever the text. */
export function sheetOf(text: string): Parsed {
  if (text.length > importLimits.bytes) return refuse('tooLong', text.length);
  const other = otherKinds.find(([isOne]) => isOne(text.slice(0, 200)));
  if (other) return refuse(other[1]);
  const clean = text.replace(controls, '');
  const separator = separatorOf(clean);
  const spaced = separator === ' ' ? clean.replace(/^ +| +$/gm, '').replace(/ {2,}|\u00a0+/g, ' ') : clean;
  const found = parse(spaced, separator, '"');
  // A quote that never ends, such as an inch sign, would swallow the rest of the sheet.
  const rows = found.errors.some(({ type }) => type === 'Quotes') ? parse(spaced, separator, noQuote).data : found.data;
  if (rows.length > importLimits.rows) return refuse('tooManyRows', rows.length);
  const widest = rows.reduce((most, row) => Math.max(most, row.length), 0);
  if (widest > importLimits.columns) return refuse('tooManyColumns', widest);
  const sheet = rows.map((row) => row.map(cellOf));
  while (sheet.length > 0 && sheet.at(-1)?.every((cell) => cell === '')) sheet.pop();
  return sheet.length === 0 ? refuse('empty') : { ok: true, sheet, separator };
}

/** A cell without needless spaces, and without the sign by which our own files keep it from being a formula. */
const cellOf = (cell: string) =>
  cell
    .slice(0, longestCell)
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^'(?='*[=+\-@])/, '');

const refuse = (code: TextRefusal, count = 0): Parsed => ({ ok: false, code, count });

function parse(text: string, delimiter: string, quoteChar: string) {
  return Papa.parse<string[]>(text, { delimiter, quoteChar, preview: importLimits.rows + 1, worker: false });
}

/** Tabs come from spreadsheets; else the sign that most of the first lines have, semicolons before commas; else spaces. */
function separatorOf(text: string): string {
  const lines = text
    .slice(0, 20_000)
    .split(/\r\n|\r|\n/, 60)
    .filter((line) => line.trim() !== '');
  const having = (mark: string) => lines.filter((line) => line.replace(/"[^"]*"/g, '').includes(mark)).length;
  const [best] = ['\t', ';', ','].filter(
    (mark) => having(mark) * 2 >= lines.length || (mark !== ',' && having(mark) > 1),
  );
  if (best !== undefined) return best;
  const columns = lines.filter((line) => /^\s*\S+( +[\d.,]+){2,}/.test(line)).length;
  return columns * 2 >= lines.length && columns > 0 ? ' ' : having(',') > 0 ? ',' : '\t';
}
