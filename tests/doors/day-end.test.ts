// At both doors: a day is ended by keys alone, what it moved is undone, and the week plan lies across its paper with who
// got it; printed again after a pour moved, it marks that.
import { rmSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { doorTest } from './door-test.ts';
import { doorKinds, newFolder, openDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';
import { pdfOf } from './sheet-pdf.ts';

/** Letter, across: 11 by 8.5 inches in points. */
const acrossLetter = [792, 612];

let folder: string;
beforeAll(() => {
  folder = newFolder();
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe.each(doorKinds)('%s', (kind) => {
  doorTest(
    kind,
    'a day is ended by keys, the week plan is printed, and marks what the day moved',
    async () => {
      const door = await openDoor(kind, { demo: true });
      const { page } = door;
      page.setDefaultTimeout(20_000);
      try {
        await goToScreen(page, '/sheets/week/TB26%402026-03-02');
        // The dialog of the system cannot be clicked, and holds the window of the desktop while it is open.
        await page.evaluate(() => {
          window.print = () => undefined;
        });
        await page.getByLabel('Given to').fill('Foreman, Crane operator');
        await page.getByRole('button', { name: 'Print' }).click();
        await page.getByText('Revision 1 is kept as printed.').waitFor();
        const first = await pdfOf(door, folder);
        expect(first.sizes[0]?.map(Math.round)).toEqual(acrossLetter);
        expect(first.words).toContain('Given to Foreman, Crane operator');
        expect(first.words).toContain('Tue 3 Mar 13:00 Wed 4 Mar 13:00');
        expect(first.words).not.toContain('changed:');

        await goToScreen(page, '/board/day-end?date=2026-03-03');
        await page.keyboard.press('a');
        await page.getByRole('checkbox', { name: /^pour P01/u }).focus();
        await page.keyboard.press('7');
        await page.getByText('P01 is poured: Tue 3 Mar 13:00 to Wed 4 Mar 13:00, was not done').waitFor();
        await page.keyboard.press('Enter');
        await page.getByText(/^ended \w{3} .* by tester$/u).waitFor();
        await page.getByRole('table', { name: 'Misses by week' }).getByText('1 concrete').waitFor();

        await goToScreen(page, '/sheets/week/TB26%402026-03-02');
        const second = await pdfOf(door, folder);
        expect(second.words).toContain('Superseded once revision 3 exists.');
        expect(second.words.match(/changed: was /gu)?.length).toBeGreaterThanOrEqual(2);
        expect(second.words).toContain('changed: was Tue 3 Mar 13:00');

        await page.locator('body').press('Control+z');
        await page.getByText('Undone: the end of Tue 3 Mar').waitFor();
        await goToScreen(page, '/board/day-end?date=2026-03-03');
        await page.getByText('not ended').waitFor();
      } finally {
        await door.close();
      }
    },
  );
});
