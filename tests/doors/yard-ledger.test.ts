// The yard's quantities and movements by keyboard in a real browser: the history of a number one key away with its
// running quantity, movements by reason, and rows of a spreadsheet onto the slip of which the bad one stays.
import { expect } from 'vitest';
import { doorTest } from './door-test.ts';
import { openDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';

doorTest(
  'local',
  'H on a row opens its history, rows of a spreadsheet are booked, and the history has them',
  async () => {
    const door = await openDoor('local', { demo: true });
    const { page } = door;
    try {
      await goToScreen(page, '/yard?by=component');
      const locks = page.getByRole('row', { name: /^LK Lock / });
      await page.getByRole('columnheader', { name: 'Below need' }).waitFor();
      await locks.focus();
      await page.keyboard.press('h');
      const history = page.getByRole('complementary', { name: 'History: LK' });
      const entries = history.locator('tbody tr[data-index]');
      await entries.first().waitFor();
      const before = await entries.count();
      const all = Number(await entries.first().locator('strong').textContent());
      expect(all).toBeGreaterThan(400);

      await page.keyboard.press('Escape');
      await goToScreen(page, '/yard?slip=open');
      const slip = page.getByRole('complementary', { name: 'Book a movement' });
      await slip.getByLabel('Whose pieces').selectOption('TFH');
      await slip.getByLabel('When').fill('24 Feb 10:00');
      await slip.getByRole('button', { name: 'Paste from a spreadsheet' }).click();
      const field = slip.getByLabel(/^Rows copied from a spreadsheet/u);
      await field.fill('LK\t24\nNONE\t3\nLK\t1,000');
      await slip.getByText('1 line read, 2 rows not.').waitFor();
      await slip.getByText('There is no component NONE.').waitFor();
      await slip.getByRole('button', { name: 'Put 1 line on the slip' }).click();
      expect(await field.inputValue()).toBe('NONE\t3\nLK\t1,000');
      await slip.getByRole('button', { name: 'Book', exact: true }).click();
      await slip.getByText('Booked: 1 movement.').waitFor();

      await goToScreen(page, '/yard?by=component&component=LK');
      await history.getByText('+24').waitFor();
      expect(await entries.count()).toBe(before + 1);
      expect(Number(await entries.first().locator('strong').textContent())).toBe(all + 24);

      await goToScreen(page, '/yard?show=movements');
      const rows = page
        .getByRole('grid', { name: 'Movements, newest first' })
        .locator('tbody tr[data-index]');
      await page.getByRole('combobox', { name: 'Reason' }).selectOption('delivery');
      await expect.poll(() => rows.count()).toBeLessThan(10);
      const texts = await rows.allTextContents();
      expect(texts.length).toBeGreaterThan(0);
      expect(texts.filter((text) => !text.includes('delivery'))).toEqual([]);
    } finally {
      await door.close();
    }
  },
);
