/** A chart as a file: presentation attributes only, generic fonts, black on white, so that any program shows it alike. */
import type { Drawing, Pen, Word } from '../shapes.ts';
import { word } from '../shapes.ts';
import { wrapped } from '../wrap.ts';
import type { ChartLine } from './families.ts';
import type { ChartFrame } from './frame.ts';
import { ground } from './ground.ts';

const ink = '#000';
const quiet = '#333';
const faint = '#bbb';

/** The pens of `lines.css` as attributes. */
const pens: Readonly<Record<Pen, string>> = {
  'line-saturation': `stroke="${ink}" stroke-width="2"`,
  'line-humidity': `stroke="${quiet}" stroke-width="0.7"`,
  'line-wet-bulb': `stroke="${quiet}" stroke-width="0.7" stroke-dasharray="4 3"`,
  'line-enthalpy': `stroke="${ink}" stroke-width="0.7" stroke-dasharray="16 3 1.4 3 1.4 3"`,
  'line-volume': `stroke="${quiet}" stroke-width="0.7" stroke-dasharray="1 4"`,
  'line-measured': `stroke="${ink}" stroke-width="2.8"`,
  'line-step': `stroke="${ink}" stroke-width="2"`,
  'line-beyond': `stroke="${ink}" stroke-width="1.4" stroke-dasharray="6 4"`,
  'line-dimension': `stroke="${ink}" stroke-width="1"`,
  'line-end': `stroke="${ink}" stroke-width="2"`,
  'line-scale': `stroke="${ink}" stroke-width="0.7"`,
  'line-grid-fine': `stroke="${faint}" stroke-width="0.7"`,
  'mark-return': `fill="${ink}"`,
  'mark-supply': `fill="#fff" stroke="${ink}" stroke-width="2"`,
  'mark-coil': `stroke="${ink}" stroke-width="2"`,
  arrow: `fill="${ink}"`,
  dot: `fill="${ink}"`,
  region: 'fill="url(#region)"',
  outline: `stroke="${ink}" stroke-width="1"`,
};

const hatch =
  '<defs><pattern id="region" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">' +
  `<path d="M3 0V6" stroke="${ink}" stroke-width="1"/></pattern></defs>`;

export interface StandaloneOptions {
  /** The line above the chart. */
  readonly title: string;
  /** What has to be said under it: the pressure, if the title does not say it, "Demo, invented". */
  readonly note?: string;
}

/** The file of a chart: its lines, what is drawn on it (a process, points), a title above and a note below. */
export function standalone(
  frame: ChartFrame,
  lines: readonly ChartLine[],
  on: Drawing | null,
  { title, note = '' }: StandaloneOptions,
): string {
  const { width, letter } = frame;
  const row = 1.4 * letter;
  const head = wrapped(title, width - letter, letter);
  const foot = note === '' ? [] : wrapped(note, width - letter, letter);
  const top = Math.round((head.length + 0.6) * row);
  const height = Math.round(top + frame.height + (foot.length + 0.4) * row);
  const left = frame.plot.left;
  const words = [
    ...head.map((text, i) => word(text, left, (i + 0.8) * row, { weight: 'strong' })),
    ...foot.map((text, i) => word(text, left, top + frame.height + (i + 0.5) * row)),
  ];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" fill="none" font-family="sans-serif" font-size="${letter}">`,
    `<title>${escaped(title)}</title>`,
    ...(on?.strokes.some(({ pen }) => pen === 'region') ? [hatch] : []),
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    ...words.map(wordText),
    `<g transform="translate(0 ${top})">`,
    ...drawn(ground(frame, lines)),
    ...(on ? drawn(on) : []),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

function drawn({ strokes, words }: Drawing): string[] {
  return [...strokes.map(({ pen, d }) => `<path ${pens[pen]} d="${d}"/>`), ...words.map(wordText)];
}

function wordText({ text, x, y, anchor, angle, weight, clear }: Word): string {
  const attributes = [
    `x="${x}" y="${y}" dy="0.35em" fill="${weight === 'quiet' ? quiet : ink}"`,
    anchor === 'start' ? '' : `text-anchor="${anchor}"`,
    angle === 0 ? '' : `transform="rotate(${angle} ${x} ${y})"`,
    weight === 'strong' ? 'font-weight="600"' : '',
    clear ? 'stroke="#fff" stroke-width="5" stroke-linejoin="round" paint-order="stroke"' : '',
  ];
  return `<text ${attributes.filter((one) => one !== '').join(' ')}>${escaped(text)}</text>`;
}

/** Safe in markup. Control characters are not allowed in XML at all. */
const escaped = (text: string): string =>
  text
    .replace(/\p{Cc}/gu, ' ')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
