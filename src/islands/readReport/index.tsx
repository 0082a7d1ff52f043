import { useEffect } from 'preact/hooks';
import { measuredHere } from '~/job/readings.ts';
import type { ReportLineId } from '~/job/readReport/lines.ts';
import { reportLines } from '~/job/readReport/lines.ts';
import type { QuantityKey } from '~/job/types.ts';
import { lineWords, readReport as words } from '~/words/en/readReport.ts';
import { ChoiceField } from '../ChoiceField.tsx';
import { edit, job } from '../jobStore.ts';
import { lazy } from '../lazy.tsx';
import { followUnits } from '../opening.ts';
import { QuantityField } from '../QuantityField.tsx';
import { absent, setAbsent, startAgain, startReport } from './model.ts';

const Answer = lazy(() => import('./Answer.tsx').then((module) => module.Answer));

/** A report of somebody else's: its figures line by line, and what they say. */
export function ReadReport() {
  useEffect(() => {
    const unfollow = followUnits();
    const stop = startReport();
    return () => {
      unfollow();
      void stop.then((end) => end());
    };
  }, []);
  return (
    <div class="read-report">
      <section class="read-report-lines">
        <h2>{words.lines}</h2>
        <ol>
          {reportLines.map((line) => (
            <Line key={line.id} of={line} />
          ))}
        </ol>
        <p class="tools">
          <button type="button" class="plain-button" onClick={startAgain}>
            {words.clear}
          </button>
        </p>
      </section>
      <section class="read-report-answer" aria-label={words.says}>
        <Answer />
      </section>
    </div>
  );
}

/** One line of the report: its fields, or that it is not there. */
function Line({ of: line }: { of: (typeof reportLines)[number] }) {
  const { ask, also } = lineWords[line.id];
  const isAbsent = absent.value.has(line.id);
  const figures = figuresHere(line.figures);
  const name = figures[0]?.endsWith('.wetBulb')
    ? words.wetBulb[figures[0] === 'leaving.wetBulb' ? 'leaving' : 'entering']
    : ask;
  const isChosen = 'choice' in line && (figures.length === 0 || hasFigure(figures));
  return (
    <li data-absent={isAbsent ? '' : undefined}>
      <div class="read-report-line">
        {isAbsent ? (
          <p>{ask}</p>
        ) : (
          <div>
            {figures.length === 2 && <p>{ask}</p>}
            <div class="field-row">
              {figures.map((key) => (
                <QuantityField key={key} of={key} {...(figures.length === 1 ? { name, hint: also ?? '' } : {})} />
              ))}
            </div>
            {figures.length === 2 && <p class="hint">{also}</p>}
            {line.id === 'returnHumidity' && <OtherHumidity />}
            {isChosen && <ChoiceField of={line.choice} />}
          </div>
        )}
        <NotOnMine id={line.id} isAbsent={isAbsent} ask={ask} />
      </div>
    </li>
  );
}

/** Of the two measures of humidity the one that the report has. */
const figuresHere = (figures: readonly QuantityKey[]) =>
  figures.length < 2 || figures[0] === 'report.low'
    ? figures
    : figures.filter((key) => measuredHere(job.value).some((what) => key.endsWith(`.${what}`)));

const hasFigure = (figures: readonly QuantityKey[]) => figures.some((key) => job.value.entered[key]?.text.trim());

function OtherHumidity() {
  const wet = measuredHere(job.value)[1] === 'wetBulb';
  return (
    <button
      type="button"
      class="plain-button"
      onClick={() => edit({ slot: 'chosen', key: 'humidityAs', to: wet ? undefined : 'wetBulb' })}
    >
      {wet ? words.humidityInstead : words.wetBulbInstead}
    </button>
  );
}

function NotOnMine({ id, isAbsent, ask }: { id: ReportLineId; isAbsent: boolean; ask: string }) {
  return (
    <label class="choice read-report-absent">
      <input type="checkbox" checked={isAbsent} onChange={(event) => setAbsent(id, event.currentTarget.checked)} />
      <span>
        {words.notOnMine}
        <span class="spoken">: {ask}</span>
      </span>
    </label>
  );
}
