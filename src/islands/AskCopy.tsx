import { useEffect, useRef } from 'preact/hooks';
import { demoNotices } from '~/words/en/notices.ts';
import { linkNotices } from '~/words/en/sendLink.ts';
import { refused, source } from './jobStore.ts';
import { startOwn, takeCopy } from './ownJob.ts';

/** The demo and the job of a link are read-only: whoever types in them is asked what they would like instead. */
export function AskCopy() {
  const words = source.value === 'linked' ? linkNotices : demoNotices;
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
      <h2 id="ask-head">{words.ask}</h2>
      <p>{words.askLead}</p>
      <div class="ask-keys">
        <button type="button" class="action" onClick={then(startOwn)}>
          {words.own}
        </button>
        <button type="button" class="plain-button" onClick={then(takeCopy)}>
          {words.copy}
        </button>
        <button type="button" class="plain-button" onClick={close}>
          {words.stay}
        </button>
      </div>
    </dialog>
  );
}
