/** Fields that are asked for in two places, labels, signs: each does what stands on it. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { bar, choose, field, fillJob, openAll, openMore, plain, sheet, step, unfoldAll, useSite } from './support.ts';

const { open } = useSite();

async function unfolded(): Promise<Page> {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  await step(page, 'sure').getByRole('radio', { name: 'Yes, type the difference' }).check();
  await unfoldAll(page);
  await openMore(page);
  return page;
}

test('a press on a label leads to the field that stands below it', async () => {
  const page = await unfolded();
  const labels = await page.locator('.sheet label[for]:not(.spoken)').all();
  expect(labels.length).toBeGreaterThan(12);
  for (const label of labels) {
    // Two quick taps on one spot would be a double tap, by which a label gives its field nothing.
    await label.click();
    const beside = await label.evaluate((one) => one.parentElement?.contains(document.activeElement));
    expect(beside, plain(await label.innerText())).toBe(true);
  }
});

test('a question that is asked in two places shows the same answer in both', async () => {
  const page = await unfolded();
  const groups = page.locator('.sheet fieldset', { hasText: 'Where is the blower?' });
  const count = await groups.count();
  expect(count).toBeGreaterThan(0);
  for (let index = 0; index < count; index++) {
    const answer = index % 2 ? 'After the coil' : 'Before the coil';
    await groups.nth(index).getByRole('radio', { name: answer }).tap();
    for (let other = 0; other < count; other++)
      await expect.poll(() => groups.nth(other).getByRole('radio', { name: answer }).isChecked()).toBe(true);
  }
});

test('a figure that is asked for in two places is the same in both', async () => {
  const page = await unfolded();
  const powers = page.getByRole('textbox', { name: 'Power of this blower' });
  await powers.first().fill('430');
  for (const one of await powers.all()) await expect.poll(() => one.inputValue()).toBe('430');
});

test('the key for the sign turns the sign of what is typed, and back', async () => {
  const page = await unfolded();
  const sign = page.locator('.field', { has: field(page, 'outdoorDryBulb') }).getByRole('button', { name: /sign/ });
  await field(page, 'outdoorDryBulb').fill('5');
  await sign.tap();
  await expect.poll(() => field(page, 'outdoorDryBulb').inputValue()).toMatch(/^[-\u2212]5$/);
  await sign.tap();
  await expect.poll(() => field(page, 'outdoorDryBulb').inputValue()).toBe('5');
});

test('switching to the wet bulb keeps the humidity as it was typed, and back again', async () => {
  const page = await unfolded();
  const before = await bar(page);
  await page.getByRole('button', { name: 'My probe shows wet bulb instead' }).tap();
  expect(await field(page, 'entering.wetBulb').inputValue()).toBe('');
  expect(await field(page, 'leaving.wetBulb').inputValue()).toBe('');
  // 16.9704 °C by CoolProp 8.0.0, computed outside this project.
  expect(plain(await step(page, 'entering').innerText())).toContain('62.5 °F');
  await field(page, 'entering.wetBulb').fill('62.5');
  await field(page, 'leaving.wetBulb').fill('54');
  await page.getByRole('button', { name: 'My probe shows humidity instead' }).tap();
  expect(await field(page, 'entering.relativeHumidity').inputValue()).toBe('50');
  await expect.poll(() => bar(page)).toEqual(before);
});

test('several readings count as their mean, and each can be taken out', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  const entering = step(page, 'entering');
  await entering.getByRole('button', { name: 'Another reading' }).tap();
  await expect.poll(() => field(page, 'entering.dryBulb').inputValue()).toBe('');
  await field(page, 'entering.dryBulb').fill('77');
  await field(page, 'entering.relativeHumidity').fill('46');
  await field(page, 'entering.relativeHumidity').blur();
  await expect.poll(() => entering.innerText().then(plain)).toMatch(/Mean of 2 readings: 76\.0 °F, 48 %/);
  await entering.getByRole('button', { name: /^Remove/ }).tap();
  await expect.poll(() => entering.getByRole('button', { name: /^Remove/ }).count()).toBe(0);
  expect(await field(page, 'entering.dryBulb').inputValue()).toBe('77');
});

test('the airflow’s sentence says what its method is taken for, and can be changed', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  const airflow = step(page, 'airflow');
  await expect.poll(() => airflow.innerText().then(plain)).toContain('Taken as actual air, at the return, ±7 %.');
  const [before] = await bar(page);
  await airflow.getByRole('button', { name: 'Change', exact: true }).tap();
  await choose(page, 'airflow', 'As standard air');
  await expect.poll(() => airflow.innerText().then(plain)).toContain('Taken as standard air');
  await expect.poll(() => bar(page).then(([big]) => big)).not.toBe(before);
});
