import { condensateCheck } from '~/calc/confidence/condensate.ts';
import type { Interval } from '~/calc/types.ts';
import { readEntered } from '~/job/entered.ts';
import { joinSure } from '~/job/sure/join.ts';
import { Caution } from '~/parts/Caution.tsx';
import { Echo } from '~/parts/Echo.tsx';
import { catchWater as words } from '~/words/en/catchWater.ts';
import { joinSureWords } from '~/words/en/joinSure.ts';
import { QuantityField } from '../../QuantityField.tsx';
import { capacityText, inUnitOf } from '../../show.ts';
import { assessment, job, system } from '../../store.ts';

joinSure();
joinSureWords();

/** A timed catch of the water, and whether it agrees with the probes. */
export function CatchWater() {
  return (
    <div class="catch-water">
      <p class="label">
        {words.lead} {words.wait}
      </p>
      <Caution of="ice-and-drain-water">{words.never}</Caution>
      <div class="field-row">
        <QuantityField of="condensate.mass" />
        <QuantityField of="condensate.duration" />
      </div>
      <Found />
      <p class="hint">{words.rough}</p>
    </div>
  );
}

function Found() {
  const mass = readEntered(job.value, 'condensate.mass');
  const duration = readEntered(job.value, 'condensate.duration');
  const { entering, ranges } = assessment.value;
  if (mass.state !== 'read' || duration.state !== 'read' || !entering.ok || !ranges.condensate) return null;
  const found = condensateCheck(
    { mass: mass.si, duration: duration.si, massLimit: null },
    ranges.condensate,
    entering.value,
  );
  return (
    <div role="status">
      <Echo>{words[found.outcome](endsOf(found.caught.interval), endsOf(ranges.condensate.interval))}</Echo>
      <Echo>{words.latent(capacityText(found.latent))}</Echo>
    </div>
  );
}

/** Both ends in one unit; what cannot be below nothing ends there. */
function endsOf({ low, high }: Interval): string {
  const unit = system.value === 'ip' ? 'lbPerHour' : 'kgPerHour';
  const to = inUnitOf(high, unit, 1);
  return `${words.between(inUnitOf(Math.max(0, low), unit, 1).number, to.number)}\u00a0${to.unit}`;
}
