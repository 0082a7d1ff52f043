import { Shares } from '~/charts/Shares.tsx';
import { formatNumber } from '~/job/format.ts';
import { trade } from '~/words/en/reportTrade.ts';
import { sureFigures } from '~/words/en/sureFigures.ts';
import { largest } from '../../capacity/sure/causes.ts';
import { verdict } from '../../capacity/sure/verdict.ts';
import { percent } from '../../show.ts';
import { assessment } from '../../store.ts';

/** What makes the range, the largest causes first. */
export function Sure() {
  const { ratio } = assessment.value;
  const shares = largest(5);
  if (!ratio.ok || shares.length === 0) return null;
  const said = shares.map(({ name, share }) => `${name} ${percent(share)}`).join(', ');
  const by = verdict.value?.by === 'monteCarlo' ? trade.byDraws : trade.byFirstOrder;
  return (
    <section id="report-sure">
      <h3>{trade.sure}</h3>
      <Shares shares={shares} width={358} row={22} summary={sureFigures.causesSummary(said)} />
      <p class="note">{trade.sureSaid(formatNumber(ratio.value.u * 100, 1), by)}</p>
    </section>
  );
}
