import { oblique } from './scale.ts';

export type SampleKind = 'line' | 'hatch' | 'mark';

const straight = 'M0 16H96';
/** Where a line is more than a straight one. */
const paths: Readonly<Record<string, string>> = {
  dimension: 'M4 16H92',
  scale: `${straight}M8 16v8M48 16v8M88 16v8`,
  grid: `${straight}M24 2v28M72 2v28`,
  cell: 'M24 4H72V28H24Z',
  saturation: 'M2 28C40 26 70 18 94 2',
  humidity: 'M2 30C40 29 70 23 94 12',
  'wet-bulb': 'M8 4L88 28',
  enthalpy: 'M8 2L88 30',
  volume: 'M36 2L60 30',
  contour: 'M2 26C30 20 60 12 94 8',
};

const lineOf = (key: string) => (
  <>
    <path class={`line-${key}`} d={paths[key] ?? straight} />
    {key === 'dimension' && <path class="line-end" d={oblique(4, 16) + oblique(92, 16)} />}
  </>
);

const hatchOf = (key: string) => (
  <>
    <rect x="1" y="2" width="94" height="28" fill={`url(#hatch-${key})`} />
    <rect x="1" y="2" width="94" height="28" class="outline" />
  </>
);

const marks = {
  return: <circle class="mark-return" cx="48" cy="16" r="6" />,
  supply: <rect class="mark-supply" x="42.5" y="10.5" width="11" height="11" />,
  coil: <path class="mark-coil" d="M48 10v12M42 16h12" />,
  aim: <circle class="aim" cx="48" cy="16" r="7" />,
  dot: (
    <>
      <path class="line-scale" d="M4 16H92M4 8v16M92 8v16" />
      <circle class="dot" cx="60" cy="16" r="5" />
    </>
  ),
  arrow: (
    <>
      <path class="line-measured" d={straight} />
      <path class="arrow" d="M64 16L50 9.5V22.5Z" />
    </>
  ),
  tube: (
    <>
      <path class="tube" d={straight} />
      <path class="tube-bore" d={straight} />
    </>
  ),
};

const drawnBy = {
  line: lineOf,
  hatch: hatchOf,
  mark: (key: string) => marks[key as keyof typeof marks],
} as const;

/** One line, hatch or mark of the line language as it stands in drawings; `of` is its name in `lines.css`. */
export function Sample({ kind, of }: { kind: SampleKind; of: string }) {
  return (
    <svg class="drawing" viewBox="0 0 96 32" width="96" height="32" aria-hidden="true">
      {drawnBy[kind](of)}
    </svg>
  );
}
