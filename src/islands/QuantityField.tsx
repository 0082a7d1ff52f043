import { unitLabel } from '~/job/format.ts';
import type { QuantityKey } from '~/job/types.ts';
import { Echo } from '~/parts/Echo.tsx';
import { Field } from '~/parts/Field.tsx';
import { quantityWords } from '~/words/en/quantities.ts';
import { typeInOther } from '~/words/en/units.ts';
import { echoOf, flipUnit, leave, otherUnit, problemOf, shownText, shownUnit, type } from './fields.ts';
import { sheetParts } from './sheetParts.ts';

interface Props {
  readonly of: QuantityKey;
  readonly name?: string;
  readonly hint?: string | undefined;
  readonly signed?: boolean;
  /** Leaves the sentence of what was understood to the caller, who shows one for several fields. */
  readonly quiet?: boolean;
  /** The same figure stands at another place where it must differ. */
  readonly equal?: boolean;
}

/** The field of one quantity of the job: what it shows, how it is read and where it is kept. */
export function QuantityField({ of: key, name, hint, signed = false, quiet = false, equal = false }: Props) {
  const unit = shownUnit(key);
  const other = otherUnit(key, unit);
  const value = shownText(key, unit);
  const words = quantityWords[key];
  const echo = quiet ? null : echoOf(key);
  const label = name ?? words.name;
  const late = sheetParts.value;
  return (
    <Field
      id={`field-${key}`}
      name={label}
      term={words.term}
      hint={[hint ?? words.hint, value === '' && words.empty].filter(Boolean).join(' ')}
      value={value}
      unit={unitLabel(unit)}
      unitSpoken={typeInOther(unit, other)}
      problem={problemOf(key, equal)}
      signed={signed}
      onInput={(text, input) => type(key, text, unit, input)}
      onBlur={leave}
      onUnit={other === unit ? undefined : () => flipUnit(key)}
    >
      {echo && <Echo>{echo}</Echo>}
      {late && <late.Was of={key} />}
    </Field>
  );
}
