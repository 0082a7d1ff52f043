import { useEffect, useState } from 'preact/hooks';
import { formatNumber } from '~/job/format.ts';
import { encodeJob } from '~/job/linkText.ts';
import { squareCode } from '~/job/squareCode.ts';
import { TitleBlock } from '~/parts/TitleBlock.tsx';
import { reportBlock, reportSquare } from '~/words/en/report.ts';
import { titleBlock } from '~/words/en/results.ts';
import { linkHash } from '../linked.ts';
import { job } from '../store.ts';
import { note, placeText, readAt, systemText, unitsText } from './facts.ts';
import { codeText, stateText } from './lockFacts.ts';

/** The foot of the first page: the square that opens the report on a phone, and the title block. */
export function OwnerBlock() {
  const url = useLink();
  const square = url === '' ? null : squareCode(url);
  return (
    <footer class="report-foot">
      <div class="report-foot-words">
        {url !== '' && (
          <p class="note">{square ? reportSquare.lead : reportSquare.none(formatNumber(url.length, 0))}</p>
        )}
        <TitleBlock kind="report-block" rows={blockRows()} />
      </div>
      {square && (
        <div class="report-square">
          <svg viewBox={`0 0 ${square.size} ${square.size}`} role="img" aria-label={reportSquare.name}>
            <path d={square.path} shape-rendering="crispEdges" />
          </svg>
        </div>
      )}
    </footer>
  );
}

const blockRows = () => [
  { name: titleBlock.job, value: note('address') || titleBlock.none, strong: true },
  { name: titleBlock.sheet, value: reportBlock.sheet(1) },
  { name: titleBlock.system, value: systemText.value || titleBlock.none },
  { name: titleBlock.units, value: unitsText.value },
  { name: titleBlock.read, value: readAt.value || titleBlock.notRead },
  { name: titleBlock.place, value: placeText.value },
  { name: titleBlock.by, value: note('tester') || titleBlock.none },
  { name: reportBlock.code, value: codeText.value, strong: true },
  { name: titleBlock.state, value: stateText.value },
];

/** The link to this very report, without address and name: '' until it is made. */
function useLink(): string {
  const [url, setUrl] = useState('');
  const record = job.value;
  useEffect(() => {
    let here = true;
    void encodeJob(record, false).then((text) => {
      if (here) setUrl(`${location.origin}${location.pathname}${linkHash}${text}`);
    });
    return () => {
      here = false;
    };
  }, [record]);
  return url;
}
