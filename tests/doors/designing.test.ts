// Designing a gang in the window: typed as a row, changed by pointer and by keys, taken back, mirrored, saved; and
// nothing is lost by going away.
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { doorTest } from './door-test.ts';
import { openDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';

const drawing = (page: Page, words = ''): Locator =>
  page.getByRole('application', { name: new RegExp(`^Drawing of .*${words}`, 'u') });
const field = (page: Page, name: string): Locator => page.getByLabel(name, { exact: true });
const pieces = (page: Page, component: string, count: number): Promise<void> =>
  page
    .getByRole('region', { name: 'Take-off' })
    .getByRole('row', { name: new RegExp(`^${component}: reasons .* ${count} `, 'u') })
    .waitFor();

async function withPage(work: (page: Page) => Promise<void>): Promise<void> {
  const door = await openDoor('local', { demo: true, context: { viewport: { width: 1440, height: 900 } } });
  door.page.setDefaultTimeout(10_000);
  try {
    await work(door.page);
  } finally {
    await door.close();
  }
}

doorTest('local', 'a gang is typed, changed by pointer and keys, saved and mirrored', async () => {
  await withPage(async (page) => {
    await goToScreen(page, '/designs/new');
    await field(page, 'Row').fill('36 36 24 | 8+4');
    await drawing(page, `8'-0" long, 12'-0" high, 6 pieces`).waitFor();
    await pieces(page, 'P836', 2);

    // A panel of 36 in let go a little beside the end of the row comes to stand exactly at it: 11 ft.
    const place = page.getByRole('button', { name: /^Place P836/u });
    const [from, sheet, end] = await Promise.all([
      place.boundingBox(),
      drawing(page).boundingBox(),
      page.locator('[data-piece=panel-2] .panel-face').boundingBox(),
    ]);
    if (from === null || sheet === null || end === null) throw new Error('Nothing to drag is in sight.');
    const [half, foot] = [(end.width * 36) / 24 / 2, end.y + end.height / 2];
    await page.mouse.move(from.x + 20, from.y + 8);
    await page.mouse.down();
    await page.mouse.move(sheet.x + sheet.width / 2, sheet.y + sheet.height / 2, { steps: 4 });
    await page.mouse.move(end.x + end.width + half + 5, foot + 4, { steps: 4 });
    await page.locator('.guide').first().waitFor({ state: 'attached' });
    await page.mouse.up();
    await drawing(page, `11'-0" long, 12'-0" high, 7 pieces`).waitFor();
    await pieces(page, 'P836', 3);

    await page.locator('body').press('Control+z');
    await drawing(page, `8'-0" long, 12'-0" high, 6 pieces`).waitFor();
    await page.locator('body').press('Control+y');
    await drawing(page, '7 pieces').waitFor();

    // By keys alone: the first piece doubled, turned, moved by an inch, taken out.
    const sheetKeys = drawing(page);
    await sheetKeys.press('Escape');
    await sheetKeys.press('Enter');
    await expect.poll(() => page.getByRole('toolbar', { name: 'Pieces' }).innerText()).toMatch(/P836/u);
    await sheetKeys.press('Control+d');
    await sheetKeys.press('t');
    await page.getByRole('toolbar', { name: 'Pieces' }).getByText('P836 on its side').waitFor();
    await sheetKeys.press('ArrowRight');
    await expect.poll(() => field(page, 'along').inputValue()).toBe(`3'-1"`);
    await page.getByRole('region', { name: 'Findings' }).getByText('stop').first().waitFor();
    await sheetKeys.press('Delete');
    await drawing(page, '7 pieces').waitFor();

    // What is missing is said at its field, and what was typed stays.
    await field(page, 'Code').fill('GZ');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.locator('.field-name [role=alert]').getByText('A design needs a name.').waitFor();
    await field(page, 'Name').fill('Odd gang');
    await field(page, 'Hand').selectOption('left');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByRole('heading', { name: 'GZ Odd gang' }).waitFor();

    await page.getByRole('navigation', { name: 'Design GZ' }).getByRole('link', { name: 'Mirror' }).click();
    await page.getByText('it does not fly on as GZ').waitFor();
    expect(await field(page, 'Code').inputValue()).toBe('GZR');
    expect(await field(page, 'Hand').inputValue()).toBe('right');
    await field(page, 'Hand').selectOption('left');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.locator('.field-hand [role=alert]').getByText('mirror image of GZ').waitFor();
  });
});

doorTest(
  'local',
  'what is not saved is not left without asking, and what was saved is taken back',
  async () => {
    await withPage(async (page) => {
      await goToScreen(page, '/designs/GB/edit');
      await field(page, 'Row').fill('36 24 24 36 | 8+4');
      await drawing(page, `10'-0" long`).waitFor();
      const question = page.getByRole('alertdialog', { name: 'Leave without saving?' });
      await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'Yard' }).click();
      await question.getByRole('button', { name: 'Stay' }).click();
      await drawing(page, `10'-0" long`).waitFor();
      await page.goBack();
      await question.getByRole('button', { name: 'Stay' }).click();
      expect(new URL(page.url()).hash).toBe('#/designs/GB/edit');

      // It stands at pours: another gang under the same revision is refused at that field.
      await page.getByRole('button', { name: 'Save' }).click();
      await page.locator('.field-revision [role=alert]').getByText('Maybe revision B').waitFor();
      await field(page, 'Revision').fill('B');
      await page.getByRole('button', { name: 'Save' }).click();
      await page.getByRole('application', { name: /Elevation of GB .* 10'-0" long/u }).waitFor();
      await page.getByRole('link', { name: '2 saved states' }).click();
      await page
        .getByRole('region', { name: 'Pieces' })
        .getByRole('row', { name: /^P824 .* 1 2 \+1$/u })
        .waitFor();
      await page.getByRole('link', { name: 'Back to GB' }).click();
      await page.getByRole('banner').getByRole('button', { name: 'Undo: GB changed' }).click();
      await page.getByRole('application', { name: /Elevation of GB .* 8'-0" long/u }).waitFor();
    });
  },
);
