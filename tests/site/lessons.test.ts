/** Lessons that ask first: every question keeps its answer to itself, by mouse, keys and fingers, on a projector and on paper. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { chart, chartOpener, textField } from './moistAir.ts';
import { pdfText } from './pdfText.ts';
import { desk, go, phone, plain, stored, useSite } from './support.ts';

const { open } = useSite();

/** Each lesson, and a guess at its question that is not its answer. */
const lessons = [
  ['four-nominal-tons', '80'],
  ['drying', '10'],
  ['less-air', '3'],
  ['two-probes', '85'],
  ['one-air', '60'],
  ['between-rows', '33000'],
  ['net-and-gross', '1'],
] as const;

async function openLesson(name: string, options: typeof desk | typeof phone = phone): Promise<Page> {
  const page = await open(`classroom/${name}/`, options);
  await page.locator('.predict').scrollIntoViewIfNeeded();
  await page.locator('astro-island:not([ssr]) .predict').waitFor();
  return page;
}

const show = (page: Page) => page.getByRole('button', { name: 'Show', exact: true });
const result = async (page: Page) => plain(await page.locator('.lesson-result').innerText());

/** Everything in the question, to the eye and to those who listen; what is for pages without scripts is neither. */
const askedText = (page: Page) =>
  page.locator('.predict').evaluate((one) => `${one.outerHTML} ${one.closest('astro-island')?.getAttribute('props')}`);

test.each(lessons)(
  '%s says nothing of its answer before it is asked, then guess and result together',
  async (name, guess) => {
    const page = await openLesson(name);
    const before = plain(await askedText(page));
    expect(before).not.toContain('The answer');
    await page.locator('.predict input[type=text]').fill(guess);
    await show(page).click();
    await page.locator('.lesson-result').waitFor();
    const [, answer = 'none'] = /^You said [^.]+(?:\.\d[^.]*)?\. It is (.+?)\.\s/.exec(await result(page)) ?? [];
    expect(answer).toMatch(/\d/);
    expect(before).not.toContain(answer);
    const picture = await page.locator('.predict svg.drawing').getAttribute('aria-label');
    expect(plain(picture ?? '')).toContain(`The answer: ${answer}`);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
  },
);

test('which of three mistakes spoilt a test is said by keys alone, shown, and asked again of another house', async () => {
  const page = await openLesson('what-spoilt-it');
  await page.locator('.predict input[type=radio]').first().focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.locator('.lesson-result').waitFor();
  expect(await result(page)).toMatch(/^You said B, the supply probe was wet\. It is B, the supply probe was wet\./);
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toContain('You said B');
  const before = await page.locator('.exercise-figures').innerText();
  await page.getByRole('button', { name: 'Another one' }).click();
  await expect.poll(() => page.locator('.predict').innerText()).toContain('Question 2');
  expect(await page.locator('.exercise-figures').innerText()).not.toBe(before);
  expect(await page.locator('.lesson-result').count()).toBe(0);
});

test('the end of a bar is taken by mouse and by keys; a guess that cannot be is said so and kept; nothing is stored', async () => {
  const page = await openLesson('drying');
  const field = page.locator('#drying-guess');
  await show(page).click();
  await expect.poll(() => page.locator('.predict .check').innerText()).toContain('Say something first');
  await field.fill('250');
  await expect.poll(() => page.locator('.predict .check').innerText()).toContain('from 0');
  expect(await field.inputValue()).toBe('250');
  const svg = (await page.locator('.predict svg.drawing').boundingBox())!;
  await page.mouse.click(svg.x + svg.width / 2, svg.y + svg.height / 3);
  const middle = Number(await field.inputValue());
  expect(Math.abs(middle - 50)).toBeLessThan(6);
  await page.locator('.predict input[type=range]').focus();
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => field.inputValue()).toBe(String(middle + 1));
  await page.getByRole('button', { name: 'Show me without guessing' }).click();
  await page.locator('.lesson-result').waitFor();
  expect(await result(page)).toMatch(/^It is 24 %\./);
  expect(JSON.stringify(await stored(page))).not.toContain('drying');
});

test('shown large a question stands alone, and Escape brings the lesson back', async () => {
  const page = await openLesson('less-air', desk);
  await page.getByRole('button', { name: 'Show large' }).click();
  await expect.poll(() => page.locator('.article > h1').isVisible()).toBe(false);
  expect(await page.locator('.article-contents, .neighbours').first().isVisible()).toBe(false);
  expect(await page.locator('#lessAir-ask').isVisible()).toBe(true);
  await page.keyboard.press('Escape');
  await expect.poll(() => page.locator('.article > h1').isVisible()).toBe(true);
});

test('on paper answers that are folded stay folded; opened they are printed', async () => {
  const page = await openLesson('less-air', desk);
  const paper = async () => plain(pdfText(await page.pdf({ format: 'Letter' })));
  const folded = await paper();
  expect(folded).toContain('How much less does the system make up there?');
  expect(folded).toContain('Your guess:');
  expect(folded).not.toContain('A weather report is corrected to sea level');
  await page.getByRole('button', { name: 'Open all answers' }).click();
  expect(await paper()).toContain('A weather report is corrected to sea level');
});

/** Follows a link by the keyboard. */
async function follow(page: Page, name: string): Promise<void> {
  await page.getByRole('link', { name, exact: true }).focus();
  await page.keyboard.press('Enter');
}

/** Asks for a set by its number, and waits until it is there. */
async function askForSet(page: Page, set: string): Promise<void> {
  await page.locator('#set-number').focus();
  await page.keyboard.press('Control+A');
  await page.keyboard.type(set);
  await expect.poll(() => page.locator('.set > h2').innerText()).toBe(`Set ${set}`);
}

test('a teacher asks at the chart, sets exercises and spoilt tests by number, and has the answers on sheets of their own', async () => {
  const page = await chartOpener(open)(`${chart}?class=1`, desk);
  await textField(page, 'guess-wetBulb').focus();
  await page.keyboard.type('60');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('.lesson-result').innerText()).toContain('You said 60.0');

  await go(page, 'classroom/exercises/');
  await askForSet(page, '12');
  const given = await page.locator('.exercise-figures').first().innerText();
  expect(await page.locator('.exercises .blank-line').count()).toBeGreaterThan(6);
  expect(await page.locator('.exercises .working-list').count()).toBe(0);
  await follow(page, 'Answers to this set');
  await page.waitForURL(/exercises\/answers\/\?set=12$/);
  await expect.poll(() => page.locator('.set > h2').innerText()).toBe('Set 12');
  expect(await page.locator('.exercise-figures').first().innerText()).toBe(given);
  expect(await page.locator('.exercises .blank-line').count()).toBe(0);

  await go(page, 'classroom/spoilt/');
  await askForSet(page, '12');
  const tested = await page.locator('.exercises > li').allInnerTexts();
  expect(tested).toHaveLength(5);
  expect(tested.join()).not.toMatch(/give it away|Nothing is wrong/);
  await follow(page, 'What spoilt them');
  await page.waitForURL(/spoilt\/answers\/\?set=12$/);
  await expect.poll(() => page.locator('.set > h2').innerText()).toBe('Set 12');
  const answers = await page.locator('.exercises > li').allInnerTexts();
  expect(answers.filter((text) => text.includes('give it away'))).toHaveLength(4);
  expect(answers.filter((text) => text.includes('Nothing is wrong with this test'))).toHaveLength(1);
});
