import type { ComponentChildren, ComponentType } from 'preact';
import { useState } from 'preact/hooks';
import type { Job } from '~/job/types.ts';
import { chartInPlace } from '~/words/en/chartInPlace.ts';
import type { MovableChart } from './MovableChart.tsx';

interface Props {
  /** The air that the picture shows, as a job of its own. */
  readonly example: Job;
  /** The still picture. */
  readonly children?: ComponentChildren;
}

/** A picture of an article that can be moved where it stands. Until somebody asks for that it is the still one. */
export function ChartInPlace({ example, children }: Props) {
  const [part, setPart] = useState<{ readonly Chart: ComponentType<Parameters<typeof MovableChart>[0]> } | null>(null);
  const [round, setRound] = useState(0);
  const press = async () => {
    setRound(round + 1);
    if (!part) setPart({ Chart: (await import('./MovableChart.tsx')).MovableChart });
  };
  return (
    <div class="chart-in-place">
      {part ? <part.Chart key={round} example={example} /> : children}
      <p class="tools">
        <button type="button" class="plain-button" onClick={press}>
          {part ? chartInPlace.back : chartInPlace.move}
        </button>
      </p>
    </div>
  );
}
