import { unitLabel } from '~/job/format.ts';
import { limitEdits } from '~/job/probeLimitEdits.ts';
import { probeLimit } from '~/job/probeLimits.ts';
import { type Measured, measuredHere } from '~/job/readings.ts';
import { differenceUnit } from '~/job/units.ts';
import { Field } from '~/parts/Field.tsx';
import { sureStep } from '~/words/en/steps.ts';
import { leave, shownUnit, touch, typing } from '../fields.ts';
import { inUnitOf } from '../show.ts';
import { edit, interpreted, job } from '../store.ts';

/** The ± of the probes, where somebody has their data sheet at hand. */
export function ProbeLimits() {
  return (
    <div class="field-row">
      {measuredHere(job.value).map((what) => (
        <LimitField key={what} what={what} />
      ))}
    </div>
  );
}

function LimitField({ what }: { what: Measured }) {
  const key = `entering.${what}` as const;
  const unit = shownUnit(key);
  const typed = job.value.entered[key]?.limit ?? '';
  const id = `limit-${what}`;
  const problem = interpreted.value.problems.find((one) => one.key === `${key}.limit`);
  const { assumed, si } = probeLimit(job.value, what);
  const label = unitLabel(differenceUnit(unit));
  const write = (text: string, field?: HTMLInputElement) => {
    touch(id);
    if (!edit(...limitEdits(job.value, what, text, unit)) && field) field.value = typed;
  };
  return (
    <Field
      id={id}
      name={sureStep.limitNames[what]}
      value={typed}
      unit={label}
      unitSpoken={label}
      hint={assumed ? sureStep.limitAssumed(`${inUnitOf(si, differenceUnit(unit)).number} ${label}`) : undefined}
      problem={problem && typing.value !== id ? sureStep.limitBad(typed) : null}
      onInput={write}
      onBlur={leave}
    />
  );
}
