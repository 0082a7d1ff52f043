import { SteadyPlot } from '~/charts/SteadyPlot.tsx';
import { formatNumber } from '~/job/format.ts';
import { traceOf } from '~/job/log/trace.ts';
import { trade } from '~/words/en/reportTrade.ts';
import { job } from '../../store.ts';

const signed = (fraction: number) => `${fraction > 0 ? '+' : ''}${formatNumber(fraction * 100, 1)}\u00a0%`;

/** How steady it was before it was read, where a record was kept. */
export function Steady() {
  const trace = traceOf(job.value);
  const points = (trace?.rows ?? []).flatMap(({ time, capacity }) =>
    capacity === null || !trace ? [] : [{ minutes: (time - trace.window.to) / 60, value: capacity }],
  );
  const [first] = points;
  const values = points.map(({ value }) => value);
  const minutesAt = (time: number) => (time - (trace?.window.to ?? 0)) / 60;
  return (
    <section>
      <h3>{trade.steady}</h3>
      {trace && first && points.length > 1 ? (
        <SteadyPlot
          points={points}
          window={minutesAt(trace.window.from)}
          since={trace.since === null ? null : minutesAt(trace.since)}
          trend={trace.trend}
          at={null}
          width={358}
          words={{
            since: trade.steadySince,
            axis: trade.steadyAxis,
            summary: trade.steadySummary(
              formatNumber(-first.minutes, 0),
              signed(Math.min(...values)),
              signed(Math.max(...values)),
            ),
          }}
        />
      ) : (
        <p>{trade.noRecord}</p>
      )}
    </section>
  );
}
