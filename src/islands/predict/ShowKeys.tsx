import { predict } from '~/words/en/predict.ts';

/** The two keys under a guess: the form's own that shows, and the one that shows without. */
export function ShowKeys({ onWithout }: { onWithout: () => void }) {
  return (
    <div class="lesson-keys">
      <button type="submit" class="action">
        {predict.show}
      </button>
      <button type="button" class="plain-button" onClick={onWithout}>
        {predict.without}
      </button>
    </div>
  );
}
