import type { ComponentChildren } from 'preact';
import { formatNumber, unitLabel, withUnit } from '~/job/format.ts';
import { quantityOf } from '~/job/quantities.ts';
import type { Cell } from '~/job/states.ts';
import type { QuantityKey, System } from '~/job/types.ts';
import { units } from '~/job/units.ts';
import { Echo } from '~/parts/Echo.tsx';
import { Field } from '~/parts/Field.tsx';
import { echoes } from '~/words/en/echoes.ts';
import { problemWords } from '~/words/en/problems.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { typeInOther } from '~/words/en/units.ts';
import { flipUnit, inUnit, leave, otherUnit, partsOf, shownUnit, touch, typing } from './fields.ts';

interface Props {
  readonly id: string;
  readonly of: QuantityKey;
  readonly cell: Cell;
  readonly name?: string;
  readonly hint?: string | undefined;
  /** What is wrong with the figure in its company, where it can be read on its own. */
  readonly problem?: string | null | undefined;
  /** Keeps the text, a bare number in it being in the unit of a system. False when nothing may be changed here. */
  readonly onText: (text: string, system: System) => boolean;
  readonly children?: ComponentChildren;
}

/** The field of one cell of a table of the job. */
export function CellField({ id, of: key, cell, name, hint, problem, onText, children }: Props) {
  const unit = shownUnit(key);
  const other = otherUnit(key, unit);
  const value = shownIn(key, cell);
  const words = quantityWords[key];
  const { read: found } = cell;
  const bad =
    found.state === 'bad' ? (problemWords[found.code]?.(partsOf(key, cell.text, cell.unit)) ?? found.code) : null;
  const echo = typing.value === id ? null : echoOf(cell, value);
  const write = (text: string, input?: HTMLInputElement) => {
    touch(id);
    if (!onText(text, unit === quantityOf(key).ip ? 'ip' : 'si') && input) input.value = value;
  };
  return (
    <Field
      id={id}
      name={name ?? words.name}
      term={name === undefined ? words.term : undefined}
      hint={hint}
      value={value}
      unit={unitLabel(unit)}
      unitSpoken={typeInOther(unit, other)}
      problem={typing.value === id ? null : (bad ?? problem ?? null)}
      onInput={write}
      onBlur={leave}
      onUnit={other === unit ? undefined : () => flipUnit(key)}
    >
      {echo && <Echo>{echo}</Echo>}
      {children}
    </Field>
  );
}

/** What was typed; in another unit than its column's, the number converted; nonsense, and what is of another kind, as it stands. */
function shownIn(key: QuantityKey, { text, unit: column, read: found }: Cell): string {
  const unit = shownUnit(key);
  if (column === unit || found.state !== 'read' || units[found.unit].kind !== quantityOf(key).kind) return text;
  return found.unit === unit ? text.replace(/[\s\u00a0]*[\p{L}%°].*$/u, '') : inUnit(key, found.si, unit);
}

/** What was understood, where that is not the bare face of what stands in the field. */
function echoOf({ text, read: found }: Cell, value: string): string | null {
  if (found.state !== 'read' || found.plain || value !== text) return null;
  return echoes.readAs(withUnit(formatNumber(found.number, decimalsIn(text)), found.unit));
}

const decimalsIn = (text: string) => /[.,](\d{1,2})(?!\d)/.exec(text)?.[1]?.length ?? 0;
