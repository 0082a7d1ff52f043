import { standardVolumeFlow } from '~/calc/dryAirFlow.ts';
import { type MatrixLine, ratingMatrix } from '~/job/ratingMatrix.ts';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { trade } from '~/words/en/reportTrade.ts';
import { shareWords } from '~/words/en/verdict.ts';
import { estimateBand } from '../../capacity/estimate.ts';
import { inUnitOf, joined, ofKind } from '../../show.ts';
import { interpreted, system } from '../../store.ts';
import { note } from '../facts.ts';

/** The figures of the maker's table that the expectation was read from, laid out as they are printed. */
export function TableFigures() {
  const { rating } = interpreted.value.test;
  if (!rating) return null;
  const page = note('rating.page');
  return (
    <section>
      <h3>{trade.table}</h3>
      {rating.from === 'generic' ? (
        <p>
          {trade.noTable} {estimateBand.value !== null && shareWords.estimate(estimateBand.value)}
        </p>
      ) : (
        <Matrix />
      )}
      <p class="note">
        {trade.basis[rating.basis]} {page !== '' && trade.page(page.replace(/\.$/, ''))}
      </p>
    </section>
  );
}

const degrees = (si: number) => {
  const unit = system.value === 'ip' ? 'degF' : 'degC';
  return joined(
    inUnitOf(si, unit, Number.isInteger(Math.round(Number(inUnitOf(si, unit, 2).number) * 100) / 100) ? 0 : 1),
  );
};

const figure = (watts: number | null | undefined) =>
  typeof watts === 'number' ? inUnitOf(watts, system.value === 'ip' ? 'btuh' : 'kw').number : null;

function Matrix() {
  const { outdoors, lines } = ratingMatrix(interpreted.value.test.rating?.rows ?? []);
  // What all lines share is said once.
  const shared = new Set(lines.map(holdsFor)).size === 1 ? holdsFor(lines[0] as MatrixLine) : '';
  const nameOf = (line: MatrixLine) =>
    [trade.wetBulb(degrees(line.enteringWetBulb)), shared === '' && holdsFor(line)].filter(Boolean).join(', ');
  const hasSensible = lines.some(({ figures }) => figures.some((one) => typeof one?.sensible === 'number'));
  return (
    <>
      <ScrollRegion label={trade.table}>
        <table class="ledger">
          <caption class="spoken">{trade.table}</caption>
          <thead>
            <tr>
              <th scope="col">{trade.tableHead}</th>
              {outdoors.map((at) => (
                <th key={at} scope="col" class="number">
                  {degrees(at)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {lines.map((line, index) => (
              <tr key={index}>
                <th scope="row">{nameOf(line)}</th>
                {line.figures.map((one, at) => (
                  <td key={at} class="number">
                    {figure(one?.total) ?? trade.notSaid}
                    {figure(one?.sensible) && (
                      <>
                        <br />
                        <small>{figure(one?.sensible)}</small>
                      </>
                    )}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
      {(hasSensible || shared !== '') && (
        <p class="note">
          {shared !== '' && trade.holds(shared)} {hasSensible && trade.sensibleBelow}
        </p>
      )}
    </>
  );
}

/** What a line holds for beside its wet bulb. */
function holdsFor({ enteringDryBulb, dryAirFlow }: MatrixLine): string {
  return [
    enteringDryBulb !== null && trade.dryBulb(degrees(enteringDryBulb)),
    dryAirFlow !== null && joined(ofKind('volumeFlow', standardVolumeFlow(dryAirFlow))),
  ]
    .filter(Boolean)
    .join(', ');
}
