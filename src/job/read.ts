/** What a typed text says of a quantity. Pure, and never throws: nonsense is a state like any other. */
import type { Kind } from '../calc/types.ts';
import { type Numeral, numberAtHead, spelled } from './number.ts';
import { type QuantityKey, quantityOf } from './quantities.ts';
import { fromSi, toSi, type UnitKey, units } from './units.ts';

export type BadCode = 'notANumber' | 'wrongUnit' | 'twoNumbers' | 'below' | 'above' | 'needsTotal';

export interface Good {
  readonly state: 'read';
  readonly si: number;
  /** The number and the unit that were understood; a unit in the text outranks that of the field. */
  readonly number: number;
  readonly unit: UnitKey;
  /** False when the text was understood as something other than its bare face: the page then says what. */
  readonly plain: boolean;
  /** False outside the usual range of the quantity. */
  readonly usual: boolean;
  /** Of a sensible figure that was typed as a share of its total. */
  readonly isShare?: true;
}

/** `min` and `max` are what is possible, SI. */
export interface Bad {
  readonly state: 'bad';
  readonly code: BadCode;
  readonly min: number;
  readonly max: number;
}

export type Read = { readonly state: 'empty' } | Good | Bad;

export interface ReadContext {
  /** For a sensible figure: the total of the same place in the table, W. The figure may be a share of it. */
  readonly total?: number | null;
}

type Candidate = Pick<Good, 'si' | 'number' | 'unit' | 'plain' | 'isShare'>;
type Range = readonly [number, number];

/** Reads a text typed for a quantity, a bare number being in `unit`. */
export function read(text: string, key: QuantityKey, unit: UnitKey, context: ReadContext = {}): Read {
  const { kind, possible, usual } = quantityOf(key);
  const total = key === 'rating.sensible' ? (context.total ?? null) : null;
  const range: Range = total === null ? possible : [possible[0], Math.min(possible[1], total * highestShare)];
  const clean = spelled(text);
  if (clean === '') return { state: 'empty' };
  const head = numberAtHead(clean);
  if (head === null) return bad('notANumber', range);
  const { numerals, rest } = head;
  if (key === 'rating.sensible' && mayBeShare(numerals, rest, unit, total)) {
    return total === null
      ? bad('needsTotal', range)
      : pick(
          numerals.map((numeral) => share(numeral, rest, unit, total)),
          range,
          usual,
        );
  }
  const named = unitNamed(rest, kind, unit);
  if (named.code !== undefined) return bad(named.code, range);
  const bareFigure = rest === '' && (key === 'rating.total' || key === 'rating.sensible');
  return pick(
    numerals.map((numeral) => inUnit(numeral, named.unit, rest === '', bareFigure)),
    range,
    usual,
  );
}

/** Reads a ±, a bare number being a difference in `unit`; `range` is what is possible, SI. */
export function readLimit(text: string, unit: UnitKey, range: Range): Read {
  const clean = spelled(text).replace(/^(±|\+\/?-) ?/, '');
  if (clean === '') return { state: 'empty' };
  const head = numberAtHead(clean);
  if (head === null) return bad('notANumber', range);
  const named = unitNamed(head.rest, units[unit].kind, unit);
  if (named.code !== undefined) return bad(named.code, range);
  return pick(
    head.numerals.map((numeral) => inUnit(numeral, named.unit, head.rest === '', false)),
    range,
    range,
  );
}

function bad(code: BadCode, [min, max]: Range): Bad {
  return { state: 'bad', code, min, max };
}

/** The likeliest candidate that is possible. */
function pick(candidates: readonly Candidate[], range: Range, usual: Range): Read {
  const inside = ({ si }: Candidate, [low, high]: Range) => si >= low && si <= high;
  const chosen = candidates.find((candidate) => inside(candidate, range));
  if (chosen !== undefined) return { state: 'read', ...chosen, usual: inside(chosen, usual) };
  return bad((candidates[0]?.si ?? 0) < range[0] ? 'below' : 'above', range);
}

/** Capacities in Btu/h are printed in thousands or in full; none is below a thousand. */
function inUnit({ number, plain }: Numeral, unit: UnitKey, bare: boolean, figure: boolean): Candidate {
  const inThousands = figure && unit === 'btuh' && Math.abs(number) < 1000;
  // By way of thousandths, so that 32.3 gives 32 300 and not a neighbour of it.
  const full = inThousands ? Math.round(number * 1e6) / 1000 : number;
  return { si: toSi(full, unit), number: full, unit, plain: plain && bare && !inThousands };
}

const lowestShare = 0.4;
const roundedTotal = 1.01;
const highestShare = 1.05;

/**
 * Whether a sensible figure is a share of the total: per cent, or a number up to 1.05 that as a capacity would not be 0.4 to 1.01
 * of it (in tons and kW both are small numbers).
 */
function mayBeShare(numerals: readonly Numeral[], rest: string, unit: UnitKey, total: number | null): boolean {
  if (rest === '%') return true;
  if (rest !== '') return false;
  const asCapacity = numerals.some((numeral) => {
    const part = total === null ? 0 : inUnit(numeral, unit, true, true).si / total;
    return part >= lowestShare && part <= roundedTotal;
  });
  return !asCapacity && numerals.some(({ number }) => number >= 0 && number <= highestShare);
}

function share({ number }: Numeral, rest: string, unit: UnitKey, total: number): Candidate {
  const si = total * (rest === '%' ? number / 100 : number);
  return { si, number: fromSi(si, unit), unit, plain: false, isShare: true };
}

type Named = { readonly unit: UnitKey; readonly code?: undefined } | { readonly code: BadCode };

const folded = (text: string) => spelled(text).replace(/[ .]/g, '');
const suffixes: readonly (readonly [UnitKey, readonly string[]])[] = Object.entries(units).map(([key, unit]) => [
  key as UnitKey,
  unit.suffixes.map(folded),
]);

/** The unit that stands behind a number; `bare` where none does. */
function unitNamed(rest: string, kind: Kind, bare: UnitKey): Named {
  const name = folded(rest);
  if (name === '' || name === '°') return { unit: bare };
  const known = suffixes.filter(([, names]) => names.includes(name)).map(([key]) => key);
  const unit = known.find((key) => units[key].kind === kind);
  if (unit !== undefined) return { unit };
  if (known.length > 0) return { code: 'wrongUnit' };
  return { code: /(^|[ /;:,|-])[+-]?\d/.test(rest) ? 'twoNumbers' : 'notANumber' };
}
