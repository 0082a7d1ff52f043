/** What the cells of a sheet are likely to be: by the words beside them, then by their units, then by their size. */
import type { System, UnitKey } from '../types.ts';
import { bareNumber } from './cell.ts';
import { readCell } from './reading.ts';
import type { Meaning, Role, Where } from './types.ts';
import { isAxis, isFigure, roleIn, unitIn, unitsOf } from './vocabulary.ts';

export interface Draft {
  readonly id: string;
  readonly where: Where;
  readonly title: string;
  /** What its place in the sheet says of it. */
  readonly role: Role;
  readonly texts: readonly string[];
}

/** The meanings of a sheet, each with a role and a unit. Of two columns with the same words the first counts. */
export function proposed(drafts: readonly Draft[], lines: string): readonly Meaning[] {
  const roles = drafts.map(({ title, role }) => (roleIn(title) === 'none' ? role : roleIn(title)));
  drafts.forEach((draft, at) => {
    const earlier = drafts.slice(0, at).some(({ where }, i) => where === 'column' && roles[i] === roles[at]);
    if (draft.where === 'column' && earlier) roles[at] = 'none';
    else if (roles[at] === 'none') roles[at] = byContent(draft, drafts, roles);
  });
  powerAmongTotals(drafts, roles);
  const said = drafts.map(({ title, texts }, at) => {
    const role = roles[at] ?? 'none';
    return unitIn(title, role) ?? ownUnit(texts, role) ?? unitIn(lines, role);
  });
  const isTemperature = (at: number) => unitsOf(roles[at] ?? 'none').includes('degC');
  const inCelsius = drafts.some(
    ({ texts }, at) => isTemperature(at) && (said[at] ?? usualUnit(texts, roles[at] ?? 'none')) === 'degC',
  );
  return drafts.map(({ id, where, title, texts }, at): Meaning => {
    const role = roles[at] ?? 'none';
    return {
      id,
      where,
      title,
      role,
      unit: said[at] ?? usualUnit(texts, role, inCelsius ? 'si' : 'ip'),
      unitSaid: said[at] !== null,
      samples: [...new Set(texts)].slice(0, 6),
    };
  });
}

/** "Total kW" beside a total in another unit is the power that goes in. */
function powerAmongTotals(drafts: readonly Draft[], roles: Role[]): void {
  const totals = drafts.flatMap(({ title }, at) =>
    roles[at] === 'total' ? [{ at, unit: unitIn(title, 'total') }] : [],
  );
  const capacity = totals.some(({ unit }) => unit !== null && unit !== 'kw');
  for (const { at, unit } of totals) if (capacity && unit === 'kw' && !roles.includes('power')) roles[at] = 'power';
}

/** A unit that stands behind the numbers themselves. */
function ownUnit(texts: readonly string[], role: Role): UnitKey | null {
  const named = texts.map((text) => (/[a-z°%]/i.test(text) ? unitIn(text.replace(/^[\d.,\s]+/, ''), role) : null));
  const [first] = named;
  return first !== undefined && first !== null && named.every((unit) => unit === first) ? first : null;
}

/** The unit in which most of the cells are usual; the first of the role where none is better. */
export function usualUnit(texts: readonly string[], role: Role, system: System = 'ip'): UnitKey {
  const [first = 'count'] = unitsOf(role, system);
  let best = { unit: first, share: usualShare(texts, role, first) };
  for (const unit of unitsOf(role, system).slice(1)) {
    const share = usualShare(texts, role, unit);
    if (share > best.share + 0.1) best = { unit, share };
  }
  return best.unit;
}

/** How many of the cells that are numbers are usual in a unit, as a share. */
export function usualShare(texts: readonly string[], role: Role, unit: UnitKey): number {
  const numbers = texts.filter((text) => bareNumber(text) !== null);
  const usual = numbers.filter((text) => {
    const found = readCell(text, role, unit);
    return found.state === 'read' && found.usual;
  });
  return numbers.length === 0 ? 0 : usual.length / numbers.length;
}

/** By the size of the numbers, and by what is still missing. */
function byContent(draft: Draft, drafts: readonly Draft[], roles: readonly Role[]): Role {
  const numbers = draft.texts.map(bareNumber).filter((number) => number !== null);
  if (numbers.length === 0 || draft.where === 'line') return 'none';
  const least = Math.min(...numbers);
  const most = Math.max(...numbers);
  const repeats = new Set(numbers).size <= Math.max(12, numbers.length / 4);
  const open = (role: Role) => !roles.includes(role);
  if (draft.where === 'figures' || draft.where === 'under')
    return draft.where === 'under' ? 'enteringDryBulb' : figure();
  if (repeats && least >= 150 && most <= 12_000 && Number.isInteger(least) && open('airflow') && beforeFigures())
    return 'airflow';
  const scale = drafts.flatMap(({ texts }, at) =>
    isAxis(roles[at] ?? 'none') && roles[at] !== 'airflow' ? [bareNumber(texts[0] ?? '') ?? 0] : [],
  );
  const inFahrenheit = least >= 50 && most <= 130 && scale.every((number) => number >= 50);
  const inCelsius = least >= 10 && most <= 55 && scale.every((number) => number <= 55);
  const temperature = repeats && (inFahrenheit || inCelsius) && beforeFigures();
  if (temperature) {
    const hot = most >= 91 || (most >= 31 && most <= 55);
    if (hot && open('outdoorDryBulb')) return 'outdoorDryBulb';
    if (open('enteringWetBulb') && !hot) return 'enteringWetBulb';
    if (open('enteringDryBulb') && (draft.where === 'column' || !hot)) return 'enteringDryBulb';
  }
  return draft.where === 'column' ? figure() : 'none';

  /** The places of a figure are printed before it. */
  function beforeFigures(): boolean {
    const at = drafts.indexOf(draft);
    return !roles.slice(0, at).some(isFigure) || roles.slice(at).some(isAxis);
  }
  function figure(): Role {
    if (most <= 1.05 && least >= 0.3) return open('ratio') && open('sensible') ? 'ratio' : 'none';
    if (open('total')) return 'total';
    if (open('sensible') && open('ratio')) return 'sensible';
    return open('power') ? 'power' : 'none';
  }
}
