/** A chart as a file: presentation attributes only, generic fonts, black on white, so that any program shows it alike. */
import type { ChartLine } from './families.ts';
import type { ChartFrame } from './frame.ts';
import { ground } from './ground.ts';
import type { Drawing, Pen, Word } from './shapes.ts';

const ink = '#000';
const quiet = '#333';

/** The pens of `lines.css` as attributes. */
const pens: Readonly<Record<Pen, string>> = {
  'line-saturation': `stroke="${ink}" stroke-width="2"`,
  'line-humidity': `stroke="${quiet}" stroke-width="0.7"`,
  'line-wet-bulb': `stroke="${quiet}" stroke-width="0.7" stroke-dasharray="4 3"`,
  'line-enthalpy': `stroke="${ink}" stroke-width="0.7" stroke-dasharray="16 3 1.4 3 1.4 3"`,
  'line-volume': `stroke="${quiet}" stroke-width="0.7" stroke-dasharray="1 4"`,
  'line-measured': `stroke="${ink}" stroke-width="2.8"`,
  'line-beyond': `stroke="${ink}" stroke-width="1.4" stroke-dasharray="6 4"`,
  'line-dimension': `stroke="${ink}" stroke-width="1"`,
  'line-end': `stroke="${ink}" stroke-width="2"`,
  'line-scale': `stroke="${ink}" stroke-width="0.7"`,
  'line-grid': `stroke="#bbb" stroke-width="0.7"`,
  'mark-return': `fill="${ink}"`,
  'mark-supply': `fill="#fff" stroke="${ink}" stroke-width="2"`,
  'mark-coil': `stroke="${ink}" stroke-width="2"`,
  arrow: `fill="${ink}"`,
  dot: `fill="${ink}"`,
  region: `fill="url(#region)"`,
  outline: `stroke="${ink}" stroke-width="1"`,
};

const escaped = (text: string) => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/"/g, '&quot;');

function wordText({ text, x, y, anchor, angle, weight, clear }: Word): string {
  const turn = angle === 0 ? '' : ` transform="rotate(${angle} ${x} ${y})"`;
  const halo = clear ? ` stroke="#fff" stroke-width="4" stroke-linejoin="round" paint-order="stroke"` : '';
  const bold = weight === 'strong' ? ' font-weight="600"' : '';
  const fill = weight === 'quiet' ? ` fill="${quiet}"` : '';
  const held = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  return `<text x="${x}" y="${y}" dy="0.35em"${held}${turn}${bold}${fill}${halo}>${escaped(text)}</text>`;
}

function drawn({ strokes, words }: Drawing): string[] {
  return [...strokes.map(({ pen, d }) => `<path ${pens[pen]} d="${d}"/>`), ...words.map(wordText)];
}

export function standalone(frame: ChartFrame, lines: readonly ChartLine[]): string {
  const { width, height, letter } = frame;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" fill="none" font-family="sans-serif" font-size="${letter}">`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    `<g fill="${ink}">`.replace(` fill="${ink}"`, ''),
    ...drawn(ground(frame, lines)).map((line) => line.replace('<text ', `<text fill="${ink}" `)),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}
