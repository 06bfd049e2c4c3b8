// The papers of the yard at both doors, as a yard manager uses them: a delivery counted short is booked with its claim
// and a photo, a late note gets its new day, a return is held against the depot's count, a note is taken back.
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { broken } from './broken-rules.ts';
import { doorTest } from './door-test.ts';
import { doorKinds, newFolder, openDoor, type OpenDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';

/** The smallest PNG: one grey dot, made by hand from the published format (ISO/IEC 15948). */
const dot = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==';

describe.each(doorKinds)('%s', (kind) => {
  doorTest(kind, 'papers: deliver short, photograph, set a new day, return, reverse', async () => {
    const door = await openDoor(kind, { demo: true });
    const seen: string[] = [];
    try {
      await deliver(door, seen);
      await newDay(door.page, seen);
      await giveBack(door.page, seen);
      await figures(door.page, seen);
      await takeBack(door.page, seen);
    } finally {
      await door.close();
    }
    expect(seen).toEqual([]);
  });
});

async function says(place: Locator, text: string | RegExp): Promise<void> {
  await place.filter({ hasText: text }).first().waitFor();
}

async function looksRight(page: Page, what: string, seen: string[]): Promise<void> {
  seen.push(...(await broken(page)).map((line) => `${what}: ${line}`));
}

const booking = (page: Page): Locator => page.getByRole('region', { name: 'Booking' });

/** By the keys alone, but for the choice of a file. */
async function deliver({ page }: OpenDoor, seen: string[]): Promise<void> {
  await goToScreen(page, '/yard/papers');
  await says(page.getByRole('row', { name: /D-101/u }), 'due in');
  await page.getByRole('button', { name: 'New note …' }).press('Enter');
  await page.getByRole('menuitem', { name: /^Delivery/u }).press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Papers New note' }).waitFor();
  await page.getByLabel('Component of line 1').fill('lk');
  await page.keyboard.press('Escape');
  await page.getByLabel('Sent of line 1').fill('40');
  await page.getByLabel('Received of line 1').fill('~36');
  await booking(page).getByRole('button', { name: 'Book it' }).click();
  await says(page.getByRole('alert'), '"~36" is a guess');
  await looksRight(page, 'refused', seen);
  await page.getByLabel('Received of line 1').fill('20 + 16');
  await page.getByLabel('Received of line 1').press('Enter');
  // A line of its own began, and typing goes on in it.
  await page.keyboard.type('WB');
  await page.keyboard.press('Escape');
  await page.getByLabel('Sent of line 2').fill('2');
  await page.getByLabel('Received of line 2').fill('=');
  await says(booking(page), 'Books 38 pieces on 2 lines, TFH to ENN, as of now');
  await says(booking(page), '40 on the paper, 36 counted here: 4 short');
  await page.keyboard.press('Control+s');
  await page.getByRole('heading', { level: 1, name: 'Papers Delivery D-102' }).waitFor();
  const photo = path.join(newFolder(), 'bent rail.png');
  writeFileSync(photo, Buffer.from(dot, 'base64'));
  await page.getByLabel('Files of photos or scans').setInputFiles(photo);
  await page.getByRole('button', { name: 'bent rail.png, damage at delivery: larger' }).press('Enter');
  const picture = page.locator('.thumb.large img');
  await picture.waitFor();
  expect(await picture.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBe(1);
  await booking(page).getByRole('button', { name: 'Book it' }).click();
  await says(page.getByRole('region', { name: 'Claims' }), '4 short');
  await says(page.getByRole('table', { name: 'Movements of D-102' }), /LK.*TFH → ENN.*WB.*TFH → ENN/);
  await looksRight(page, 'booked', seen);
}

/** The booking was later than the day that D-101 was promised for. */
async function newDay(page: Page, seen: string[]): Promise<void> {
  await goToScreen(page, '/yard/papers');
  const late = page.getByRole('region', { name: 'Late' });
  await says(late, '1 late: it counts in no plan without a new day');
  await looksRight(page, 'late', seen);
  await late.getByLabel('New day of D-101').fill('3/4');
  await page.keyboard.press('Enter');
  await says(late.getByRole('alert'), 'can be read as day and month or month and day');
  await late.getByLabel('New day of D-101').fill('2099-03-16 07:00');
  await page.keyboard.press('Enter');
  await says(page.getByRole('row', { name: /D-101/u }), /due in.*Mon 16 Mar 07:00/);
  await late.waitFor({ state: 'detached' });
}

async function giveBack(page: Page, seen: string[]): Promise<void> {
  await goToScreen(page, '/yard/papers/new?kind=return');
  await page.getByRole('button', { name: 'Paste lines' }).click();
  await page.getByLabel(/^Rows copied from a spreadsheet/u).fill('item\tqty\tloaded\nWB\t13\t13\nWW\t1\t1');
  const paste = page.getByRole('region', { name: 'Lines from a spreadsheet' });
  await says(paste, '1 line read, 1 row not; left out: row 1 (headings).');
  await looksRight(page, 'pasted', seen);
  await paste.getByRole('button', { name: 'Add 1 line' }).click();
  await paste.getByRole('button', { name: 'Close' }).click();
  // Twelve by the opening figure and two by D-102 are there; thirteen of them go.
  await booking(page).getByRole('button', { name: 'Book it' }).click();
  const told = page.getByRole('form', { name: 'What the depot counted' });
  await told.getByLabel('Depot counted of WB, line 1').fill('12');
  await looksRight(page, 'return', seen);
  await told.getByRole('button', { name: 'Enter it once' }).click();
  await says(
    page.getByRole('region', { name: 'Claims' }),
    '13 counted at loading, 12 at the depot: 1 fewer there',
  );
  await goToScreen(page, '/yard/papers?show=owed');
  await says(
    page.getByRole('table', { name: 'Owed to suppliers' }).getByRole('row', { name: /WB/u }),
    /14 *13 *1/,
  );
  await says(page.getByRole('grid', { name: 'Open claims' }), '1 fewer there');
}

async function figures(page: Page, seen: string[]): Promise<void> {
  await goToScreen(page, '/yard/papers?show=figures&form=figure');
  const form = page.getByRole('form', { name: 'Add a signed figure' });
  await form.getByRole('button', { name: 'Add it' }).click();
  await says(form, 'Who signed it is missing.');
  await form.getByLabel('Pieces of').selectOption('TFH');
  await form.getByLabel('Component').fill('LK');
  await page.keyboard.press('Tab');
  await form.getByLabel('Pieces with us').fill('214');
  await form.getByLabel('Of the day').fill('1 Mar');
  await form.getByLabel('Signed by').fill('The depot');
  await looksRight(page, 'figure', seen);
  await form.getByRole('button', { name: 'Add it' }).click();
  await says(page.getByRole('grid', { name: 'Figures side by side' }), '214 on 1 Mar');
  // 174 by the opening figure and 36 by D-099 on the day that the figure speaks of; 36 more since.
  await says(page.getByRole('table', { name: 'Every figure' }), '210');
  await says(page.getByRole('grid', { name: 'Figures side by side' }), '246');
}

async function takeBack(page: Page, seen: string[]): Promise<void> {
  await goToScreen(page, '/yard/papers');
  await page.getByRole('row', { name: /D-102/u }).click();
  const because = page.getByLabel('Reverse the whole note, because');
  await because.fill('Of another job');
  await because.press('Enter');
  // Two brackets came with it and thirteen of fourteen went back: it is refused as a whole.
  await says(page.getByRole('alert'), /WB/u);
  await looksRight(page, 'not reversed', seen);
  await goToScreen(page, '/yard/papers');
  await page.getByRole('row', { name: /R-208/u }).click();
  await page.getByLabel('Reverse the whole note, because').fill('Never left');
  await page.getByLabel('Reverse the whole note, because').press('Enter');
  await says(page.getByRole('banner').or(page.locator('.screen-head')), 'reversed');
  await goToScreen(page, '/yard/papers?show=owed');
  await says(
    page.getByRole('table', { name: 'Owed to suppliers' }).getByRole('row', { name: /WB/u }),
    /14 *14/,
  );
}
