/** The sheet on paper: what was read, what it comes to and where it comes from, as text, and nothing that can only be pressed. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { pdfText } from './pdfText.ts';
import { bar, desk, go, phone, plain, sheet, useSite } from './support.ts';

const { open } = useSite();

async function printed(page: Page): Promise<string> {
  return pdfText(await page.pdf({ format: 'Letter' }));
}

async function openDemo(options = desk): Promise<Page> {
  const page = await open(`${sheet}?demo`, options);
  await page.locator('.invented').waitFor();
  await page.locator('.title-block').waitFor();
  return page;
}

test.each([
  ['a desk', desk],
  ['a phone', phone],
])('printed from %s, the demo has its figures as text', async (_, options) => {
  const page = await openDemo(options);
  const said = options === phone ? /\d+ %: between \d+ and \d+ %/.exec((await bar(page))[1])?.[0] : undefined;
  const paper = plain(await printed(page));
  for (const typed of ['75.0', '50', '56.0', '88', '1,180', '91', '14 Sample Lane']) expect(paper).toContain(typed);
  for (const result of ['28,900', 'Btu/h', 'cooling (sensible)', 'drying (latent)', 'ASHRAE 37'])
    expect(paper).toContain(result);
  if (options === phone) expect(paper).toContain(`Cannot tell: ${said?.replace(':', ',')}`);
  expect(paper).toContain('Demo, invented');
});

test('on paper stand the figures of the maker’s table that were read, and what they mean', async () => {
  const paper = plain(await printed(await openDemo(phone)));
  for (const figure of ['32.9', '31.3', '35.0', '33.2', '1,200 cfm']) expect(paper).toContain(figure);
  for (const said of ['already taken off? Yes (net)', 'Blower power inside the rating: 300 W'])
    expect(paper).toContain(said);
});

test('on paper nothing is left that can only be pressed', async () => {
  const page = await openDemo(phone);
  await page.emulateMedia({ media: 'print' });
  const pressed = await page.locator('button:visible, summary:visible').allInnerTexts();
  // Heads of steps and folds are headings on paper.
  expect(
    pressed.filter((text) => /^(Next|Answer|Note|Another reading|Open all|Change|Menu|Skip)/.test(text.trim())),
  ).toEqual([]);
  expect(await page.locator('.answer-bar').isVisible()).toBe(false);
});

test('on paper ink is black and paper white, whatever the page shows', async () => {
  const page = await openDemo();
  await page.evaluate(() => {
    document.documentElement.dataset['theme'] = 'dark';
  });
  await page.emulateMedia({ media: 'print' });
  const colours = await page
    .locator('.answer-sentence')
    .evaluate((one) => [getComputedStyle(one).color, getComputedStyle(document.body).backgroundColor]);
  expect(colours[0]).toBe('rgb(0, 0, 0)');
  expect(['rgb(255, 255, 255)', 'rgba(0, 0, 0, 0)']).toContain(colours[1]);
});

test('a lesson prints its questions without their answers, and with them once they are open', async () => {
  const page = await open('classroom/four-nominal-tons/', desk);
  const answers = await page
    .locator('main .question > p')
    // A figure stands there in both kinds of units: the longest piece of text is none.
    .evaluateAll((all) =>
      all.map((one) =>
        [...one.childNodes]
          .filter((node) => node.nodeType === Node.TEXT_NODE)
          .map((node) => node.textContent ?? '')
          .reduce((longest, text) => (text.length > longest.length ? text : longest), ''),
      ),
    );
  const squeezed = (text: string) => text.replace(/\s/g, '');
  const onPaper = async () => {
    const paper = squeezed(await printed(page));
    return answers.map((text) => paper.includes(squeezed(text)));
  };
  expect(answers.length).toBeGreaterThan(3);
  expect(await onPaper()).not.toContain(true);
  await page.getByRole('button', { name: 'Open all answers' }).click();
  expect(await onPaper()).not.toContain(false);
});

test('a word of the trade is explained on paper where it stands', async () => {
  const page = await open('method/supply-probe/', desk);
  const explained = await page
    .locator('.term')
    .first()
    .evaluate((term) => term.parentElement?.textContent ?? '');
  const says = await page.locator('.term-says').first().textContent();
  const before = explained
    .slice(0, explained.indexOf(says ?? ''))
    .replace(/\s/g, '')
    .slice(-20);
  const paper = (await printed(page)).replace(/\s/g, '');
  expect(before).not.toBe('');
  expect(paper).toContain(`${before}(`);
});

test('the card of an article prints alone, and every card has its size', async () => {
  const page = await open('method/side-by-side/#card', phone);
  const paper = plain(await printed(page));
  expect(paper).toContain('Test with the marked probe in the supply.');
  expect(paper).not.toContain('Common mistakes');
  await go(page, 'method/cards/');
  await page.emulateMedia({ media: 'print' });
  const cards = await page
    .locator('.cards > .field-steps')
    .evaluateAll((all) => all.map((card) => card.getBoundingClientRect()).map(({ width, height }) => [width, height]));
  expect(cards.length).toBeGreaterThan(30);
  const millimetre = 96 / 25.4;
  expect(cards.filter(([width = 0, height = 0]) => width > 74.5 * millimetre || height > 105.5 * millimetre)).toEqual(
    [],
  );
});
