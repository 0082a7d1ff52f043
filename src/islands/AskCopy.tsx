import { useEffect, useRef } from 'preact/hooks';
import { demoNotices } from '~/words/en/notices.ts';
import { refused } from './jobStore.ts';
import { startOwn, takeCopy } from './opening.ts';

/** The demo is read-only: whoever types in it is asked what they would like instead. */
export function AskCopy() {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (refused.value) dialog.current?.showModal();
  }, [refused.value]);
  const close = () => {
    refused.value = false;
    dialog.current?.close();
  };
  const then = (act: () => void) => () => {
    close();
    act();
  };
  return (
    <dialog ref={dialog} class="ask" aria-labelledby="ask-head" onClose={close}>
      <h2 id="ask-head">{demoNotices.ask}</h2>
      <p>{demoNotices.askLead}</p>
      <div class="ask-keys">
        <button type="button" class="action" onClick={then(startOwn)}>
          {demoNotices.own}
        </button>
        <button type="button" class="plain-button" onClick={then(takeCopy)}>
          {demoNotices.copy}
        </button>
        <button type="button" class="plain-button" onClick={close}>
          {demoNotices.stay}
        </button>
      </div>
    </dialog>
  );
}
