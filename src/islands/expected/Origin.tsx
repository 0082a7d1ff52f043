import { href } from '~/parts/href.ts';
import { tableWords } from '~/words/en/expected.ts';
import { isStandIn, isSurface, shown } from './model.ts';

/** Whose table this is, what its figures mean, and what it cannot show. */
export function Origin() {
  const now = shown.value;
  if (!now) return null;
  const { table, figures, job } = now;
  const whose = table.from === 'generic' ? tableWords.generic : tableWords.own(figures);
  return (
    <p class="expected-origin">
      {job.invented === true && (
        <>
          <span class="invented">{tableWords.demo}</span>{' '}
        </>
      )}
      {isStandIn.value ? (
        <>
          {tableWords.demoSay} <a href={href('/worksheets/capacity/')}>{tableWords.addTable}</a>.
        </>
      ) : (
        whose
      )}{' '}
      {table.basis === 'net' ? tableWords.net : tableWords.gross} {!isSurface.value && tableWords.tooSmall}
    </p>
  );
}
