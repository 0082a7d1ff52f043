import { changesAfterLock, type Lock, lockEdits, lockedOf, sheetCode } from '~/job/lock.ts';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { lockWords as words } from '~/words/en/lock.ts';
import { changeSaid } from '../lockSaid.ts';
import { clock } from '../show.ts';
import { edit, job } from '../store.ts';

/** Stamps the job as read, or says when that was done, under which code, and what was changed since. */
export function LockFigures() {
  const lock = lockedOf(job.value);
  return <div class="lock">{lock ? <Locked lock={lock} /> : <Open />}</div>;
}

function Open() {
  return (
    <>
      <p class="label">{words.lead}</p>
      <button
        type="button"
        class="plain-button"
        onClick={() => edit(...lockEdits(job.value, new Date().toISOString()))}
      >
        {words.lock}
      </button>
    </>
  );
}

function Locked({ lock: { at, code } }: { lock: Lock }) {
  const changes = changesAfterLock(job.value);
  const day = new Date(at).toLocaleDateString('en', { day: 'numeric', month: 'long', year: 'numeric' });
  return (
    <>
      <p role="status">
        {words.locked(day, clock(at))} <b class="sheet-code">{words.code(code)}</b>
      </p>
      <p class="label">{changes.length === 0 ? `${words.none} ${words.codeSay}` : words.now(sheetCode(job.value))}</p>
      {changes.length > 0 && (
        <ScrollRegion label={words.changes}>
          <table class="ledger">
            <caption>{words.changes}</caption>
            <thead>
              <tr>
                {[words.what, words.was, words.is].map((head) => (
                  <th scope="col" key={head}>
                    {head}
                  </th>
                ))}
                <th scope="col" class="number">
                  {words.at}
                </th>
              </tr>
            </thead>
            <tbody>
              {changes.map((change) => {
                const said = changeSaid(change);
                return (
                  <tr key={`${change.slot}/${change.key}/${change.row}`}>
                    <th scope="row">{said.what}</th>
                    <td>{said.was}</td>
                    <td>{said.now}</td>
                    <td class="number">{said.at}</td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </ScrollRegion>
      )}
      <p class="hint">{words.once}</p>
    </>
  );
}
