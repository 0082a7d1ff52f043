/** Times of a record, whatever wrote them: with a zone or without, day or month first, AM and PM, a clock alone, or a count. */

/** How a column of times is written; `null`: these are no times. */
export interface TimeStyle {
  readonly kind: 'dated' | 'clock' | 'epoch' | 'count';
  /** Whether the day stands before the month. */
  readonly dayFirst: boolean;
}

const clockPattern = /^(\d{1,2})[:.](\d\d)(?:[:.](\d\d(?:[.,]\d+)?))?\s*(?:([ap])\.?\s?m\.?)?$/i;
const isoPattern = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ,]+(.*))?$/;
const dayPattern = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4}|\d\d)(?:[T ,]+(.*))?$/;
const zonePattern = /(?:Z|[+-]\d\d:?\d\d)$/;
const day = 86_400;

/** Seconds of a day; not a number for what is no clock. */
function clockSeconds(text: string): number {
  const [, hours, minutes, seconds = '0', half] = clockPattern.exec(text.trim()) ?? [];
  if (hours === undefined) return Number.NaN;
  const hour = (half ? Number(hours) % 12 : Number(hours)) + (half?.toLowerCase() === 'p' ? 12 : 0);
  if (hour > 24 || Number(minutes) > 59) return Number.NaN;
  return hour * 3600 + Number(minutes) * 60 + Number(seconds.replace(',', '.'));
}

/** Whether a text is a date, with or without a clock behind it. */
export const isDate = (text: string) => isoPattern.test(text.trim()) || dayPattern.test(text.trim());

/** How the texts of a column say the time; `null` where most of them do not. */
export function timeStyleOf(texts: readonly string[]): TimeStyle | null {
  const some = texts.filter((text) => text.trim() !== '').slice(0, 200);
  const most = (test: (text: string) => boolean) => some.length > 0 && some.filter(test).length >= 0.8 * some.length;
  if (most(isDate)) return { kind: 'dated', dayFirst: some.some(isDayFirst) };
  if (most((text) => Number.isFinite(clockSeconds(text)) && text.includes(':')))
    return { kind: 'clock', dayFirst: false };
  const numbers = some.map((text) => Number(text.replace(',', '.')));
  if (
    some.length < 2 ||
    !numbers.every((one, at) => Number.isFinite(one) && (at === 0 || one > (numbers[at - 1] ?? 0)))
  )
    return null;
  return { kind: (numbers[0] ?? 0) > 1e9 ? 'epoch' : 'count', dayFirst: false };
}

function isDayFirst(text: string): boolean {
  const [, first = '', second = ''] = dayPattern.exec(text.trim()) ?? [];
  return Number(first) > 12 || (text.includes('.') && !(Number(second) > 12));
}

/** A time in s: since 1970 where there is a date, since midnight for a clock alone; not a number for what is none. */
export function timeOf(text: string, { kind, dayFirst }: TimeStyle): number {
  const trimmed = text.trim();
  if (kind === 'clock') return clockSeconds(trimmed);
  if (kind !== 'dated') {
    const number = trimmed === '' ? Number.NaN : Number(trimmed.replace(',', '.'));
    return number > 1e11 ? number / 1000 : number;
  }
  if (zonePattern.test(trimmed) && trimmed.includes(':')) {
    const zoned = Date.parse(trimmed) / 1000;
    if (Number.isFinite(zoned)) return zoned;
  }
  const iso = isoPattern.exec(trimmed);
  const [, one = '', two = '', three = '', clock] = iso ?? dayPattern.exec(trimmed) ?? [];
  const [year, month, date] = iso
    ? [Number(one), Number(two), Number(three)]
    : [
        Number(three) < 100 ? 2000 + Number(three) : Number(three),
        Number(dayFirst ? two : one),
        Number(dayFirst ? one : two),
      ];
  if (!(month >= 1 && month <= 12 && date >= 1 && date <= 31)) return Number.NaN;
  const seconds = clock === undefined || clock === '' ? 0 : clockSeconds(clock.replace(zonePattern, ''));
  return new Date(year, month - 1, date).getTime() / 1000 + seconds;
}

/** A clock alone that passes midnight goes on with the next day. */
export function overMidnight(times: readonly number[]): readonly number[] {
  let days = 0;
  let last = Number.NaN;
  return times.map((time) => {
    if (last - time > day / 2) days++;
    if (Number.isFinite(time)) last = time;
    return time + days * day;
  });
}
