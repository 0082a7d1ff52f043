import { px } from '../scale.ts';
import { Axes, type AxisOf, lineThrough, plot, scalesOf } from './Axes.tsx';

export interface SettlingPictureProps {
  /** Minutes, and the cooling there in per cent of the last. */
  readonly course: readonly (readonly [minute: number, share: number])[];
  /** The window that is looked at, and the minute before which none may begin. */
  readonly window: readonly [from: number, to: number];
  readonly notBefore: number;
  /** When something was changed. */
  readonly change: number;
  readonly width: number;
  readonly words: {
    readonly time: string;
    readonly share: string;
    readonly change: string;
    readonly waiting: string;
    readonly summary: string;
  };
}

const shown = [80, 120] as const;

/** The cooling over the time: thick in its window, which is framed; hatched upright where no window may begin yet. */
export function SettlingPicture(props: SettlingPictureProps) {
  const { course, window, notBefore, change, width, words } = props;
  const x: AxisOf = { domain: [0, course.at(-1)?.[0] ?? 1], name: words.time, ticks: width > 500 ? 8 : 5 };
  const y: AxisOf = { domain: shown, name: words.share, ticks: 4 };
  const scales = scalesOf(x, y, width);
  const inside = course.map(([minute, share]) => [minute, Math.min(shown[1], Math.max(shown[0], share))] as const);
  const [from, to] = window.map((end) => px(scales.x(end))) as [number, number];
  const begun = notBefore > change ? change : 0;
  const wait = [begun, Math.min(notBefore, to === 0 ? 0 : window[1])].map((end) => px(scales.x(end))) as [
    number,
    number,
  ];
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} ${plot.height}`} role="img" aria-label={words.summary}>
      <rect
        x={wait[0]}
        y={plot.top}
        width={px(Math.max(0, wait[1] - wait[0]))}
        height={plot.bottom - plot.top}
        fill="url(#hatch-outside)"
      />
      <Axes x={x} y={y} width={width} />
      <path class="line-dimension" d={lineThrough(inside, scales)} />
      <path
        class="line-measured"
        d={lineThrough(
          inside.filter(([minute]) => minute >= window[0] && minute <= window[1]),
          scales,
        )}
      />
      <rect class="outline" x={from} y={plot.top} width={px(to - from)} height={plot.bottom - plot.top} />
      <text class="clear" x={px(wait[0] + 6)} y={plot.bottom - 10}>
        {words.waiting}
      </text>
      {window[1] >= change && (
        <>
          <path class="line-scale" d={`M${px(scales.x(change))} ${plot.top - 8}V${plot.bottom}`} />
          <text class="end" x={scales.right} y="14">
            {words.change}
          </text>
        </>
      )}
    </svg>
  );
}
