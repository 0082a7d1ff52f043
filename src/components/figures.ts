/** How figures of very different sizes stand in one column. */
import { formatNumber } from '~/job/format.ts';

/** Places that show a tenth of a tolerance. */
export const decimalsFor = (tolerance: number) => Math.max(0, 1 - Math.floor(Math.log10(tolerance)));

const raised = (exponent: string) =>
  exponent
    .replace('+', '')
    .replace('-', '⁻')
    .replace(/\d/g, (digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)] ?? '');

/** A number to so many places, in powers of ten where it would be all noughts. */
export function figure(value: number, places: number): string {
  if (places <= 7) return formatNumber(value, places);
  const size = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  const [digits = '', exponent = ''] = value.toExponential(Math.min(8, Math.max(0, size + places))).split('e');
  return value === 0 ? '0' : `${digits.replace('-', '\u2212')}\u00a0·\u00a010${raised(exponent)}`;
}

/** A share in whole per cents; below one of them it says so. */
export const percent = (share: number) =>
  share > 0 && share < 0.005 ? 'under 1\u00a0%' : `${formatNumber(100 * share, 0)}\u00a0%`;
