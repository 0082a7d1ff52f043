/** What the columns of two records are, one of each probe. */
import { places } from './logColumns.ts';
import type { LogHead } from './openLog.ts';
import type { LogRole } from './roles.ts';

const says = (place: 'entering' | 'leaving', text: string) =>
  places.some(([one, words]) => one === place && words.test(text));

/**
 * The first is the return probe's, unless the name or the titles of one of them say otherwise. The first temperature and the
 * first humidity of each count.
 */
export function rolesOfTwo(
  records: readonly { readonly name: string; readonly heads: readonly LogHead[] }[],
): readonly (readonly LogRole[])[] {
  const texts = records.map(({ name, heads }) => [name, ...heads.map(({ title }) => title)].join(' '));
  const [first = '', second = ''] = texts;
  const isOtherWay =
    (says('leaving', first) && !says('entering', first)) || (says('entering', second) && !says('leaving', second));
  return records.map(({ heads }, index) => {
    const place = (index === 0) === isOtherWay ? 'leaving' : 'entering';
    const taken = new Set<LogRole>();
    return heads.map(({ role }): LogRole => {
      const what = /\.(dryBulb|humidity)$/.exec(role)?.[1] as 'dryBulb' | 'humidity' | undefined;
      const meant = what ? (`${place}.${what}` as const) : role === 'time' ? role : 'none';
      if (taken.has(meant)) return 'none';
      taken.add(meant);
      return meant;
    });
  });
}
