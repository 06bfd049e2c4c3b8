// A strip ticket counted by keyboard and scanner alone, in the window and in the browser, and booked by two people.
import { describe, expect } from 'vitest';
import { doorTest } from './door-test.ts';
import { doorKinds, openDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';

describe.each(doorKinds)('at the %s door', (kind) => {
  doorTest(
    kind,
    'a ticket is counted without a mouse, and what was typed outlives another screen',
    async () => {
      const door = await openDoor(kind, { demo: true });
      const { page } = door;
      page.setDefaultTimeout(15_000);
      try {
        await goToScreen(page, '/yard/strip');
        await page.getByRole('button', { name: 'Make ticket of P01' }).press('Enter');
        await page.getByText('Fly on to P04 side A, nr 1').waitFor();
        // As a scanner types it: the code and then Enter.
        await page.getByLabel('Go to').pressSequentially('RG:K::LK');
        await page.keyboard.press('Enter');
        await page.keyboard.type('20');
        await page.keyboard.press('Enter');
        await page.keyboard.type('=');
        const address = page.url().split('#')[1] ?? '';
        await goToScreen(page, '/board');
        await goToScreen(page, address);
        const locks = page.getByLabel('LK of P01/A1, ready', { exact: true });
        expect(await locks.inputValue()).toBe('20');
        await locks.press('Control+Enter');
        await page.getByText('Entered: 2 lines.').waitFor();
        await page.getByText('6 missing', { exact: true }).waitFor();
        await locks.fill('7');
        await locks.press('Control+Enter');
        await page.getByText('27 of LK would be counted for P01/A1 on S-1; 26 are expected back').waitFor();
        expect(await locks.inputValue()).toBe('7');
        await locks.fill('=');
        await locks.press('Control+Enter');
        await page.getByText('26 +', { exact: true }).waitFor();
      } finally {
        await door.close();
      }
    },
  );
});

doorTest('local', 'two windows on one ticket: the second to book hears who did', async () => {
  const door = await openDoor('local', { demo: true });
  const { page } = door;
  page.setDefaultTimeout(15_000);
  try {
    await goToScreen(page, '/yard/strip');
    await page.getByRole('button', { name: 'Make ticket of P01' }).click();
    await page.getByRole('button', { name: 'They came back as expected' }).click();
    await page.getByRole('heading', { name: 'Missing, against whom' }).waitFor();
    const other = await page.context().newPage();
    other.setDefaultTimeout(15_000);
    await other.goto(page.url());
    await other.getByRole('button', { name: 'They came back as expected' }).click();
    await other.getByRole('heading', { name: 'Missing, against whom' }).waitFor();
    await Promise.all([
      page.getByRole('button', { name: 'Book S-1' }).click(),
      other.getByRole('button', { name: 'Book S-1' }).click(),
    ]);
    for (const each of [page, other]) await each.getByRole('heading', { name: 'Booked' }).waitFor();
    await goToScreen(page, '/yard?show=movements');
    const rows = page.getByRole('row').filter({ hasText: 'S-1' });
    await rows.first().waitFor();
    // Four loose components of P01 come back to be cleaned, each of them moved once.
    expect(await rows.count()).toBe(4);
  } finally {
    await door.close();
  }
});
