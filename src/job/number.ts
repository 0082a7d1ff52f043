/**
 * The numbers that a typed text may mean, without knowing what it is about: decimal point or comma; thousands set off by a
 * comma, a point, a space or an apostrophe; any minus sign; full-width digits.
 */
export interface Numeral {
  readonly number: number;
  /** False where it is not simply the digits as they stand. */
  readonly plain: boolean;
}

const longest = 40;
const minusSigns = /[\u2010-\u2015\u2212]/g;
const apostrophes = /[\u2018\u2019\u02bc\u2032]/g;
const doubleQuotes = /[\u201c\u201d\u2033]|''/g;
const figure = /^([+-]?) ?((?:\d|[.,](?=\d)|[ '](?=\d{3}(?!\d)))+)[.,]?(.*)$/;
const inThrees = /^\d{1,3}([ ']\d{3})+([.,]\d+)?$/;

/** The text in one spelling: compatibility forms folded, one kind of minus and of quote, single spaces, lower case. */
export function spelled(text: string): string {
  return text
    .normalize('NFKC')
    .replace(minusSigns, '-')
    .replace(apostrophes, "'")
    .replace(doubleQuotes, '"')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}

/**
 * The number at the head of a text in one spelling, every way in which it can be meant, the likelier first, and what stands
 * behind it; `null` where there is none.
 */
export function numberAtHead(text: string): { readonly numerals: readonly Numeral[]; readonly rest: string } | null {
  const found = text.length > longest ? null : figure.exec(text);
  if (found === null) return null;
  const [, sign, digits = '', rest = ''] = found;
  const numerals = meanings(digits).map(({ number, plain }) => ({ number: sign === '-' ? 0 - number : number, plain }));
  return numerals.length === 0 ? null : { numerals, rest: rest.trim() };
}

function meanings(digits: string): Numeral[] {
  const close = digits.replace(/[ ']/g, '');
  const spaced = close !== digits;
  if (spaced && !inThrees.test(digits)) return [];
  const mark = /[.,](?=\d*$)/.exec(close)?.[0];
  if (mark === undefined) return [{ number: Number(close), plain: !spaced }];
  const other = mark === '.' ? ',' : '.';
  if (close.includes(other)) return numeral(decimal(close, mark, other), false);
  const asDecimal = numeral(decimal(close, mark, ''), mark === '.' && !spaced);
  const asThousands = spaced ? [] : numeral(thousands(close, mark), false);
  return mark === ',' ? [...asThousands, ...asDecimal] : [...asDecimal, ...asThousands];
}

function numeral(number: number | null, plain: boolean): Numeral[] {
  return number === null ? [] : [{ number, plain }];
}

/** The digits with `mark` before the last decimals, those before it in threes set off by `separator` ('': in one piece). */
function decimal(digits: string, mark: string, separator: string): number | null {
  const at = digits.lastIndexOf(mark);
  const before = digits.slice(0, at);
  const whole = separator === '' || before === '' ? before : thousands(before, separator);
  return whole !== null && /^\d*$/.test(String(whole)) ? Number(`${whole}${digits.slice(at).replace(',', '.')}`) : null;
}

function thousands(digits: string, separator: string): number | null {
  const [first = '', ...groups] = digits.split(separator);
  const regular = /^[1-9]\d{0,2}$/.test(first) && groups.length > 0 && groups.every((group) => /^\d{3}$/.test(group));
  return regular ? Number([first, ...groups].join('')) : null;
}
