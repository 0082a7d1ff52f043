import type { Ranged } from '~/calc/types.ts';
import { Shares } from '~/charts/Shares.tsx';
import { formatNumber } from '~/job/format.ts';
import type { UnitKey } from '~/job/types.ts';
import { Ledger, type LedgerLine } from '~/parts/Ledger.tsx';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { improvementParts, improvementWords } from '~/words/en/improvements.ts';
import { rangedNames, sureFigures as words } from '~/words/en/sureFigures.ts';
import { draws } from '../../drawOptions.ts';
import { capacity, inUnitOf, joined, percent, type Shown } from '../../show.ts';
import { assessment, system } from '../../store.ts';
import { isDesk } from '../model.ts';
import { causes, largest } from './causes.ts';
import { drawn } from './draws.ts';
import { endsText, shown, verdict } from './verdict.ts';

/** What stands behind the range: its uncertainty, the chance, the guard band; what makes it and what would narrow it. */
export function Figures() {
  return (
    <div class="sure-figures">
      {shown.value && (
        <>
          <Ledger caption={words.ledger} lines={figureLines()} />
          <p class="note">{words.lead}</p>
          <Causes />
          <Improvements />
        </>
      )}
      <Ranges />
    </div>
  );
}

const points = (fraction: number): Shown => ({ number: formatNumber(fraction * 100, 1), unit: words.points });
const finer = (fraction: number) => inUnitOf(fraction, 'percent', 1);

function figureLines(): readonly LedgerLine[] {
  const range = shown.value;
  const { ratio } = assessment.value;
  if (!range || !ratio.ok) return [];
  const found = verdict.value;
  const { u, degreesOfFreedom } = ratio.value;
  const chance = words.chances[range.confidence > 0.92 ? 'nineteen' : 'nine'];
  const [low, high] = endsText(range);
  const free = degreesOfFreedom === null ? words.endless : formatNumber(degreesOfFreedom, 0);
  return [
    { name: words.share, ...finer(range.value), sum: true },
    { name: words.range(chance), number: words.between(low, high.replace(/\D+$/, '')), unit: '%' },
    ...drawnLines(),
    { name: words.u, ...points(u) },
    { name: words.expanded, ...points(2 * u) },
    { name: words.freedom, number: free, unit: '' },
    ...(found
      ? [
          {
            name: words.probability(percent(found.line)),
            number: found.probability < 0.001 ? words.probabilityNone : formatNumber(found.probability, 3),
            unit: '',
          },
          { name: words.acceptFrom, ...finer(found.acceptFrom) },
          { name: words.rejectBelow, ...finer(found.rejectBelow) },
          { name: words.by, number: words[found.by], unit: '' },
        ]
      : []),
  ];
}

/** The ends of either way to them, finer than they decide, and how many draws could not be. */
function drawnLines(): readonly LedgerLine[] {
  const { ratio } = assessment.value;
  if (!ratio.ok || !drawn.value?.ratio.ok) return [];
  const ends = ({ low, high }: { readonly low: number; readonly high: number }) => {
    const [from, to] = [finer(low), finer(high)];
    return { number: words.between(from.number, to.number), unit: to.unit };
  };
  const count = formatNumber(draws, 0);
  return [
    { name: words.byFirstOrder, ...ends(ratio.value.interval) },
    { name: words.byDraws(count, formatNumber(drawn.value.redrawn, 0)), ...ends(drawn.value.ratio.value.interval) },
  ];
}

/** The causes as a picture, a sentence and a table. */
function Causes() {
  const shares = largest(6);
  const said = shares.map(({ name, share }) => `${name} ${percent(share)}`).join(', ');
  return (
    <section>
      <h3>{words.causes}</h3>
      <p class="label quiet">{words.causesLead}</p>
      <Shares shares={shares} width={isDesk.value ? 600 : 358} summary={words.causesSummary(said)} />
      <details class="fold">
        <summary>{words.causesTable}</summary>
        <table class="ledger">
          <caption class="spoken">{words.causes}</caption>
          <thead>
            <tr>
              <th scope="col">{words.cause}</th>
              <th scope="col" class="number">
                {words.uShort}
              </th>
              <th scope="col" class="number">
                {words.shareShort}
              </th>
            </tr>
          </thead>
          <tbody>
            {causes.value.map(({ name, u, share }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td class="number">{points(u).number}</td>
                <td class="number">{joined(finer(share))}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </section>
  );
}

function Improvements() {
  const { improvements } = assessment.value;
  if (improvements.length === 0) return null;
  return (
    <section>
      <h3>{words.improvements}</h3>
      <p class="label quiet">{words.improvementsLead}</p>
      <ScrollRegion label={words.improvements}>
        <table class="ledger">
          <caption class="spoken">{words.improvements}</caption>
          <thead>
            <tr>
              <th scope="col">{words.check}</th>
              <th scope="col" class="number">
                {words.wouldGive}
              </th>
              <th scope="col" class="number">
                {words.takes}
              </th>
            </tr>
          </thead>
          <tbody>
            {improvements.map((one) => (
              <tr key={one.change}>
                <th scope="row">
                  {improvementWords[one.change]?.name ?? one.change}
                  {one.decides && (
                    <>
                      {', '}
                      <b>{words.clears}</b>
                    </>
                  )}
                </th>
                <td class="number">{words.between(...endsText(one))}</td>
                <td class="number">{improvementParts.minutes(Math.round(one.takes / 60))}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
    </section>
  );
}

/** In which unit each figure is read, and with how many decimals; capacities have their own way. */
const units: Readonly<
  Record<Exclude<Ranged, 'total' | 'sensible' | 'latent'>, readonly [ip: UnitKey, si: UnitKey, decimals: number]>
> = {
  sensibleHeatRatio: ['percent', 'percent', 0],
  condensate: ['lbPerHour', 'kgPerHour', 1],
  dryAirFlow: ['lbPerHour', 'kgPerHour', 0],
  temperatureDrop: ['degFStep', 'degCStep', 1],
  supplyHumidity: ['percent', 'percent', 0],
  apparatusDewPoint: ['degF', 'degC', 1],
  bypassFactor: ['percent', 'percent', 0],
};

function shownIn(figure: Ranged, value: number): Shown {
  if (figure === 'total' || figure === 'sensible' || figure === 'latent') return capacity(value);
  const [ip, si, decimals] = units[figure];
  return inUnitOf(value, system.value === 'ip' ? ip : si, decimals);
}

/** Every figure that was measured, between its ends. */
function Ranges() {
  const { ranges } = assessment.value;
  const lines = (Object.keys(rangedNames) as Ranged[]).flatMap((figure): LedgerLine[] => {
    const range = ranges[figure];
    if (!range) return [];
    const { low, high } = range.interval;
    const [from, to] = [shownIn(figure, low), shownIn(figure, high)];
    return [{ name: rangedNames[figure], number: words.between(from.number, to.number), unit: to.unit }];
  });
  if (lines.length === 0) return null;
  return (
    <section>
      <h3>{words.ranges}</h3>
      <Ledger caption={words.ranges} lines={lines} />
    </section>
  );
}
