/** How places and figures of a whole table are written. */
import { standardAirDensity } from '~/calc/constants.ts';
import type { Amount, Remark } from '~/calc/types.ts';
import { columnLetters } from '~/job/tableImport/cell.ts';
import type { Spot } from '~/job/tableImport/types.ts';
import { axisNames, carefulWords, place } from '~/words/en/ratingTable.ts';
import { system } from '../jobStore.ts';
import { inUnitOf, joined, ofKind } from '../show.ts';

/** "12 August 2026"; '' for no date. */
export function dayOf(iso: string | undefined): string {
  const date = new Date(iso ?? '');
  return Number.isNaN(date.getTime())
    ? ''
    : date.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}

/** As a spreadsheet numbers them. */
export const spotText = (spot: Spot | null) => (spot === null ? '' : place(spot.row + 1, columnLetters(spot.column)));

/** A capacity as tables print it: to the hundred Btu/h, or to a hundredth of a kilowatt. */
export function figureText(watts: number): string {
  return joined(inUnitOf(watts, system.value === 'ip' ? 'mbh' : 'kw', system.value === 'ip' ? 1 : 2));
}

/** An airflow of standard air, m³/s of dry air given as kg/s. */
export const airflowText = (dryAirFlow: number) => joined(ofKind('volumeFlow', dryAirFlow / standardAirDensity));

const axes = ['tₒ', 't*₁', 't₁', 'ṁ'];

/** A remark on a whole table in words: its place on every axis, then its figures. */
export function carefulText({ code, amounts }: Remark): string {
  const places = amounts.filter(({ symbol }) => axes.includes(symbol));
  const rest = amounts.filter(({ symbol }) => !axes.includes(symbol));
  const where = places.map(axisText).join(', ');
  return carefulWords[code]?.(where, ...rest.map(amountText)) ?? code;
}

function axisText(amount: Amount): string {
  return `${axisNames[axes.indexOf(amount.symbol)] ?? ''} ${amountText(amount)}`.trim();
}

function amountText({ kind, value }: Amount): string {
  if (kind === 'massFlow') return airflowText(value);
  return kind === 'power' ? figureText(value) : joined(ofKind(kind, value));
}
