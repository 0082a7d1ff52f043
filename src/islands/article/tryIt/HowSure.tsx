import { ShareScale } from '~/charts/ShareScale.tsx';
import { tryHowSure as words } from '~/words/en/tryHowSure.ts';
import { inUnitOf, percent, temperatureStep } from '../../show.ts';
import type { Ahead } from './ahead.ts';
import { TryIt } from './TryIt.tsx';
import { useAhead } from './useAhead.ts';

interface Props {
  readonly figures: Ahead<readonly [share: number, low: number, high: number, outcome: number]>;
  /** The line agreed on, a fraction, and what the figure of a row stands for. */
  readonly line: number;
  readonly outcomes: readonly (keyof typeof words.said)[];
}

/** How limits, and a check of the probes, make the range wide or narrow against the line. */
export function HowSure({ figures, line, outcomes }: Props) {
  const {
    values: [dryBulb = 0, airflow = 0],
    row: [share, low, high, outcome],
    control,
  } = useAhead(figures);
  const said = words.said[outcomes[outcome] ?? 'cannotTell'](percent(low), percent(high));
  return (
    <TryIt
      id="how-sure"
      controls={[
        control(0, words.probes, words.limit(temperatureStep(dryBulb))),
        control(1, words.airflow, words.limit(percent(airflow))),
        control(2, words.checked, '', true),
      ]}
      draw={(width) => (
        <ShareScale
          share={share}
          line={line}
          range={{ low, high }}
          width={width}
          words={{ line: words.line(percent(line)), should: words.should, summary: said }}
        />
      )}
      said={said}
      table={words.table}
      lines={[
        { name: words.rows.low, ...inUnitOf(low, 'percent') },
        { name: words.rows.share, ...inUnitOf(share, 'percent') },
        { name: words.rows.high, ...inUnitOf(high, 'percent') },
      ]}
      caption={words.caption}
    />
  );
}
