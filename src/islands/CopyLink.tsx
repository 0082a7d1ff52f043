import { useEffect, useState } from 'preact/hooks';
import { copyLink as words } from '~/words/en/copyLink.ts';

/** Some programs cut longer links short. */
export const longestLink = 1900;

interface Props {
  readonly id: string;
  readonly label: string;
  readonly url: string;
  readonly hint?: string;
}

/** A link to read, to mark and to copy. */
export function CopyLink({ id, label, url, hint }: Props) {
  const [said, say] = useState<string | null>(null);
  useEffect(() => say(null), [url]);
  const copy = () => {
    const done = navigator.clipboard?.writeText(url) ?? Promise.reject();
    done.then(
      () => say(words.copied),
      () => say(words.notCopied),
    );
  };
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="field-box">
        <input id={id} type="text" readOnly value={url} onFocus={(event) => event.currentTarget.select()} />
        <button type="button" class="unit-key" onClick={copy}>
          {words.copy}
        </button>
      </div>
      {hint && <p class="hint">{hint}</p>}
      <p role="status">{said}</p>
    </div>
  );
}
