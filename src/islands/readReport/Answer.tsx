import { sourceLabels } from '~/calc/sourceLabels.ts';
import type { Amount } from '~/calc/types.ts';
import type { Finding } from '~/job/readReport/findings.ts';
import { readReport } from '~/job/readReport/index.ts';
import { href } from '~/parts/href.ts';
import { readReport as pageWords } from '~/words/en/readReport.ts';
import {
  findingHeads,
  findingWords,
  missingWords,
  questionWords,
  readReportAnswer as words,
} from '~/words/en/readReportFindings.ts';
import { job, system } from '../jobStore.ts';
import { inUnitOf, joined, perCapacity, percent, remarkAmount, sizeText } from '../show.ts';
import { absent } from './model.ts';

const weights = ['shows', 'odd', 'cannot'] as const;

/** What the figures show, what does not fit, what they cannot show, what is missing, and three questions. */
export function Answer() {
  const { findings, missing, questions } = readReport(job.value, absent.value);
  const isEmpty = Object.values(job.value.entered).every(({ text }) => text.trim() === '') && absent.value.size === 0;
  if (isEmpty)
    return (
      <>
        <h2>{findingHeads.shows}</h2>
        <p>{words.nothing}</p>
      </>
    );
  return (
    <>
      {weights.map((weight) => (
        <Findings key={weight} weight={weight} of={findings.filter((one) => one.weight === weight)} />
      ))}
      {missing.length > 0 && (
        <section>
          <h2>{words.missing}</h2>
          <p>{words.missingSay}</p>
          <ul>
            {missing.map((one) => (
              <li key={one}>{missingWords[one]}</li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <h2>{words.questions}</h2>
        <ol>
          {questions.map((one) => (
            <li key={one}>{questionWords[one]}</li>
          ))}
        </ol>
      </section>
      <p class="tools">
        <a href={href('/reports/reading-your-report/')}>{pageWords.article}</a>
      </p>
    </>
  );
}

function Findings({ weight, of: findings }: { weight: Finding['weight']; of: readonly Finding[] }) {
  if (findings.length === 0 && weight === 'odd') return null;
  return (
    <section>
      <h2>{findingHeads[weight]}</h2>
      {findings.length === 0 && weight === 'shows' && <p>{words.noneShown}</p>}
      <ul class="read-report-findings">
        {findings.map(({ code, amounts, source }) => (
          <li key={code}>
            {findingWords[code]?.(...amounts.map(shown)) ?? code}{' '}
            {source !== 'definition' && <cite>{sourceLabels[source]}</cite>}
          </li>
        ))}
        {weight === 'cannot' && <li>{words.always}</li>}
      </ul>
    </section>
  );
}

/** An amount of a finding: shares in whole per cents, the size on a nameplate as it is called. */
function shown(one: Amount): string {
  const { symbol, kind, value } = one;
  if (symbol === 'V̇/Q') return perCapacity(value);
  if (symbol === 'Qₙ') return sizeText(value);
  if (kind === 'fraction') return percent(value);
  if (kind === 'airPressure')
    return joined(inUnitOf(value, system.value === 'ip' ? 'inwcDuct' : 'paDuct', system.value === 'ip' ? 2 : 0));
  if (kind === 'temperatureDifference')
    return joined(inUnitOf(value, system.value === 'ip' ? 'degFStep' : 'degCStep', 1));
  return joined(remarkAmount(one));
}
