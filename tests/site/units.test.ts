/** Units: the frame's choice, the key beside a field, a unit typed behind a number. What was typed stays as it was typed. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { bar, cellFields, field, fillJob, keptText, openAll, plain, readings, sheet, useSite } from './support.ts';

const { open } = useSite();

async function setUnits(page: Page, name: '°F, Btu/h' | '°C, kW'): Promise<void> {
  await page.locator('.frame-settings > summary').click();
  await page.getByRole('radio', { name }).check();
  await page.keyboard.press('Escape');
}

const texts = (page: Page) =>
  page
    .locator('.sheet-steps .step input[type=text]')
    .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));

test('to SI and back brings every typed text back to the last digit', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  await field(page, 'entering.dryBulb').fill('75.123456789');
  await field(page, 'altitude').fill('1,234.5');
  await field(page, 'outdoorDryBulb').fill('91F');
  const before = await texts(page);
  const [share] = await bar(page);
  await setUnits(page, '°C, kW');
  await expect.poll(() => field(page, 'leaving.dryBulb').inputValue()).toBe('13.3');
  expect((await texts(page)).length).toBe(before.length);
  expect(await texts(page)).not.toEqual(before);
  expect((await bar(page))[0]).toBe(share);
  await setUnits(page, '°F, Btu/h');
  await expect.poll(() => texts(page)).toEqual(before);
});

test('the answer speaks the chosen units, and the choice outlives a reload', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  const answer = page.locator('#answer');
  expect(plain(await answer.innerText())).toMatch(/28,900 Btu\/h/);
  await setUnits(page, '°C, kW');
  // 8 465.55 W by CoolProp 8.0.0, computed outside this project.
  await expect.poll(() => answer.innerText().then(plain)).toMatch(/8\.4[67] kW/);
  expect(await answer.innerText()).not.toMatch(/°F|Btu|cfm|lb/);
  await keptText(page, 'net');
  await page.reload();
  await expect.poll(() => answer.innerText().then(plain)).toMatch(/8\.4[67] kW/);
});

test('the key beside a field types this one in the other unit, and that one alone', async () => {
  const page = await open(sheet);
  await openAll(page);
  await field(page, 'entering.dryBulb').fill('75');
  await field(page, 'leaving.dryBulb').fill('56');
  const key = page.locator('.field', { has: field(page, 'entering.dryBulb') }).locator('.unit-key');
  expect(await key.innerText()).toBe('°F');
  await key.tap();
  await expect.poll(() => key.innerText()).toBe('°C');
  expect(await field(page, 'entering.dryBulb').inputValue()).toBe('23.9');
  expect(await field(page, 'leaving.dryBulb').inputValue()).toBe('56');
  await key.tap();
  await expect.poll(() => field(page, 'entering.dryBulb').inputValue()).toBe('75');
});

test('a number typed in the other unit is kept in it, and the share comes from it', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  const [share] = await bar(page);
  await page
    .locator('.field', { has: field(page, 'leaving.dryBulb') })
    .locator('.unit-key')
    .tap();
  await field(page, 'leaving.dryBulb').fill('13.33333');
  await expect.poll(() => bar(page).then(([big]) => big)).toBe(share);
  await setUnits(page, '°C, kW');
  await expect.poll(() => bar(page).then(([big]) => big)).toBe(share);
});

test('a unit behind a number wins over the unit of the field, in either system', async () => {
  const page = await open(sheet);
  await openAll(page);
  await field(page, 'entering.relativeHumidity').fill(readings['entering.relativeHumidity']);
  const answers: string[] = [];
  for (const text of ['75', '75 F', '23.888889 C', '23,888889°C']) {
    await field(page, 'entering.dryBulb').fill(text);
    await field(page, 'entering.dryBulb').blur();
    await expect.poll(() => page.locator('#step-entering .echo').last().innerText()).toContain('wet bulb');
    answers.push(/[\d.]+\s°F wet bulb/.exec(plain(await page.locator('#step-entering').innerText()))?.[0] ?? '');
  }
  // 16.9704 °C by CoolProp 8.0.0, computed outside this project.
  expect(new Set(answers)).toEqual(new Set(['62.5 °F wet bulb']));
});

test('the cells of the table keep their own unit when the page changes its units', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  await setUnits(page, '°C, kW');
  await expect.poll(() => page.locator('.cell-columns .head-key').allInnerTexts()).toEqual(['29.4', '35']);
  expect(await cellFields(page).first().inputValue()).toBe('33.6');
  expect(plain(await page.locator('#step-rating').innerText())).toMatch(/Btu\/h|MBh/);
});
