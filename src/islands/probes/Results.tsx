import { useEffect } from 'preact/hooks';
import { usual } from '~/calc/confidence/defaults.ts';
import { driftBeyond } from '~/calc/confidence/probeSources.ts';
import { weightsOf } from '~/calc/sideBySide.ts';
import { DifferenceScale } from '~/charts/DifferenceScale.tsx';
import { TwoRanges } from '~/charts/TwoRanges.tsx';
import { unitLabel } from '~/job/format.ts';
import { pairsIn } from '~/job/sure/pairs.ts';
import { differenceUnit, displayUnit, fromSi } from '~/job/units.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { href } from '~/parts/href.ts';
import { Ledger, type LedgerLine } from '~/parts/Ledger.tsx';
import { probeResults as words } from '~/words/en/probeResults.ts';
import { sureBody } from '~/words/en/sureFigures.ts';
import { capacityText, humidityStep, inUnitOf, joined, percent, temperatureStep } from '../show.ts';
import { askExpectedHalf, assessment, expectedHalf, interpreted, job, system } from '../store.ts';
import { compared, first, isDesk, measure } from './model.ts';

/** What stands below the sentences: the differences drawn, what is done with them, what they are worth, what remains. */
export function Results() {
  useEffect(askExpectedHalf, []);
  return (
    <>
      <section>
        <h2>{words.drawing}</h2>
        <Drawings />
        <Table />
        <Drift />
      </section>
      <Offsets />
      <Worth />
      <p class="tools">
        <a href={href('/worksheets/capacity/')}>{words.toSheet}</a>
      </p>
    </>
  );
}

/** The readings of the air that the answer speaks of, temperature and humidity each on its own scale. */
function Drawings() {
  const found = first.value;
  if (!found) return null;
  const pairs = pairsIn(job.value, compared.return.value ? 'return' : 'supply');
  const width = isDesk.value ? 600 : 358;
  const step = differenceUnit(displayUnit.temperature[system.value]);
  const wet = measure.value === 'wetBulb';
  const humidityUnit = wet ? step : 'percent';
  const dry = pairs.map(({ entering, leaving }) => leaving.dryBulb - entering.dryBulb);
  const humid = pairs.flatMap(({ entering, leaving }) =>
    entering.humidity === null || leaving.humidity === null ? [] : [leaving.humidity - entering.humidity],
  );
  const { dryBulb, humidity } = found.difference;
  const scale = (
    what: string,
    values: readonly number[],
    mean: number,
    common: number,
    unit: typeof step | 'percent',
    text: (si: number) => string,
  ) => (
    <DifferenceScale
      differences={values.map((one) => fromSi(one, unit))}
      mean={fromSi(mean, unit)}
      common={fromSi(common, unit)}
      unit={unitLabel(unit)}
      width={width}
      words={{
        common: `${words.common}, ${what}`,
        summary: words.scale(what, text(mean), text(Math.min(...values)), text(Math.max(...values)), values.length),
      }}
    />
  );
  return (
    <>
      {scale(words.temperature, dry, -dryBulb, usual.difference.dryBulb, step, temperatureStep)}
      {humidity !== null &&
        scale(
          wet ? words.wetBulb : words.humidity,
          humid,
          -humidity,
          usual.difference[measure.value],
          humidityUnit,
          (si) => humidityStep(si, measure.value),
        )}
      <p class="answer-note">{words.differences}</p>
    </>
  );
}

const airs = ['return', 'supply', 'end'] as const;

function Table() {
  const step = differenceUnit(displayUnit.temperature[system.value]);
  const lines = airs.flatMap((air): LedgerLine[] => {
    const found = compared[air].value;
    if (!found) return [];
    const { dryBulb, humidity, scatter } = found.difference;
    const known = scatter ? ` (${words.known} ${joined(inUnitOf(scatter.dryBulb, step, 2))})` : '';
    const said = humidity === null ? '' : `, ${humidityStep(-humidity, measure.value)}`;
    return [{ name: `${words.air[air]}${known}`, number: `${temperatureStep(-dryBulb)}${said}`, unit: '' }];
  });
  return (
    <details class="fold">
      <summary>{words.table}</summary>
      <Ledger caption={words.differences} lines={lines} />
    </details>
  );
}

function Drift() {
  const { test } = interpreted.value;
  const drift = test.sideBySide?.drift;
  if (!drift) return null;
  const said = words.drift(temperatureStep(drift.dryBulb), humidityStep(drift.humidity, measure.value));
  const beyond = driftBeyond(test);
  return beyond.dryBulb || beyond.humidity ? (
    <Check>
      {said} {words.driftBig}
    </Check>
  ) : (
    <Echo>
      {said} {words.driftSmall}
    </Echo>
  );
}

/** By how much each reading is moved. */
function Offsets() {
  const { sideBySide } = interpreted.value.test;
  if (!sideBySide) return null;
  const { returnAir, supplyAir, reference, shared } = sideBySide;
  const weights = weightsOf(reference);
  const error = shared?.error ?? { dryBulb: 0, humidity: 0 };
  const moved = (difference: typeof returnAir, by: number): string => {
    const humidity =
      difference.humidity === null
        ? ''
        : `, ${signed(humidityStep(by * difference.humidity - error.humidity, measure.value))}`;
    return `${signed(temperatureStep(by * difference.dryBulb - error.dryBulb))}${humidity}`;
  };
  return (
    <section>
      <h2>{words.offsets}</h2>
      <Ledger
        caption={words.offsets}
        lines={[
          { name: words.returnReading, number: moved(returnAir, -weights.entering), unit: '' },
          { name: words.supplyReading, number: moved(supplyAir ?? returnAir, weights.leaving), unit: '' },
        ]}
      />
      {(error.dryBulb !== 0 || error.humidity !== 0) && (
        <p class="answer-note">
          {words.byStandard(
            [
              error.dryBulb !== 0 && signed(temperatureStep(-error.dryBulb)),
              error.humidity !== 0 && signed(humidityStep(-error.humidity, measure.value)),
            ]
              .filter(Boolean)
              .join(', '),
          )}
        </p>
      )}
    </section>
  );
}

const signed = (text: string) => (/^[−-]|^0(\.0)?\D*$/.test(text) ? text : `+${text}`);

/** What the check changes: the capacity, and the range of the share. */
function Worth() {
  const half = expectedHalf.value;
  const { measured, ratio } = assessment.value;
  const { test } = interpreted.value;
  if (!half || !measured.ok || !test.sideBySide) {
    return (
      <section>
        <h2>{words.worth}</h2>
        <p>
          {words.worthWaits} {words.worthUsual}
        </p>
      </section>
    );
  }
  const without = half.assess({ ...test, sideBySide: null });
  if (!without.measured.ok) return null;
  const change = measured.value.total / without.measured.value.total - 1;
  const said = `${change < 0 ? '−' : '+'}${joined(inUnitOf(Math.abs(change), 'percent', 1))}`;
  return (
    <section>
      <h2>{words.worth}</h2>
      <p>{words.worthLead(capacityText(without.measured.value.total), capacityText(measured.value.total), said)}</p>
      {ratio.ok && without.ratio.ok && (
        <>
          <p class="label quiet">{words.rangeLead}</p>
          <Ranges
            ranges={[
              { name: sureBody.withoutCheck, ...half.outward(without.ratio.value.interval) },
              { name: sureBody.now.checked, ...half.outward(ratio.value.interval) },
            ]}
          />
        </>
      )}
    </section>
  );
}

function Ranges({ ranges }: { ranges: readonly { name: string; low: number; high: number }[] }) {
  const { line } = interpreted.value.test;
  const ends = ({ low, high }: { low: number; high: number }) =>
    [String(Math.round(low * 100)), percent(high)] as const;
  const parts = ranges.map((range) => sureBody.part(range.name, ...ends(range))).join('; ');
  const said = { line: sureBody.line(percent(line)), summary: sureBody.pictureSummary(parts, percent(line)) };
  return <TwoRanges ranges={ranges} line={line} width={isDesk.value ? 600 : 358} words={said} />;
}
