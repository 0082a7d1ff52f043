import { useEffect, useState } from 'preact/hooks';
import { formatNumber } from '~/job/format.ts';
import { encodeJob } from '~/job/linkText.ts';
import { Echo } from '~/parts/Echo.tsx';
import { sendLink as words } from '~/words/en/sendLink.ts';
import { CopyLink, longestLink } from '../CopyLink.tsx';
import { linkHash } from '../linked.ts';
import { job } from '../store.ts';

/** The job as a link: made anew with every figure, copied by its key, or handed to the phone's own list. */
export function SendLink() {
  const [named, setNamed] = useState(false);
  const [url, setUrl] = useState('');
  const record = job.value;
  useEffect(() => {
    let here = true;
    void encodeJob(record, named).then((text) => {
      if (here) setUrl(`${location.origin}${location.pathname}${linkHash}${text}`);
    });
    return () => {
      here = false;
    };
  }, [record, named]);
  // Whoever closes that list again has decided so.
  const send = () => void navigator.share({ title: words.title, url }).catch(() => {});
  return (
    <div class="send-link">
      <p class="label">{words.lead}</p>
      <label class="choice">
        <input type="checkbox" checked={named} onChange={(event) => setNamed(event.currentTarget.checked)} />
        <span>{words.named}</span>
      </label>
      <CopyLink id="send-link" label={words.field} url={url} />
      {typeof navigator.share === 'function' && (
        <button type="button" class="plain-button" onClick={send}>
          {words.send}
        </button>
      )}
      {url.length > longestLink && <Echo>{words.long(formatNumber(url.length, 0))}</Echo>}
    </div>
  );
}
