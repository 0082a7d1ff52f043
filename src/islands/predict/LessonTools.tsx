import type { ComponentChildren } from 'preact';
import { predict } from '~/words/en/predict.ts';
import { leaveFullScreen, takeFullScreen } from './large.ts';

interface Props {
  readonly isLarge: boolean;
  readonly onLarge: (isLarge: boolean) => void;
  readonly onAnother: () => void;
  readonly children?: ComponentChildren;
}

/** What can be done with a question beside answering it. */
export function LessonTools({ isLarge, onLarge, onAnother, children }: Props) {
  return (
    <div class="tools">
      <button type="button" class="plain-button" onClick={onAnother}>
        {predict.another}
      </button>
      <button
        type="button"
        class="plain-button"
        aria-pressed={isLarge ? 'true' : 'false'}
        onClick={() => {
          if (isLarge) leaveFullScreen();
          else takeFullScreen();
          onLarge(!isLarge);
        }}
      >
        {isLarge ? predict.normal : predict.large}
      </button>
      {children}
    </div>
  );
}
