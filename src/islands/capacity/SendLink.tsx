import { useEffect, useState } from 'preact/hooks';
import { formatNumber } from '~/job/format.ts';
import { encodeJob } from '~/job/linkText.ts';
import { Echo } from '~/parts/Echo.tsx';
import { sendLink as words } from '~/words/en/sendLink.ts';
import { linkHash } from '../linked.ts';
import { job } from '../store.ts';

/** Some programs cut longer links short. */
const longest = 1900;

/** The job as a link: made anew with every figure, copied by its key, or handed to the phone's own list. */
export function SendLink() {
  const [named, setNamed] = useState(false);
  const [url, setUrl] = useState('');
  const [said, say] = useState<string | null>(null);
  const record = job.value;
  useEffect(() => {
    let here = true;
    void encodeJob(record, named).then((text) => {
      if (!here) return;
      setUrl(`${location.origin}${location.pathname}${linkHash}${text}`);
      say(null);
    });
    return () => {
      here = false;
    };
  }, [record, named]);
  const copy = () => {
    const done = navigator.clipboard?.writeText(url) ?? Promise.reject();
    done.then(
      () => say(words.copied),
      () => say(words.notCopied),
    );
  };
  // Whoever closes that list again has decided so.
  const send = () => void navigator.share({ title: words.title, url }).catch(() => {});
  return (
    <div class="send-link">
      <p class="label">{words.lead}</p>
      <label class="choice">
        <input type="checkbox" checked={named} onChange={(event) => setNamed(event.currentTarget.checked)} />
        <span>{words.named}</span>
      </label>
      <div class="field">
        <label for="send-link">{words.field}</label>
        <div class="field-box">
          <input id="send-link" type="text" readOnly value={url} onFocus={(event) => event.currentTarget.select()} />
          <button type="button" class="unit-key" onClick={copy}>
            {words.copy}
          </button>
        </div>
        <p role="status">{said}</p>
      </div>
      {typeof navigator.share === 'function' && (
        <button type="button" class="plain-button" onClick={send}>
          {words.send}
        </button>
      )}
      {url.length > longest && <Echo>{words.long(formatNumber(url.length, 0))}</Echo>}
    </div>
  );
}
