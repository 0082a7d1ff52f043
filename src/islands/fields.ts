/** How a quantity of the job is shown and typed, the same on every worksheet. */
import { batch, signal } from '@preact/signals';
import { typed } from '~/job/edit.ts';
import { format, unitLabel, withUnit } from '~/job/format.ts';
import { quantityOf, unitOf } from '~/job/quantities.ts';
import { type Read, read } from '~/job/read.ts';
import type { QuantityKey, System, UnitKey } from '~/job/types.ts';
import { echoes } from '~/words/en/echoes.ts';
import { type ProblemParts, problemWords } from '~/words/en/problems.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { edit, job, system } from './jobStore.ts';

/** The fields that are typed in the other system's unit, for as long as the page stands. */
const flipped = signal<ReadonlySet<QuantityKey>>(new Set());
/** The field under the fingers; what is said of it waits until they rest. */
export const typing = signal<string | null>(null);
const pause = 900;
const afterTap = 350;
let timer: ReturnType<typeof setTimeout> | undefined;

const other = (of: System): System => (of === 'ip' ? 'si' : 'ip');

export function shownUnit(key: QuantityKey): UnitKey {
  return unitOf(key, flipped.value.has(key) ? other(system.value) : system.value);
}

export function otherUnit(key: QuantityKey, unit: UnitKey): UnitKey {
  const { ip, si } = quantityOf(key);
  return unit === ip ? si : ip;
}

export function flipUnit(key: QuantityKey): void {
  const next = new Set(flipped.value);
  if (!next.delete(key)) next.add(key);
  flipped.value = next;
}

/** What was typed, as it was typed; in another unit than it was typed in, the number converted; nonsense as it stands. */
export function shownText(key: QuantityKey, unit: UnitKey): string {
  const entered = job.value.entered[key];
  if (!entered || entered.unit === unit) return entered?.text ?? '';
  const found = readOf(key);
  return found.state === 'read' ? inUnit(key, found.si, unit) : entered.text;
}

export function readOf(key: QuantityKey): Read {
  const entered = job.value.entered[key];
  return entered ? read(entered.text, key, entered.unit) : { state: 'empty' };
}

/** A number of a quantity in a unit, with the decimals that the quantity has in that unit's system. */
export function inUnit(key: QuantityKey, si: number, unit: UnitKey): string {
  const quantity = quantityOf(key);
  return format(si, unit, unit === quantity.ip ? quantity.decimals.ip : quantity.decimals.si);
}

/** The same with the unit behind it. */
export function amountOf(key: QuantityKey, si: number, unit: UnitKey = shownUnit(key)): string {
  return withUnit(inUnit(key, si, unit), unit);
}

/** Keeps what was typed; puts the field back when the job is only to be looked at. */
export function type(key: QuantityKey, text: string, unit: UnitKey, input?: HTMLInputElement): void {
  const kept = batch(() => {
    touch(key);
    return edit(typed(job.value, key, text, unit, new Date().toISOString()));
  });
  if (!kept && input) input.value = shownText(key, unit);
}

/** Says that somebody types in a field: what is said of it holds back for a moment. */
export function touch(name: string): void {
  typing.value = name;
  clearTimeout(timer);
  timer = setTimeout(rest, pause);
}

/** The field is left. What is said of it comes after the tap that left it: nothing may move under a finger that is coming down. */
export function leave(): void {
  clearTimeout(timer);
  timer = setTimeout(rest, afterTap);
}

export function rest(): void {
  clearTimeout(timer);
  typing.value = null;
}

const shortened = (text: string) => (text.length > 24 ? `${text.slice(0, 23)}…` : text);

/** What the sentences about a field that cannot be used are made of. */
export function problemParts(key: QuantityKey): ProblemParts {
  const entered = job.value.entered[key];
  return partsOf(key, entered?.text ?? '', entered?.unit ?? shownUnit(key));
}

/** The same for any text typed for a quantity, a bare number in it being in `typedIn`. */
export function partsOf(key: QuantityKey, text: string, typedIn: UnitKey): ProblemParts {
  const unit = shownUnit(key);
  const { kind, usual, possible } = quantityOf(key);
  const label = unitLabel(unit);
  const found = read(text, key, typedIn);
  const isNumber =
    found.state === 'read' || (found.state === 'bad' && (found.code === 'below' || found.code === 'above'));
  const bare = isNumber && /\d\s*$/.test(text) ? `\u00a0${unitLabel(typedIn)}` : '';
  return {
    text: `${shortened(text.trim())}${bare}`,
    name: quantityWords[key].inSentence,
    low: inUnit(key, possible[0], unit),
    high: `${inUnit(key, possible[1], unit)}\u00a0${label}`,
    usual: `${inUnit(key, usual[0], unit)} to ${inUnit(key, usual[1], unit)}\u00a0${label}`,
    kind,
  };
}

/**
 * The sentence beside a field that cannot be used; `null` while it is being typed, or when there is nothing to say. `equal`:
 * the sheet finds the figure in a place where it may not stand twice.
 */
export function problemOf(key: QuantityKey, equal = false): string | null {
  if (typing.value === key) return null;
  const found = readOf(key);
  const code = found.state === 'bad' ? found.code : equal ? 'equal' : null;
  return code && (problemWords[code]?.(problemParts(key)) ?? code);
}

/** What was understood, where that is not the bare face of what was typed. */
export function echoOf(key: QuantityKey): string | null {
  const entered = job.value.entered[key];
  if (!entered || typing.value === key) return null;
  const found = readOf(key);
  if (found.state !== 'read') return null;
  if (!found.usual)
    return `${found.plain ? '' : `${echoes.readAs(amountOf(key, found.si))} `}${echoes.usual(problemParts(key).usual)}`;
  if (!found.plain)
    return echoes.readAs(amountOf(key, found.si, found.unit === entered.unit ? entered.unit : shownUnit(key)));
  return entered.unit === shownUnit(key) ? null : echoes.typedAs(`${entered.text.trim()} ${unitLabel(entered.unit)}`);
}
