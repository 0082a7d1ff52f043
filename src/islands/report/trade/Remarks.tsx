import type { Remark } from '~/calc/types.ts';
import { trade } from '~/words/en/reportTrade.ts';
import { saidAbout } from '../../capacity/remarks.ts';
import { note } from '../facts.ts';
import { ToWrite } from '../OwnerPage.tsx';

const parts = [
  'entering',
  'leaving',
  'airflow',
  'outdoors',
  'rating',
  'test',
] as const satisfies readonly Remark['about'][];

/** The tester's remarks, or room for them. */
export function Remarks() {
  const written = note('report.remarks');
  return (
    <section>
      <h3>{trade.remarks}</h3>
      {written === '' ? <ToWrite said={trade.changesNone} lines={2} /> : <p class="report-typed">{written}</p>}
    </section>
  );
}

/** What the sheet says of the readings. */
export function SheetRemarks() {
  const said = parts.flatMap((part) => saidAbout(part));
  if (said.length === 0) return null;
  return (
    <section>
      <h3>{trade.sheetSays}</h3>
      <ul>
        {said.map(({ text }) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </section>
  );
}

/** Two lines to sign on. */
export function Signatures() {
  return (
    <section class="report-signatures">
      <h3 class="spoken">{trade.signatures}</h3>
      {[trade.signTester, trade.signOwner].map((name) => (
        <p key={name}>{name}</p>
      ))}
    </section>
  );
}
