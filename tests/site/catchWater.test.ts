/** Water caught from the drain against the water that the probes see. */
import { expect, test } from 'vitest';
import { field, fill, fillJob, openAll, phone, plain, sheet, useSite } from './support.ts';

const { open } = useSite();

test('a timed catch agrees with the probes or not, by more than both can err, and says what the drying is by it', async () => {
  const page = await open(sheet, phone);
  await openAll(page);
  await fillJob(page);
  await page.getByText('Catch the water to check it').tap();
  await field(page, 'condensate.mass').waitFor();
  const said = async () => plain((await page.locator('.catch-water [role="status"]').allInnerTexts()).join(' '));
  expect(await page.locator('.catch-water .caution').count()).toBe(1);
  await fill(page, { 'condensate.mass': '2.2', 'condensate.duration': '30' });
  await expect.poll(said).toMatch(/^Caught 4\.\d to 4\.\d lb\/h, by the probes .* they agree\./);
  // A pound of water vapour holds 1061 + 0.444·75 Btu (ASHRAE Fundamentals, ch. 1, I-P): 4.4 of them an hour.
  expect(await said()).toContain('the drying (latent) is 4,800 Btu/h.');
  await fill(page, { 'condensate.mass': '6' });
  await expect.poll(said).toContain('more than the probes say');
  await fill(page, { 'condensate.mass': '0.1' });
  await expect.poll(said).toContain('less than the probes say');
  await fill(page, { 'condensate.mass': 'a jug' });
  await field(page, 'condensate.duration').focus();
  await page.locator('[id="field-condensate.mass-check"]').waitFor();
  expect(await said()).toBe('');
  expect(await field(page, 'condensate.mass').inputValue()).toBe('a jug');
});
