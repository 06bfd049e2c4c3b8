// Gangs on screen at both doors: built, stood, stripped, re-ganged and broken down by its forms; lifting gear and a
// container; every pane held against the rules of accessibility; and tags whose codes are read back from their PDF.
import { rmSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { broken } from './broken-rules.ts';
import { type CoreCall, coreOf } from './call-core.ts';
import { doorTest } from './door-test.ts';
import { doorKinds, newFolder, openDoor, type OpenDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';
import { readQrOfPdf } from './read-qr.ts';
import { pdfOf } from './sheet-pdf.ts';

async function withDoor(kind: OpenDoor['kind'], work: (door: OpenDoor, call: CoreCall) => Promise<void>) {
  const door = await openDoor(kind, { demo: true });
  try {
    await work(door, await coreOf(door));
  } finally {
    await door.close();
  }
}

const chosen = (page: Page, name: string, option: string) =>
  page.getByRole('combobox', { name, exact: true }).selectOption(option);
/** What is wrong with a field is read with its name. */
const typed = (page: Page, name: string, text: string) =>
  page.getByRole('textbox', { name: new RegExp(`^${name}`, 'u') }).fill(text);
const pressed = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

async function held(call: CoreCall, location: string): Promise<number> {
  const answered = await call<{ rows: { quantity: number }[] }>('yard.quantities', { location });
  if (!answered.ok) throw new Error(answered.error.message);
  return answered.value.rows.reduce((sum, row) => sum + row.quantity, 0);
}

describe.each(doorKinds)('%s', (kind) => {
  doorTest(kind, 'a gang is built, stood, stripped, re-ganged and broken down by its forms', async () => {
    await withDoor(kind, async ({ page }, call) => {
      await goToScreen(page, '/yard/gangs?add=open');
      await chosen(page, 'Design', 'GA');
      await typed(page, 'When', 'yesterday perhaps');
      await pressed(page, 'Build GA-1');
      await page.getByText('cannot be read as a date').waitFor();
      await typed(page, 'When', '2 Mar 07:00');
      await chosen(page, 'For the turn', 'P01/A1');
      await page.getByText('All of it is ready at ENN').waitFor();
      await pressed(page, 'Build GA-1');
      await page.getByRole('heading', { name: 'Gang GA-1' }).waitFor();
      const pieces = await held(call, 'GA-1');
      expect(pieces).toBeGreaterThan(50);

      await pressed(page, 'Stand at a turn');
      await typed(page, 'When', '2 Mar 08:00');
      await pressed(page, 'Book this step');
      // One that stands can only be stripped.
      await page.getByRole('button', { name: 'Break down' }).waitFor({ state: 'detached' });
      await pressed(page, 'Strip');
      await typed(page, 'When', '1 Mar 08:00');
      await pressed(page, 'Book this step');
      await page.getByText('GA-1 is standing since').waitFor();
      await typed(page, 'When', '4 Mar 14:00');
      await pressed(page, 'Book this step');

      await pressed(page, 'Re-gang');
      await chosen(page, 'Into the design', 'GB');
      await page.getByRole('columnheader', { name: 'Taken out' }).waitFor();
      await typed(page, 'When', '5 Mar 09:00');
      await pressed(page, 'Re-gang GA-1');
      await page.getByText('Wall gang 8 x 12 ft', { exact: false }).first().waitFor();
      await page.getByRole('columnheader', { name: 'Taken out' }).waitFor({ state: 'detached' });

      await pressed(page, 'Break down');
      await typed(page, 'When', '6 Mar 09:00');
      await typed(page, 'LK, to repair', '999');
      await pressed(page, 'Break GA-1 down');
      await page.getByText('999 of LK are more than').waitFor();
      await typed(page, 'LK, to repair', '2');
      await pressed(page, 'Break GA-1 down');
      await page.getByText('Nothing is booked to it.').waitFor();
      expect(await held(call, 'GA-1')).toBe(0);
    });
  });
});

doorTest(
  'local',
  'every pane of gangs, gear and containers keeps the rules, and tags are read back',
  async () => {
    const folder = newFolder();
    await withDoor('local', async (door, call) => {
      await fill(call);
      const { page } = door;
      const panes: readonly (readonly [address: string, button: string | null])[] = [
        ['/yard/gangs/GA-1', null],
        ['/yard/gangs/GA-1', 'Stand at a turn'],
        ['/yard/gangs/GA-1', 'Re-gang'],
        ['/yard/gangs/GA-1', 'Break down'],
        ['/yard/gangs?issue=open', null],
        ['/yard/gangs/LH-01?show=gear', null],
        ['/yard/gangs/BKT-1?show=containers', null],
      ];
      for (const [address, button] of panes) {
        await goToScreen(page, address);
        await page.locator('.gang-side').waitFor();
        if (button !== null) await pressed(page, button);
        expect(await broken(page), `${address} ${button ?? ''}`).toEqual([]);
      }
      await page.getByText('part full').first().waitFor();
      await typed(page, 'Weighs, with the container', '231 lb');
      await typed(page, 'Step of the scale', '2 lb');
      await typed(page, 'A piece may be off by', '0.1 lb');
      await pressed(page, 'Count');
      // (231 - 30 - 1) / 5.1 = 39.2 and (231 - 30 + 1) / 4.9 = 41.2.
      await page.getByText('40 pieces, at least 40 and at most 41').waitFor();
      await typed(page, 'Weighs, with the container', '20 lb');
      await pressed(page, 'Count');
      await page.getByText('that cannot be').waitFor();

      await goToScreen(page, '/sheets/tags/all-gangs');
      await page.locator('.sh-tag').nth(1).waitFor();
      const pdf = await pdfOf(door, folder);
      for (const word of ['GA-1', 'GA-2', '1,704 lb', 'Planning aid only']) expect(pdf.words).toContain(word);
      const codes = await readQrOfPdf(await page.pdf({ preferCSSPageSize: true }));
      expect(codes.flat().toSorted()).toEqual(['RG:G:TB26:GA-1', 'RG:G:TB26:GA-2']);
    });
    rmSync(folder, { recursive: true, force: true });
  },
);

/** Two gangs, a hook out of date, a bucket with 40 locks. */
async function fill(call: CoreCall): Promise<void> {
  const at = '2026-03-02T07:00:00-05:00';
  const from = { from: 'ENN', at };
  const ours = { owner: 'OURS', place: 'ENN' };
  const locks = { id: 'door-locks-in', component: 'LK', quantity: 40, owner: 'OURS', to: 'BKT-1' };
  const commands: readonly (readonly [string, object])[] = [
    ['gang.build', { gang: 'GA-1', design: 'GA', job: 'TB26', ...from }],
    ['gang.build', { gang: 'GA-2', design: 'GA', job: 'TB26', ...from }],
    ['gear.save', { serial: 'LH-01', component: 'LH', isNew: true, ...ours }],
    ['container.make', { container: 'BKT-1', component: 'BKT', at, ...ours }],
    ['yard.move', { movements: [{ ...locks, ...from, condition: 'ready', reason: 'transfer' }] }],
  ];
  for (const [index, [name, input]] of commands.entries()) {
    const answered = await call(name, { commandId: `door-gangs-${index}`, ...input });
    if (!answered.ok) throw new Error(`${name}: ${answered.error.message}`);
  }
}
