import type { Finding, FindingCode } from './types.ts';

/** A finding about the whole sheet, unless more is said of it. */
export function finding(code: FindingCode, weight: Finding['weight'], more: Partial<Finding> = {}): Finding {
  const { spot = null } = more;
  const place = spot && { row: spot.row, column: spot.column };
  return { code, weight, text: '', reading: '', count: 1, fix: null, ...more, spot: place };
}

const shortened = (text: string) => (text.length > 24 ? `${text.slice(0, 23)}…` : text);
export const quoted = (text: string) => ({ text: shortened(text) });
