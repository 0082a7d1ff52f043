import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { Check } from '~/parts/Echo.tsx';
import { href } from '~/parts/href.ts';
import { identity } from '~/words/en/identity.ts';
import { incomplete, report, reportWords } from '~/words/en/report.ts';
import { keepDrawing } from '../capacity/sure/draws.ts';
import { LateFold } from '../LateFold.tsx';
import { lazy } from '../lazy.tsx';
import { NoteField } from '../NoteField.tsx';
import { noticed } from '../opening.ts';
import { joined } from '../show.ts';
import { assessment, refused, source } from '../store.ts';
import { note } from './facts.ts';
import { OwnerPage } from './OwnerPage.tsx';
import { made, missing, outcome } from './state.ts';

const AskCopy = lazy(() => import('../AskCopy.tsx').then((module) => module.AskCopy));
const Notices = lazy(() => import('../Notices.tsx').then((module) => module.Notices));
const TradePage = lazy(() => import('./TradePage.tsx').then((module) => module.TradePage));
const SendLink = lazy(() => import('../capacity/SendLink.tsx').then((module) => module.SendLink));

/** Both pages, and above them what a screen needs; or what is still missing for them. */
export function Report({ children }: { children?: ComponentChildren }) {
  useEffect(keepDrawing, []);
  const place = note('address');
  useEffect(() => {
    // A report that is saved as a file is called after its job.
    if (place !== '') document.title = report.head(place);
  }, [place]);
  return (
    <div class="report">
      {noticed.value && <Notices />}
      {children}
      {outcome.value === null ? (
        <Incomplete />
      ) : (
        <>
          <Tools />
          <OwnerPage />
          <TradePage />
        </>
      )}
      {refused.value && <AskCopy />}
    </div>
  );
}

const sheetOf = () => href(source.value === 'demo' ? '/worksheets/capacity/?demo' : '/worksheets/capacity/');

function Incomplete() {
  const { measured } = assessment.value;
  const cannotBe = !measured.ok && measured.problem !== null;
  return (
    <section class="report-incomplete" role="status">
      <h2>{incomplete.head}</h2>
      {cannotBe ? <Check>{incomplete.cannotBe}</Check> : <p>{incomplete.needs(missing.value.join(', '))}</p>}
      {measured.ok && made.value && <p>{incomplete.measured(joined(made.value))}</p>}
      <p class="tools">
        <a class="action" href={sheetOf()}>
          {incomplete.way}
        </a>
        <a href={href('/reports/view/?demo')}>{incomplete.demo}</a>
      </p>
    </section>
  );
}

function Tools() {
  return (
    <div class="report-tools">
      <p class="tools">
        <button type="button" class="action" onClick={() => print()}>
          {report.print}
        </button>
        <a href={sheetOf()}>{report.backToSheet}</a>
        <a href={href('/reports/reading-your-report/')}>{report.howToRead}</a>
      </p>
      {source.value !== 'linked' && (
        <LateFold summary={report.wordsFold}>
          <Words />
        </LateFold>
      )}
      <LateFold summary={report.sendFold}>
        <SendLink />
      </LateFold>
    </div>
  );
}

/** What the tester says beside the figures. */
function Words() {
  return (
    <div class="report-words">
      <p class="label quiet">{report.wordsLead}</p>
      <NoteField of="report.next" name={reportWords.next} long />
      <NoteField of="report.remarks" name={reportWords.remarks} long />
      <NoteField of="address" name={identity.address} />
      <NoteField of="tester" name={identity.tester} />
      <NoteField of="readAt" name={reportWords.readAt} />
      <NoteField of="report.instruments" name={reportWords.instruments} long />
      <NoteField of="report.calibration" name={reportWords.calibration} />
    </div>
  );
}
