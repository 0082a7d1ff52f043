/** A new job on a phone, typed key by key, from an empty sheet to the share. */
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { stepWords } from '../../src/words/en/working.ts';
import { goldenJobRows } from '../published/data/goldenJobRows.ts';
import { bar, cellFields, cells, field, focused, nextKey, openAll, plain, sheet, step, useSite } from './support.ts';

const { open } = useSite();
const [job] = goldenJobRows;
const btuPerHour = 0.293_071_07;

/** A hand that types with the keyboard of the phone and counts what it does. Enter is a key of that keyboard and no tap on the page. */
class Hand {
  figures = 0;
  taps = 0;
  enters = 0;
  letters = 0;
  private tapped = 0;
  readonly page: Page;
  constructor(page: Page) {
    this.page = page;
  }
  async type(text: string, into: string | Locator): Promise<void> {
    const target = typeof into === 'string' ? field(this.page, into) : into;
    await expect.poll(() => target.evaluate((one) => one === document.activeElement)).toBe(true);
    await this.page.keyboard.type(text);
    this.figures++;
    this.letters += text.length;
  }
  async enter(): Promise<void> {
    await this.page.keyboard.press('Enter');
    this.enters++;
  }
  async tap(target: Locator): Promise<void> {
    // Two taps within 300 ms on nearly the same place are a double tap, which selects a word and moves no caret.
    await this.page.waitForTimeout(Math.max(0, this.tapped + 400 - Date.now()));
    await target.tap();
    this.tapped = Date.now();
    this.taps++;
  }
  next = () => this.tap(nextKey(this.page));
  async arrives(at: string): Promise<void> {
    await expect.poll(() => focused(this.page)).toBe(at);
  }
}

/**
 * What a hand did, and how long that takes one who does not stop to think of anything else: by the keystroke-level model 0.28 s a key,
 * 1.1 s to reach what is tapped, 1.35 s to make up one's mind before each figure and each tap (its times, from memory).
 */
function said({ figures, letters, enters, taps }: Hand): string {
  const seconds = 0.28 * (letters + enters) + 1.1 * taps + 1.35 * (figures + taps);
  return `${figures} figures of ${letters} letters, ${taps} taps, ${enters} times Enter: ${Math.round(seconds)} s`;
}

/** Steps 1 to 3: five figures, going on by the key of the bar and by Enter in turn, or by Enter alone. */
async function typeReadings(hand: Hand, by: 'both' | 'enter' = 'both'): Promise<void> {
  const on = () => (by === 'both' ? hand.next() : hand.enter());
  await hand.next();
  await hand.type('75', 'entering.dryBulb');
  await hand.enter();
  await hand.type('50', 'entering.relativeHumidity');
  await on();
  await hand.type('56', 'leaving.dryBulb');
  await hand.enter();
  await hand.type('88', 'leaving.relativeHumidity');
  await on();
  await hand.type('1180', 'airflow.volumeFlow');
}

/** Steps 4 and 5 up to the figures of the table. The first tap opens the phone's list, the second chooses; each answer leads on. */
async function typeTheRest(hand: Hand): Promise<void> {
  const { page } = hand;
  await hand.enter();
  await hand.enter();
  await hand.arrives('choice-airflow.method');
  await hand.tap(page.locator('select'));
  await page.locator('select').selectOption('flowGrid');
  hand.taps++;
  await hand.type('91', 'outdoorDryBulb');
  await hand.enter();
  await hand.arrives('choice-fullSpeed');
  await hand.tap(step(page, 'outdoors').getByRole('radio', { name: 'Yes, one speed' }));
  await hand.type('3', 'nominalCapacity');
  await hand.enter();
}

async function typeCells(hand: Hand): Promise<void> {
  for (const [index, text] of cells.entries()) {
    await hand.type(text, cellFields(hand.page).nth(index));
    await hand.enter();
  }
  await hand.arrives('choice-rating.basis');
  await hand.tap(step(hand.page, 'rating').getByRole('radio', { name: 'Yes (net)' }));
}

/** The blower's power inside the rating and here: folded, since many tables do not say. */
async function typeBlower(hand: Hand): Promise<void> {
  const rating = step(hand.page, 'rating');
  await hand.tap(rating.getByRole('button', { name: 'More, or no table' }));
  await hand.tap(rating.locator('.part > summary', { hasText: 'The blowers' }));
  // Not where the key was: two quick taps on one spot are a double tap, which puts no cursor into an empty field.
  await rating.locator('[id="field-rating.blowerPower"]').tap({ position: { x: 8, y: 8 } });
  hand.taps++;
  await hand.type('300', 'rating.blowerPower');
  await hand.enter();
  await hand.type('430', rating.locator('[id="field-blower.power"]'));
}

/** The numbers of the answer's ledger under their names. */
async function ledger(page: Page): Promise<Record<string, string>> {
  const lines = await page.locator('#answer .answer .ledger tr').all();
  const read = async (line: Locator) => [
    plain(await line.locator('th').innerText()),
    await line.locator('.number').innerText(),
  ];
  return Object.fromEntries(await Promise.all(lines.map(read)));
}

/** What a figure of the outside job looks like on the sheet: capacities to three figures, shares in whole per cent. */
const inBtuh = (watts: number) => (Math.round(watts / btuPerHour / 100) * 100).toLocaleString('en-US');
const inPercent = (share: number) => `${Math.round(share * 100)}`;

/** The result in SI that the working shows for a step, before any rounding for the page. */
async function workedOut(page: Page, id: string): Promise<number> {
  const name = page.locator('.working-name > b').getByText(stepWords(id), { exact: true });
  const line = page.locator('.working-list > li').filter({ has: name });
  return Number((await line.locator('.working-gives b').innerText()).replace(/[^\d.]/g, ''));
}

test('five figures say what it delivers, with the airflow taken as nobody said', async () => {
  const hand = new Hand(await open(sheet));
  await typeReadings(hand);
  await expect
    .poll(() => bar(hand.page))
    .toEqual([expect.stringMatching(/^2[89],\d00 Btu\/h$/), expect.stringMatching(/^measured now · \d assumed$/)]);
});

test('a whole job typed on a phone gives the share that was worked out elsewhere', async () => {
  const hand = new Hand(await open(sheet));
  const { page } = hand;
  await typeReadings(hand);
  await typeTheRest(hand);
  expect((await bar(page))[0]).toBe(`${inBtuh(job!.total)} Btu/h`);
  await hand.arrives('field-rating.airflow');
  await hand.enter();
  await typeCells(hand);
  await typeBlower(hand);
  // The block's airflow is left empty: the figures are then taken to be for this airflow, as in the outside job.
  await expect
    .poll(() => bar(page))
    .toEqual([`${inPercent(job!.ratio)} % of what it should make`, 'no verdict yet: step 6 says how sure']);
  expect(Object.values(await ledger(page))).toEqual([
    inBtuh(job!.total),
    inBtuh(job!.expectedNet),
    inPercent(job!.ratio),
  ]);

  await page.locator('summary', { hasText: 'The working' }).tap();
  await page.locator('.working-list').first().waitFor();
  const within = (ours: number, theirs: number) => expect(Math.abs(ours / theirs - 1)).toBeLessThan(job!.tolerance);
  within(await workedOut(page, 'coilLoad.total'), job!.total);
  within(await workedOut(page, 'coilLoad.sensible'), job!.sensible);
  within(await workedOut(page, 'expectation.net'), job!.expectedNet);
  within((await workedOut(page, 'ratio')) / 100, job!.ratio);
});

test('from an empty sheet to a verdict it takes twelve figures and six taps', async () => {
  const hand = new Hand(await open(sheet));
  await typeReadings(hand, 'enter');
  await typeTheRest(hand);
  await hand.type('1180', 'rating.airflow');
  await hand.enter();
  await typeCells(hand);
  // What was answered stays open under the finger until somebody goes further.
  await hand.arrives('choice-sideBySide');
  expect(await step(hand.page, 'rating').locator('.step-key').getAttribute('aria-expanded')).toBe('true');
  await hand.tap(step(hand.page, 'sure').getByRole('radio', { name: 'No', exact: true }));
  await expect.poll(() => bar(hand.page)).toEqual(['Cannot tell', expect.stringMatching(/^\d\d %: between/)]);
  console.log(`  to a verdict: ${said(hand)}`);
  expect(hand.figures).toBe(12);
  expect(hand.taps).toBe(6);
});

test('an answer that is changed, one by a mouse and one among all open steps lead nowhere', async () => {
  const page = await open(sheet);
  const speed = (name: string) => step(page, 'outdoors').getByRole('radio', { name });
  await step(page, 'outdoors').locator('.step-key').tap();
  await speed('Yes, one speed').click();
  await speed('Yes, held in test mode').tap();
  await speed('No or not sure').tap();
  await expect.poll(() => focused(page)).toBe('choice-fullSpeed');
  expect(await step(page, 'rating').locator('.step-key').getAttribute('aria-expanded')).toBe('false');
  await openAll(page);
  await step(page, 'sure').getByRole('radio', { name: 'No', exact: true }).tap();
  await expect.poll(() => focused(page)).toBe('choice-sideBySide');
});

test('with the airflow of the block the share follows the published flow curve', async () => {
  const hand = new Hand(await open(sheet));
  const { page } = hand;
  await typeReadings(hand, 'enter');
  await typeTheRest(hand);
  await hand.type('1180', 'rating.airflow');
  await hand.enter();
  await typeCells(hand);
  await typeBlower(hand);
  console.log(`  with both blowers: ${said(hand)}`);
  // 1,180 cfm of standard air is more air than 1,180 cfm at the return: capacity goes with 0.8 + 0.2 of the ratio (EnergyPlus).
  const rated = job!.expectedNet + job!.blowerHere - job!.blowerInside;
  const flow = job!.dryAirFlow / (job!.cfm * 0.000_471_947_443_2 * 1.2014);
  const expected = rated * (0.8 + 0.2 * flow) + job!.blowerInside - job!.blowerHere;
  await expect
    .poll(() => bar(page))
    .toEqual([`${inPercent(job!.total / expected)} % of what it should make`, 'no verdict yet: step 6 says how sure']);
  expect(Object.values(await ledger(page))).toEqual([
    inBtuh(job!.total),
    inBtuh(expected),
    inPercent(job!.total / expected),
  ]);
});

test('[Next] after the last step leads to the answer, and the key says so', async () => {
  const page = await open(sheet);
  await step(page, 'sure').locator('.step-key').tap();
  expect(await nextKey(page).innerText()).toBe('Answer');
  await field(page, 'line').tap();
  await nextKey(page).tap();
  await expect.poll(() => focused(page)).toBe('answer');
  await expect
    .poll(() => page.locator('.answer-sentence').evaluate((one) => one.getBoundingClientRect().bottom < innerHeight))
    .toBe(true);
});
