import type { Drawing, Stroke, Word } from './shapes.ts';

/** Strokes and words as SVG, with the classes of the line language. */
export function Shapes({ of: { strokes, words } }: { of: Drawing<string> }) {
  return (
    <>
      <Strokes of={strokes} />
      <Words of={words} />
    </>
  );
}

const hatches: Readonly<Partial<Record<string, string>>> = {
  region: 'hatch-measured',
  'region-should': 'hatch-expected',
  'region-outside': 'hatch-outside',
};

/** Keys are places in the list: of a moving drawing only what moves is touched. */
export function Strokes({ of }: { of: readonly Stroke<string>[] }) {
  return (
    <>
      {of.map(({ pen, d }, i) => {
        const hatch = hatches[pen];
        return hatch ? <path key={i} fill={`url(#${hatch})`} d={d} /> : <path key={i} class={pen} d={d} />;
      })}
    </>
  );
}

export function Words({ of }: { of: readonly Word[] }) {
  return (
    <>
      {of.map(({ text, x, y, anchor, angle, weight, clear }, i) => (
        <text
          key={i}
          class={classes(anchor === 'start' ? '' : anchor, weight === 'plain' ? '' : weight, clear ? 'clear' : '')}
          x={x}
          y={y}
          dy="0.35em"
          transform={angle === 0 ? undefined : `rotate(${angle} ${x} ${y})`}
        >
          {text}
        </text>
      ))}
    </>
  );
}

const classes = (...names: readonly string[]) => names.filter((name) => name !== '').join(' ') || undefined;
