import { ReportBar } from '~/charts/ReportBar.tsx';
import { VerdictMark } from '~/parts/VerdictMark.tsx';
import { ownerParts, ownerQuestions, report } from '~/words/en/report.ts';
import { results } from '~/words/en/results.ts';
import { shareWords, verdictNames, verdictSentences } from '~/words/en/verdict.ts';
import { endsText, shown, verdict } from '../capacity/sure/verdict.ts';
import { lazy } from '../lazy.tsx';
import { capacityText, joined, percent } from '../show.ts';
import { assessment, job } from '../store.ts';
import { note, readAt, systemText } from './facts.ts';
import { Sentences } from './Sentences.tsx';
import { made, outcome } from './state.ts';

const OwnerBlock = lazy(() => import('./OwnerBlock.tsx').then((module) => module.OwnerBlock));

/** The first page: what was tested, the verdict, one picture, three sentences, and what it does not prove. */
export function OwnerPage() {
  const came = outcome.value;
  if (came === null) return null;
  const next = note('report.next');
  return (
    <article class="report-page report-owner" aria-labelledby="report-owner-head">
      <PageHead id="report-owner-head" page={report.ownerPage} other={report.ownerOther} />
      <Verdict />
      <Picture />
      <Sentences />
      <div class="report-two">
        <section>
          <h3>{ownerParts.doesNotProve}</h3>
          <p>{ownerParts.doesNotProveSay}</p>
        </section>
        <section>
          <h3>{ownerParts.next}</h3>
          {next === '' ? <ToWrite said={ownerParts.nextEmpty} lines={2} /> : <p class="report-typed">{next}</p>}
        </section>
      </div>
      <section class="report-questions">
        <h3>{ownerParts.questions}</h3>
        <ol>
          {ownerQuestions[came].map((question) => (
            <li key={question}>{question}</li>
          ))}
        </ol>
      </section>
      <OwnerBlock />
    </article>
  );
}

/** What was tested, when and by whom; and that its figures are invented, where they are. */
export function PageHead({ id, page, other = '' }: { id: string; page: string; other?: string }) {
  return (
    <header class="report-head">
      <div>
        <h2 id={id}>{report.head(note('address'))}</h2>
        {other && <p>{report.tested(systemText.value, readAt.value, note('tester'))}</p>}
        {job.value.invented && <p class="invented">{report.invented}</p>}
      </div>
      <p class="quiet">
        {page}
        {other && <br />}
        {other}
      </p>
    </header>
  );
}

/** Lines to write on with a pen; on a screen a sentence in their place. */
export function ToWrite({ said, lines }: { said: string; lines: number }) {
  return (
    <>
      <p class="report-screen quiet">{said}</p>
      <div class="report-lines" aria-hidden="true">
        {Array.from({ length: lines }, (_, index) => (
          <span key={index} />
        ))}
      </div>
    </>
  );
}

/** The mark and the sentence that is the biggest thing on the sheet. */
function Verdict() {
  const found = verdict.value;
  const range = shown.value;
  const came = outcome.value;
  if (came === null) return null;
  if (came === 'withheld' || !found || !range)
    return (
      <section class="report-verdict">
        <p class="answer-sentence">{report.noVerdict}</p>
      </section>
    );
  return (
    <section class="report-verdict">
      <VerdictMark of={found.outcome} />
      <div>
        <p class="answer-sentence">{verdictSentences[came]}</p>
        <p>
          <b>{verdictNames[found.outcome](percent(found.line))}:</b>{' '}
          {report.shareOf(percent(range.value), ...endsText(range))}
        </p>
      </div>
    </section>
  );
}

/** One picture from zero, for a wide page and for a phone; without a share there is none to draw. */
function Picture() {
  const range = shown.value;
  const { expected } = assessment.value;
  if (!range || !expected.ok || !made.value) return null;
  const [measuredAmount, shouldAmount] = [joined(made.value), capacityText(expected.value.total)];
  const line = percent(range.line);
  const words = {
    line: results.scaleLine(line),
    should: results.scaleShould,
    shouldBe: report.barShould,
    measured: report.barMeasured,
    measuredAmount,
    shouldAmount,
    summary: report.barSummary(percent(range.value), ...endsText(range), line, measuredAmount, shouldAmount),
  };
  return (
    <section class="report-picture">
      {(['wide', 'narrow'] as const).map((size) => (
        <div key={size} class={size}>
          <ReportBar
            share={range.value}
            line={range.line}
            range={range}
            width={size === 'wide' ? 658 : 358}
            words={words}
          />
        </div>
      ))}
      {outcome.value === 'withheld' && <p class="note">{shareWords.withheld}</p>}
    </section>
  );
}
