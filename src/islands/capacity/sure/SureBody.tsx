import { measureOf } from '~/calc/sideBySide.ts';
import { TwoRanges } from '~/charts/TwoRanges.tsx';
import { chosen } from '~/job/choices.ts';
import { measuredHere } from '~/job/readings.ts';
import { joinSure } from '~/job/sure/join.ts';
import { Echo } from '~/parts/Echo.tsx';
import { href } from '~/parts/href.ts';
import { joinSureWords } from '~/words/en/joinSure.ts';
import { sureBody as words } from '~/words/en/sureFigures.ts';
import { rangeWords } from '~/words/en/verdict.ts';
import { QuantityField } from '../../QuantityField.tsx';
import { clock, humidityStep, percent, temperatureStep } from '../../show.ts';
import { assessment, expectedHalf, interpreted, job } from '../../store.ts';
import { endsText, shown } from './verdict.ts';

joinSure();
joinSureWords();

/** Step 6 below its question: the difference, where there is one, and what checking makes of the range. */
export function SureBody() {
  const checked = job.value.chosen.sideBySide === 'yes';
  const compared = checked && (comparedIn('return') ?? comparedIn('supply'));
  return (
    <>
      {compared ? <FromReadings /> : checked ? <Differences /> : <p class="hint">{words.how}</p>}
      <ByStandard />
      <Picture />
      <LateLine />
    </>
  );
}

/** To the sheet on which the probes are compared. */
export function SureTools() {
  const done = comparedIn('return') ?? comparedIn('supply');
  return (
    <a class="plain-button" href={href('/worksheets/probes/')}>
      {done && job.value.chosen.sideBySide === 'yes' ? words.wayDone : words.way}
    </a>
  );
}

const comparedIn = (air: 'return' | 'supply') => expectedHalf.value?.comparedIn(job.value, air) ?? null;

function Differences() {
  const wet = measuredHere(job.value)[1] === 'wetBulb';
  return (
    <>
      <div class="field-row">
        <QuantityField of="sideBySide.dryBulb" signed />
        <QuantityField of={wet ? 'sideBySide.wetBulb' : 'sideBySide.humidity'} signed />
      </div>
      <p class="hint">
        {words.differs} {moved()}
      </p>
    </>
  );
}

const moved = () => words.moved[chosen(job.value, 'probes.reference') ?? 'neither'];

/** What the stamped readings of the check come to: the typed differences then do not count. */
function FromReadings() {
  const { sideBySide, leaving } = interpreted.value.test;
  if (!sideBySide) return null;
  const { dryBulb, humidity } = sideBySide.returnAir;
  const said = humidity === null ? '–' : humidityStep(-humidity, measureOf(leaving));
  return (
    <Echo>
      {words.fromReadings(temperatureStep(-dryBulb), said)} {moved()}
    </Echo>
  );
}

/** What both readings are moved by beside their difference. */
function ByStandard() {
  const { sideBySide, leaving } = interpreted.value.test;
  const error = sideBySide?.shared?.error;
  const moved = [
    error?.dryBulb ? temperatureStep(-error.dryBulb) : '',
    error?.humidity ? humidityStep(-error.humidity, measureOf(leaving)) : '',
  ].filter(Boolean);
  return moved.length === 0 ? null : <Echo>{words.byStandard(moved.join(', '))}</Echo>;
}

/** The range as it is, and what it is with a check or would be without: against the line. */
function Picture() {
  const now = shown.value;
  if (!now) return null;
  const { test } = interpreted.value;
  const isChecked = test.sideBySide !== null;
  const other = isChecked ? without() : improved();
  const here = { name: isChecked ? words.now.checked : words.now.unchecked, low: now.low, high: now.high };
  const ranges = other ? (isChecked ? [other, here] : [here, other]) : [here];
  const line = percent(now.line);
  const parts = ranges.map((range) => words.part(range.name, ...endsText(range))).join('; ');
  return (
    <TwoRanges
      ranges={ranges}
      line={now.line}
      width={358}
      words={{ line: words.line(line), summary: words.pictureSummary(parts, line) }}
    />
  );
}

function improved() {
  const found = assessment.value.improvements.find(({ change }) => change === 'sideBySide');
  return found ? { name: words.withCheck, low: found.low, high: found.high } : null;
}

function without() {
  const half = expectedHalf.value;
  const ratio = half?.assess({ ...interpreted.value.test, sideBySide: null }).ratio;
  return half && ratio?.ok ? { name: words.withoutCheck, ...half.outward(ratio.value.interval) } : null;
}

/** A line that was set when the readings were known is allowed, and said. */
function LateLine() {
  const { entered } = job.value;
  const [set, read] = [entered.line?.at, entered['leaving.dryBulb']?.at];
  if (!set || !read || set <= read) return null;
  return <Echo>{rangeWords.lateLine(clock(set), clock(read))}</Echo>;
}
