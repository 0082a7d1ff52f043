import { SettlingPicture } from '~/charts/tryIt/SettlingPicture.tsx';
import { formatNumber } from '~/job/format.ts';
import { trySettling as words } from '~/words/en/trySettling.ts';
import type { Ahead } from './ahead.ts';
import { TryIt } from './TryIt.tsx';
import { useAhead } from './useAhead.ts';

interface Props {
  readonly figures: Ahead<readonly [reason: number, trend: number, notBefore: number]>;
  /** What the figure of a row stands for. */
  readonly reasons: readonly string[];
  /** Minute and cooling, of that at the end. */
  readonly course: readonly (readonly [number, number])[];
  /** Minutes: how long a window is, and when something was changed. */
  readonly window: number;
  readonly change: number;
}

const whole = (number: number) => formatNumber(number, 0);

/** The same record, looked at sooner or later: too early, drifting, steady, and too early again after a change. */
export function Settling({ figures, reasons, course, window, change }: Props) {
  const {
    values: [to = 0],
    row: [reason, trend, notBefore],
    control,
  } = useAhead(figures);
  const [from, end] = [whole(to - window), whole(to)];
  const drift = `${formatNumber(100 * Math.abs(trend), 1)}\u00a0%`;
  const code = reasons[reason];
  const said =
    code === 'none'
      ? words.said.none(from, end, drift)
      : code === 'tooEarly'
        ? words.said.tooEarly(from, end, whole(notBefore))
        : code === 'trend'
          ? words.said.trend(from, end, drift)
          : words.said.range(from, end);
  return (
    <TryIt
      id="settling"
      controls={[control(0, words.seen, words.minutes(end))]}
      draw={(width) => (
        <SettlingPicture
          course={course.map(([minute, share]) => [minute, 100 * share])}
          window={[to - window, to]}
          notBefore={notBefore}
          change={change}
          width={width}
          words={{ ...words, summary: said }}
        />
      )}
      said={said}
      table={words.table}
      lines={[
        { name: words.rows.window, number: `${from}${words.to}${end}`, unit: '' },
        { name: words.rows.notBefore, number: whole(notBefore), unit: '' },
        { name: words.rows.drift, number: formatNumber(100 * trend, 1), unit: '%' },
      ]}
      caption={words.caption}
    />
  );
}
