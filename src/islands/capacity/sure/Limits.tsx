import { unitLabel } from '~/job/format.ts';
import { limitEdits } from '~/job/probeLimitEdits.ts';
import { probeLimit } from '~/job/probeLimits.ts';
import { type Measured, measuredHere } from '~/job/readings.ts';
import { joinSure } from '~/job/sure/join.ts';
import { differenceUnit } from '~/job/units.ts';
import { Field } from '~/parts/Field.tsx';
import { joinSureWords } from '~/words/en/joinSure.ts';
import { sureBody as words } from '~/words/en/sureFigures.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { leave, shownUnit, touch, typing } from '../../fields.ts';
import { QuantityField } from '../../QuantityField.tsx';
import { inUnitOf, percent } from '../../show.ts';
import { edit, expectedHalf, interpreted, job } from '../../store.ts';
import { OtherLimits } from './OtherLimits.tsx';

joinSure();
joinSureWords();

/** The ± of the instruments: by the kind of probe and the way of the airflow, or from a data sheet at hand. */
export function Limits() {
  const { sources, limit } = interpreted.value.test.airflow;
  return (
    <>
      <ChoiceField of="probes.class" />
      <div class="field-row">
        {measuredHere(job.value).map((what) => (
          <LimitField key={what} what={what} />
        ))}
      </div>
      {sources === null && (
        <QuantityField
          of="airflow.limit"
          hint={job.value.entered['airflow.limit'] ? undefined : words.airflowAssumed(percent(limit ?? 0.1))}
        />
      )}
      <OtherLimits />
      <p class="hint">{words.limitsLead}</p>
    </>
  );
}

function LimitField({ what }: { what: Measured }) {
  const key = `entering.${what}` as const;
  const unit = shownUnit(key);
  const typed = job.value.entered[key]?.limit ?? '';
  const id = `limit-${what}`;
  const problem = interpreted.value.problems.find((one) => one.key === `${key}.limit`);
  const { assumed } = probeLimit(job.value, what);
  const label = unitLabel(differenceUnit(unit));
  const usual = expectedHalf.value?.classLimit(job.value, what) ?? probeLimit(job.value, what).si;
  const write = (text: string, field?: HTMLInputElement) => {
    touch(id);
    if (!edit(...limitEdits(job.value, what, text, unit)) && field) field.value = typed;
  };
  return (
    <Field
      id={id}
      name={words.limitNames[what]}
      value={typed}
      unit={label}
      unitSpoken={label}
      hint={assumed ? words.limitAssumed(`${inUnitOf(usual, differenceUnit(unit)).number} ${label}`) : undefined}
      problem={problem && typing.value !== id ? words.limitBad(typed) : null}
      onInput={write}
      onBlur={leave}
    />
  );
}
