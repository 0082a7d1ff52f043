/** A report of somebody else's, typed in line by line: it is judged at once, survives a reload, and is kept with no job. */
import { expect, test } from 'vitest';
import { faults } from './axe.ts';
import { desk, field, phone, plain, stored, useSite } from './support.ts';

const { open } = useSite();

test('a homeowner types what stands on a report, and reads what it shows, what it cannot, and what to ask', async () => {
  const page = await open('reports/read/', phone);
  const says = async () => plain(await page.locator('.read-report-answer').innerText());
  await expect.poll(says).toContain('Nothing typed yet');
  await field(page, 'report.temperatureDrop').fill('19');
  await expect.poll(says).toContain('A temperature drop alone says nothing about capacity');
  const absent = (line: string) => page.getByRole('checkbox', { name: `Not on mine : ${line}` });
  await absent('The airflow').check({ force: true });
  await expect.poll(says).toContain('How was the airflow found, and how sure is it?');
  await field(page, 'report.share').fill('81');
  await page.getByRole('radio', { name: 'Of the nameplate’s size' }).check({ force: true });
  await expect.poll(says).toContain('81 % is a share of the size on the nameplate');
  expect(await faults(page, 'a report half typed', ['dark'])).toEqual([]);
  await page.reload();
  await expect.poll(says).toContain('81 % is a share of the size on the nameplate');
  expect(await field(page, 'report.temperatureDrop').inputValue()).toBe('19');
  expect(await absent('The airflow').isChecked()).toBe(true);
  expect(await stored(page).then(({ jobs }) => jobs ?? {})).toEqual({});
  await page.getByRole('button', { name: 'Empty every line' }).click();
  await expect.poll(says).toContain('Nothing typed yet');
});

test('with the keyboard alone both airs and an airflow come to a capacity between its ends', async () => {
  const page = await open('reports/read/', desk);
  const figures = {
    'entering.dryBulb': '75',
    'entering.relativeHumidity': '50',
    'leaving.dryBulb': '56',
    'leaving.relativeHumidity': '88',
    'airflow.volumeFlow': '1200',
  };
  for (const [key, text] of Object.entries(figures)) {
    await field(page, key).focus();
    await page.keyboard.type(text);
  }
  const answer = page.locator('.read-report-answer');
  await expect
    .poll(async () => plain(await answer.innerText()))
    .toMatch(/come to [\d,]+ Btu\/h; .* between [\d,]+ Btu\/h and [\d,]+ Btu\/h/);
  await field(page, 'leaving.dryBulb').fill('no');
  await expect.poll(() => page.locator('.check').count()).toBe(1);
});
