/** What a machine can see of a page's accessibility. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

const aboutColours = ['color-contrast', 'link-in-text-block'];
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly target: unknown; readonly failureSummary?: string }[];
}

const named = (violations: readonly Violation[]) =>
  violations.flatMap(({ id, nodes }) =>
    nodes.map((one) => `${id} at ${one.target}: ${one.failureSummary?.split('\n')[1]?.trim()}`),
  );

/** The rules about colours, in another light. The checker stands in the page already. */
async function inLight(page: Page, light: string): Promise<string[]> {
  const found = await page.evaluate(
    async ([theme, rulesOfColours]) => {
      document.documentElement.dataset['theme'] = theme;
      const { axe } = globalThis as unknown as {
        axe: { run(what: unknown, how: unknown): Promise<{ violations: Violation[] }> };
      };
      const { violations } = await axe.run(document, { runOnly: rulesOfColours, resultTypes: ['violations'] });
      document.documentElement.dataset['theme'] = 'light';
      return JSON.stringify(violations);
    },
    [light, aboutColours] as const,
  );
  return named(JSON.parse(found)).map((fault) => `${light}: ${fault}`);
}

/** What a page repeats many times over, each alike: the first few stand for the rest, which would take most of the time of these tests. */
const alike = '.checks-table tr, .exercises > li, .equations > li, .letters > div, .bibliography > div, .cards > *';

/** Leaves of each such list its first ones. */
const shortenLists = (page: Page) =>
  page.evaluate((selector) => {
    const places = [...document.querySelectorAll(selector)].map(
      (one) => [one, [...(one.parentElement?.children ?? [])].indexOf(one)] as const,
    );
    for (const [one, place] of places) if (place > 3) one.remove();
  }, alike);

/** What is wrong with a page by all rules, and by those about colours in the other lights. Without `lights` colours are left out: they take longest. */
export async function faults(
  page: Page,
  state: string,
  lights: readonly string[] | null = ['dark', 'sun'],
): Promise<string[]> {
  await shortenLists(page);
  const axe = new AxeBuilder({ page }).withTags(rules).setLegacyMode();
  const { violations } = await (lights ? axe : axe.disableRules(aboutColours)).analyze();
  const found = named(violations as readonly Violation[]);
  for (const light of lights ?? []) found.push(...(await inLight(page, light)));
  return found.map((fault) => `${state}: ${fault}`);
}
