import { SteadyPlot } from '~/charts/SteadyPlot.tsx';
import { formatNumber } from '~/job/format.ts';
import type { KeptTrace } from '~/job/log/trace.ts';
import { trade } from '~/words/en/reportTrade.ts';

const signed = (fraction: number) => `${fraction > 0 ? '+' : ''}${formatNumber(fraction * 100, 1)}\u00a0%`;

/** How steady it was before it was read, by the record that was kept. */
export function Steady({ of: trace }: { of: KeptTrace }) {
  const minutesAt = (time: number) => (time - trace.window.to) / 60;
  const points = trace.rows.flatMap(({ time, capacity }) =>
    capacity === null ? [] : [{ minutes: minutesAt(time), value: capacity }],
  );
  const values = points.map(({ value }) => value);
  return (
    <section>
      <h3>{trade.steady}</h3>
      <SteadyPlot
        points={points}
        window={minutesAt(trace.window.from)}
        since={trace.since === null ? null : minutesAt(trace.since)}
        trend={trace.trend}
        at={null}
        width={400}
        words={{
          since: trade.steadySince,
          axis: trade.steadyAxis,
          summary: trade.steadySummary(
            formatNumber(-(points[0]?.minutes ?? 0), 0),
            signed(Math.min(...values)),
            signed(Math.max(...values)),
          ),
        }}
      />
    </section>
  );
}
