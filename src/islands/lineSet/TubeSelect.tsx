import { insideDiameter, type Tube } from '~/calc/tubes.ts';
import { choices } from '~/job/choices.ts';
import { formatNumber } from '~/job/format.ts';
import { Select } from '~/parts/Select.tsx';
import { lineSheet } from '~/words/en/lineSet.ts';
import { edit, job } from '../jobStore.ts';
import { inUnitOf, joined } from '../show.ts';

type TubeChoice = 'lineSet.vaporTube' | 'lineSet.ratedVaporTube' | 'lineSet.liquidTube';

interface Props {
  readonly of: TubeChoice;
  readonly ask: string;
  /** What stands there while nothing is chosen. */
  readonly open: string;
}

/** A tube by its trade name, with its outside in millimetres as the rest of the world calls it. */
export function TubeSelect({ of: key, ask, open }: Props) {
  const value = job.value.chosen[key];
  const options = choices[key].values.map((tube) => [tube, lineSheet.tube(tube, outside(tube))]);
  return (
    <Select
      id={`choice-${key}`}
      ask={ask}
      options={Object.fromEntries(options)}
      value={value}
      open={open}
      onChoose={(to, select) => {
        if (!edit({ slot: 'chosen', key, to })) select.value = value ?? '';
      }}
    />
  );
}

/** The outside of a tube in millimetres: its trade name in inches is exactly that. */
function outside(tube: string): string {
  const [whole = '0', part = '0/1'] = tube.includes('-') ? tube.split('-') : ['0', tube];
  const [above = 0, below = 1] = part.split('/').map(Number);
  return `${formatNumber(Math.round(((Number(whole) * below + above) * 2540) / below) / 100, 1)}\u00a0mm`;
}

/** The inside of a tube in the units of the page. */
export function bore(tube: Tube, si: boolean): string {
  const diameter = insideDiameter(tube);
  return joined(si ? inUnitOf(diameter, 'mm', 1) : inUnitOf(diameter, 'inch', 3));
}
