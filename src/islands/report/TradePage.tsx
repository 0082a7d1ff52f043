import { traceOf } from '~/job/log/trace.ts';
import { TitleBlock } from '~/parts/TitleBlock.tsx';
import { report, reportBlock } from '~/words/en/report.ts';
import { trade } from '~/words/en/reportTrade.ts';
import { results, titleBlock } from '~/words/en/results.ts';
import { ProcessChart } from '../capacity/AirChart.tsx';
import { Derates } from '../capacity/Derates.tsx';
import { assessment, interpreted, job } from '../store.ts';
import { note, placeText, readAt, systemText, unitsText } from './facts.ts';
import { codeText, stateText } from './lockFacts.ts';
import { PageHead } from './OwnerPage.tsx';
import { outcome } from './state.ts';
import { Airflow } from './trade/Airflow.tsx';
import { Equipment } from './trade/Equipment.tsx';
import { Readings } from './trade/Readings.tsx';
import { Remarks, SheetRemarks, Signatures } from './trade/Remarks.tsx';
import { Steady } from './trade/Steady.tsx';
import { Sure } from './trade/Sure.tsx';
import { TableFigures } from './trade/TableFigures.tsx';
import { Changes, Instruments, TakenForGranted } from './trade/Taken.tsx';

/** The second page, for the trade: all that the first one rests on. */
export function TradePage() {
  if (outcome.value === null) return null;
  const { expected } = assessment.value;
  const trace = traceOf(job.value);
  const record = trace?.rows.some(({ capacity }) => capacity !== null) ? trace : null;
  const granted = (
    <div>
      <TakenForGranted isRecorded={record !== null} />
      <Changes />
    </div>
  );
  return (
    <article class="report-page report-trade" aria-labelledby="report-trade-head">
      <PageHead id="report-trade-head" page={report.tradePage} />
      <Equipment />
      <Readings />
      <div class="report-two report-figures">
        <div>
          <TableFigures />
          <Airflow />
          <Instruments />
        </div>
        {expected.ok && (
          <section>
            <h3>{trade.steps}</h3>
            <Derates nominal={interpreted.value.test.nominalCapacity} />
          </section>
        )}
      </div>
      <div class="report-two">
        <section>
          <h3>{results.coilDoes}</h3>
          <div class="wide">
            <ProcessChart width={400} height={record ? 190 : 204} />
          </div>
          <div class="narrow">
            <ProcessChart width={358} />
          </div>
        </section>
        {record ? <Steady of={record} /> : <Sure />}
      </div>
      <SheetRemarks />
      <div class="report-two">
        {record ? <Sure /> : granted}
        <div>
          {record && granted}
          <Remarks />
          <Signatures />
        </div>
      </div>
      <TitleBlock rows={blockRows()} />
    </article>
  );
}

const blockRows = () => [
  { name: titleBlock.job, value: note('address') || titleBlock.none, strong: true },
  { name: titleBlock.system, value: systemText.value || titleBlock.none, strong: true },
  { name: titleBlock.sheet, value: reportBlock.sheet(2), strong: true },
  { name: titleBlock.read, value: readAt.value || titleBlock.notRead },
  { name: titleBlock.place, value: placeText.value },
  { name: titleBlock.units, value: unitsText.value },
  { name: titleBlock.by, value: note('tester') || titleBlock.none },
  { name: titleBlock.state, value: stateText.value },
  { name: reportBlock.code, value: codeText.value, strong: true },
];
