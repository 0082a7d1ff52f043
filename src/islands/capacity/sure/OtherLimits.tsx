import { unitLabel } from '~/job/format.ts';
import { type OtherLimit, otherLimits } from '~/job/sure/otherLimits.ts';
import { usualLimit } from '~/job/sure/usualLimit.ts';
import { differenceUnit } from '~/job/units.ts';
import { withLimit } from '~/job/withLimit.ts';
import { Field } from '~/parts/Field.tsx';
import { otherLimitWords as words } from '~/words/en/otherLimits.ts';
import { leave, shownUnit, touch, typing } from '../../fields.ts';
import { inUnitOf } from '../../show.ts';
import { edit, interpreted, job } from '../../store.ts';

/** The ± of what is read beside the probes: outdoor temperature, pressure, blower. */
export function OtherLimits() {
  return (
    <div class="field-row">
      {otherLimits.map((key) => (
        <OtherLimitField key={key} of={key} />
      ))}
    </div>
  );
}

function OtherLimitField({ of: key }: { of: OtherLimit }) {
  const kept = job.value.entered[key];
  const unit = kept?.unit ?? shownUnit(key);
  const typed = kept?.limit ?? '';
  const id = `limit-${key}`;
  const { test, problems } = interpreted.value;
  const isBad = typing.value !== id && problems.some((one) => one.key === `${key}.limit`);
  const step = differenceUnit(unit);
  const usual = usualLimit(job.value, key, test);
  const write = (text: string, field?: HTMLInputElement) => {
    touch(id);
    if (!edit(withLimit(job.value, key, text, unit)) && field) field.value = typed;
  };
  const hint =
    usual === null ? words.blowerAssumed : words.assumed(`${inUnitOf(usual, step).number} ${unitLabel(step)}`);
  return (
    <Field
      id={id}
      name={words.names[key]}
      value={typed}
      unit={unitLabel(step)}
      unitSpoken={unitLabel(step)}
      hint={typed === '' ? hint : undefined}
      problem={isBad ? words.bad(typed) : null}
      onInput={write}
      onBlur={leave}
    />
  );
}
