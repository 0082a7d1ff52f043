import type { Found } from '~/job/tableImport/imported.ts';
import type { Finding, Fix } from '~/job/tableImport/types.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { findingWords, fixWords, tablePaste } from '~/words/en/ratingTable.ts';
import { fix } from './model.ts';
import { carefulText, spotText } from './shown.ts';

/** What is put right without asking twice: not how a figure was read that was read well. */
const isObvious = (finding: Finding) => finding.fix !== null && finding.weight !== 'note';

/** What there is to say of a sheet and of its figures, each with its place, and a key for what is obvious to put right. */
export function Findings({ of: { findings, remarks } }: { of: Found }) {
  const obvious = findings.filter(isObvious).flatMap((finding) => finding.fix ?? []);
  // Of holes the findings speak already.
  const careful = remarks.filter(({ code }) => code !== 'hole');
  if (findings.length === 0 && careful.length === 0) return null;
  return (
    <section class="findings">
      <h3 class="label">{tablePaste.said}</h3>
      {obvious.length > 1 && (
        <p class="tools">
          <button type="button" class="plain-button" onClick={() => fix(...obvious)}>
            {tablePaste.allFixes(obvious.length)}
          </button>
        </p>
      )}
      <ul>
        {findings.map((finding) => (
          <li key={`${finding.code} ${spotText(finding.spot)}`}>
            <Said finding={finding} />
          </li>
        ))}
      </ul>
      {careful.length > 0 && <Careful of={careful} />}
    </section>
  );
}

function Said({ finding }: { finding: Finding }) {
  const { code, weight, spot, text, reading, count } = finding;
  const words = findingWords[code]({ place: spotText(spot), text, reading, count });
  const own = finding.fix;
  return (
    <>
      {weight === 'note' ? <Echo>{words}</Echo> : <Check>{words}</Check>}
      {own && (
        <button
          type="button"
          class="plain-button"
          aria-label={`${fixText(own, finding)}: ${words}`}
          onClick={() => fix(own)}
        >
          {fixText(own, finding)}
        </button>
      )}
    </>
  );
}

function fixText(own: Fix, { reading, count, code }: Finding): string {
  if (own.kind === 'join') return fixWords.join;
  if (own.kind === 'cells') return fixWords.cells(reading, count);
  return fixWords.meaning(code === 'inThousands' ? 'MBh' : reading);
}

/** So many remarks of one kind are told, and how many more there are. */
const told = 4;

function Careful({ of: remarks }: { of: Found['remarks'] }) {
  const codes = [...new Set(remarks.map(({ code }) => code))];
  return (
    <>
      <h4 class="label quiet">{tablePaste.careful}</h4>
      <ul>
        {codes.map((code) => {
          const all = remarks.filter((remark) => remark.code === code);
          return (
            <li key={code}>
              {all.slice(0, told).map((remark) => {
                const words = carefulText(remark);
                return remark.weight === 'note' ? <Echo key={words}>{words}</Echo> : <Check key={words}>{words}</Check>;
              })}
              {all.length > told && <p class="hint">{tablePaste.moreRemarks(all.length - told)}</p>}
            </li>
          );
        })}
      </ul>
    </>
  );
}
