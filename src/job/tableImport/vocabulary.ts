/** What words in a sheet say about the figures under, beside or below them: trade terms and units. */
import { spelled } from '../number.ts';
import type { System, UnitKey } from '../types.ts';
import type { AxisRole, FigureRole, Role } from './types.ts';

/** Tried in this order: the more special first. */
const roles: readonly (readonly [Role, RegExp])[] = [
  ['ratio', /\bshr\b|\bshf\b|\bs ?\/ ?t\b|sensible.{0,12}(ratio|factor|fraction)|sens.{0,6}ratio/],
  ['enteringWetBulb', /wet ?-?bulb|\be?i?d?wb\b|\bewbt?\b|\bidwb\b/],
  ['outdoorDryBulb', /outdoor|outside|ambient|\bodb?t?\b|\boat\b|condenser.{0,12}air|air on condenser/],
  ['airflow', /air ?-?flow|air ?volume|\bs?cfm\b|\bl\/s\b|\bm[3³]\/(h|hr|s)\b|\bcmh\b/],
  ['sensible', /\bsens|\bshc\b|\bsc\b/],
  ['stage', /\bstage\b|\bspeed\b/],
  ['power', /power|\binput\b|\bwatts?\b|compressor|\bsystem kw\b/],
  ['total', /total|capacity|\btc\b|\bthc?\b|\bmbh\b|\bk?btu|^cap\b|cooling cap/],
  ['enteringDryBulb', /dry ?-?bulb|\be?i?d?db\b|\bedbt?\b|\bidb\b|return (air )?temp|indoor (air )?temp/],
];

/** What a head is about; `none` where its words say nothing. A unit alone, such as kW, says nothing: it may be power or capacity. */
export function roleIn(words: string): Role {
  const text = spelled(words).replace(/[_.]/g, ' ');
  return roles.find(([, sign]) => sign.test(text))?.[0] ?? 'none';
}

const unitSigns: readonly (readonly [UnitKey, RegExp])[] = [
  ['mbh', /\bmbt?u?h\b|\bk ?btu|1,?000 ?btu|btu[^,;]{0,8}(x|×|\*) ?1,?000|thousands? (of )?btu|\bmbtu/],
  ['btuh', /\bbtu/],
  ['kw', /\bkw\b|kilowatt/],
  ['watt', /\bwatts?\b|\bw\b/],
  ['ton', /\btons?\b|\btr\b/],
  ['cfm', /\bs?a?cfm\b|ft3\/min/],
  ['ls', /\bl\/s\b|\blps\b/],
  ['m3h', /\bm3\/hr?\b|\bcmh\b/],
  ['m3PerS', /\bm3\/s\b/],
  ['percent', /%|\bper ?cent\b/],
  ['degF', /° ?f\b|\bdeg(rees)? ?f|\(f\)|\bf$|fahrenheit/],
  ['degC', /° ?c\b|\bdeg(rees)? ?c|\(c\)|\bc$|celsius/],
];

const kinds: Readonly<Record<Role, readonly UnitKey[]>> = {
  outdoorDryBulb: ['degF', 'degC'],
  enteringWetBulb: ['degF', 'degC'],
  enteringDryBulb: ['degF', 'degC'],
  airflow: ['cfm', 'ls', 'm3h', 'm3PerS'],
  total: ['mbh', 'btuh', 'kw', 'ton'],
  sensible: ['mbh', 'btuh', 'kw', 'ton'],
  ratio: ['fraction', 'percent'],
  power: ['kw', 'watt'],
  stage: ['count'],
  none: ['count'],
};
/** A table with its temperatures in °C: 13 is more likely to be kilowatts than thousands of Btu/h. */
const kindsInSi: Readonly<Partial<Record<Role, readonly UnitKey[]>>> = {
  total: ['kw', 'mbh', 'btuh', 'ton'],
  sensible: ['kw', 'mbh', 'btuh', 'ton'],
  airflow: ['ls', 'm3h', 'm3PerS', 'cfm'],
};

/** The units that a role may be in; the first is the likeliest where nothing else tells. */
export function unitsOf(role: Role, system: System = 'ip'): readonly UnitKey[] {
  return system === 'ip' ? kinds[role] : (kindsInSi[role] ?? kinds[role]);
}

/** The unit that words name, of those that a role may be in; `null` where they name none. */
export function unitIn(words: string, role: Role): UnitKey | null {
  const text = spelled(words);
  const found = unitSigns.find(([unit, sign]) => kinds[role].includes(unit) && sign.test(text));
  return found?.[0] ?? null;
}

const axes: readonly Role[] = ['outdoorDryBulb', 'enteringWetBulb', 'enteringDryBulb', 'airflow'] satisfies AxisRole[];
const figures: readonly Role[] = ['total', 'sensible', 'ratio', 'power'] satisfies FigureRole[];
export const isAxis = (role: Role): role is AxisRole => axes.includes(role);
export const isFigure = (role: Role): role is FigureRole => figures.includes(role);

/** Whether a line says that the blower's heat is taken off, or is not. */
export function basisIn(words: string): 'net' | 'gross' | null {
  const text = spelled(words);
  const [net, gross] = [/\bnet\b/.test(text), /\bgross\b/.test(text)];
  return net === gross ? null : net ? 'net' : 'gross';
}

/** The stage that a line names: 'high', 'low', or its number. */
export function stageIn(words: string): string | null {
  const text = spelled(words);
  if (/\b(high|second|2nd|full)[ -]?(stage|speed|load)\b|\bstage ?(2|two|ii|high)\b/.test(text)) return 'high';
  if (/\b(low|first|1st|part|minimum)[ -]?(stage|speed|load)\b|\bstage ?(1|one|i|low)\b/.test(text)) return 'low';
  return null;
}
