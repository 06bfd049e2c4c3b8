// A shortfall and its ways out, in the window and in the browser: the second way is carried out with one press and taken back
// with the keys, and another shortfall is left with a reason.
import { describe, expect } from 'vitest';
import { doorTest } from './door-test.ts';
import { doorKinds, openDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';

const locks = '/shortfalls?short=LK%402026-03-13T07%3A00%3A00-04%3A00';

describe.each(doorKinds)('at the %s door', (kind) => {
  doorTest(kind, 'a way out is applied and undone, and a shortfall is left with a reason', async () => {
    const door = await openDoor(kind, { demo: true });
    const { page } = door;
    page.setDefaultTimeout(30_000);
    try {
      await goToScreen(page, locks);
      await page.getByRole('heading', { name: '18 shortfalls of 10 components' }).waitFor();
      const ways = page.getByRole('region', { name: 'Ways out' });
      const apply = ways.getByRole('button', { name: /^Apply/u });
      await apply.nth(1).waitFor();
      // The cheapest is an earlier strip, which a named person has to approve; the second is hire.
      expect(await apply.first().getAttribute('aria-label')).toContain(
        'Strip P07 after 12 h instead of 24 h',
      );
      await ways.getByLabel('Approved by (may be left open)').first().waitFor();
      expect(await apply.nth(1).getAttribute('aria-label')).toBe('Apply: Hire 6 LK, Fri 13 Mar');
      await apply.nth(1).press('Enter');
      await page.getByRole('heading', { name: '17 shortfalls of 10 components' }).waitFor();
      await page.getByText('Kept: Hire 6 LK, Fri 13 Mar').waitFor();
      await page.keyboard.press('Control+z');
      await page.getByRole('heading', { name: '18 shortfalls of 10 components' }).waitFor();

      await goToScreen(page, '/shortfalls?short=BR%402026-03-11T07%3A00%3A00-04%3A00');
      const decision = page.getByRole('region', { name: 'Decision' });
      const leave = decision.getByRole('button', { name: 'Leave it as it is' });
      await leave.press('Enter');
      await decision.getByText('A shortfall is left as it is only with a reason.').waitFor();
      await decision.getByLabel('Reason').fill('borrowed next door');
      await leave.press('Enter');
      await decision.getByText(': borrowed next door').waitFor();
      const list = page.locator('.data-table');
      await list.getByText('left as it is', { exact: true }).waitFor({ state: 'attached' });
      await decision.getByRole('button', { name: 'Take back' }).press('Enter');
      await decision.getByText(': borrowed next door').waitFor({ state: 'detached' });
    } finally {
      await door.close();
    }
  });
});
