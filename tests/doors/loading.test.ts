// At both doors: a truck is entered, a pick list read, what was given instead kept as a note, its load made, kept, tied
// down, taken back, and printed; each screen on the way held against the rules of WCAG that a program can look at.
import { rmSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { broken } from './broken-rules.ts';
import { doorTest } from './door-test.ts';
import { doorKinds, newFolder, openDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';
import { pdfOf } from './sheet-pdf.ts';

let folder: string;
beforeAll(() => {
  folder = newFolder();
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe.each(doorKinds)('%s', (kind) => {
  doorTest(kind, 'from the racks onto a truck', async () => {
    const door = await openDoor(kind, { demo: true });
    const { page } = door;
    page.setDefaultTimeout(20_000);
    try {
      await goToScreen(page, '/yard/loading?show=trucks&add=open');
      const side = page.locator('aside');
      await side.getByRole('button', { name: 'Keep the truck' }).click();
      await side.getByText('The code is missing.').waitFor();
      expect(await broken(page)).toEqual([]);
      for (const [label, text] of [
        ['Code', 'T1'],
        ['Name', 'Flatbed'],
        ['Payload', '14,000'],
        ['Deck length', '24'],
        ['Deck width', '8'],
        ['Highest stack above the deck', '6 ft'],
      ] as const)
        await side.getByLabel(label).fill(text);
      await side.getByRole('button', { name: 'Keep the truck' }).click();
      await page.getByRole('row', { name: /^T1 Flatbed 14,000 lb/u }).waitFor();
      await side.getByRole('heading', { name: 'Truck T1' }).waitFor();

      await goToScreen(page, '/yard/loading');
      await page.getByText('What is to be fetched?').waitFor();
      expect(await broken(page)).toEqual([]);
      await page.locator('.pick-for').getByLabel('Design').selectOption('GB');
      await page.getByRole('row', { name: /R8 Stiffening rail 8 ft OURS ready/u }).waitFor();
      await page.getByRole('button', { name: 'Enter what was given' }).click();
      await side.getByLabel('Number of the issue note').fill('I-1');
      await side.getByRole('combobox', { name: /^To/u }).selectOption('TB');
      await side.getByLabel('Given of R8 of OURS').fill('1');
      await side.getByLabel('Given in place of R8 of OURS').fill('R10');
      await page.keyboard.press('Tab');
      await side.getByRole('button', { name: 'Keep as the draft of a note' }).click();
      await side.getByText('In place of R8: how many, and of what?').waitFor();
      await side.getByLabel('How many in place of R8 of OURS').fill('3');
      expect(await broken(page)).toEqual([]);
      await side.getByRole('button', { name: 'Keep as the draft of a note' }).click();
      await side.getByText('a rail of another length. Ask the designer before it is built in.').waitFor();
      expect(await broken(page)).toEqual([]);

      await goToScreen(page, '/yard/loading?show=make');
      await page.getByLabel('By a note').selectOption({ label: 'issue I-1, to TB' });
      await page.getByText('Fewer are not possible with these trucks and sizes.').waitFor();
      expect(await broken(page)).toEqual([]);
      await page.getByRole('button', { name: 'Keep load 1' }).click();
      await page.getByRole('link', { name: 'Kept: leaving and loading list' }).click();
      await page.getByRole('heading', { name: 'T1 Flatbed, note I-1' }).waitFor();
      await page.getByLabel('Leaves').fill('no time at all');
      await page.getByLabel('Tied down by').fill('A. Driver');
      await page.getByRole('button', { name: 'Keep', exact: true }).click();
      await page.locator('.field-error').first().waitFor();
      expect(await page.getByLabel('Tied down by').inputValue()).toBe('A. Driver');
      await page.getByLabel('Leaves').fill('10 Mar 06:30');
      await page.getByRole('button', { name: 'Keep', exact: true }).click();
      await page.getByText('Kept: the load on T1').waitFor();
      expect(await broken(page)).toEqual([]);
      await page.getByRole('button', { name: /^Undo/u }).click();
      await page.waitForFunction(() => document.querySelector('aside input')?.getAttribute('value') === '');
      await page.getByRole('button', { name: /^Redo/u }).click();
      await page.waitForFunction(() => document.querySelector('aside input')?.getAttribute('value') !== '');

      await page.getByRole('link', { name: 'Print the loading list' }).click();
      await page.locator('.sh-load-order').waitFor();
      const pdf = await pdfOf(door, folder);
      expect(pdf.words).toContain('Tied down by A. Driver');
      expect(pdf.words).toMatch(/3 R10 Stiffening rail 10 ft 150 lb 1/u);
      expect(pdf.words).toContain('Nobody stands between the load and a crane');

      await goToScreen(page, '/yard/loading?show=loads');
      await page.getByRole('row', { name: /^T1 Flatbed I-1 .* A\. Driver$/u }).click();
      await page.getByRole('heading', { name: 'T1 Flatbed, note I-1' }).waitFor();
    } finally {
      await door.close();
    }
  });
});
