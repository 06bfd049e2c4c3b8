// Two pours lose their dates, one is given one of three, both are placed together and taken back, by keyboard.
import { describe, expect } from 'vitest';
import { broken } from './broken-rules.ts';
import { doorTest } from './door-test.ts';
import { openDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';

describe('local', () => {
  doorTest('local', 'dates for pours that have none', async () => {
    const door = await openDoor('local', { demo: true });
    const { page } = door;
    page.setDefaultTimeout(20_000);
    try {
      const press = async (name: string | RegExp): Promise<void> => {
        await page.getByRole('button', { name }).first().focus();
        await page.keyboard.press('Enter');
      };
      await goToScreen(page, '/pours/P26');
      await press('It has no date yet');
      await page.getByText('No date yet: P26 is in no plan.').waitFor();
      await press('Three dates for P26');
      await page.getByRole('heading', { name: 'Three dates for P26' }).waitFor();
      const takes = page.getByRole('button', { name: /^Take this date, \w{3} \d/u });
      await takes.first().waitFor();
      expect(await takes.count()).toBe(3);
      expect(await broken(page)).toEqual([]);
      await press(/^Take this date, \w{3} \d/u);
      await page.getByText(/P26 ends .* Ctrl\+Z takes it back/u).waitFor();
      expect(await page.getByText('P26 is in no plan').count()).toBe(0);
      for (const pour of ['P26', 'P25']) {
        await goToScreen(page, `/pours/${pour}`);
        await press('It has no date yet');
        await page.getByText(`No date yet: ${pour} is in no plan.`).waitFor();
      }
      await press('Place 2 pours without date');
      await page.getByRole('table', { name: 'Dates found' }).waitFor();
      expect(await broken(page)).toEqual([]);
      await press('Take these dates');
      await page.getByText('2 pours have dates.').waitFor();
      await page.keyboard.press('Control+z');
      await page.getByRole('button', { name: 'Place 2 pours without date' }).waitFor();
    } finally {
      await door.close();
    }
  });
});
