// A design of 200 panels in a real browser through the local door: the frames while a panel is dragged over it,
// let go and moved by the arrow keys.
import type { Page } from 'playwright-core';
import { doorMissing, openDoor } from '../doors/doors.ts';
import { goToScreen } from '../doors/go-to-screen.ts';
import type { Bench, BenchLine } from './bench-line.ts';
import { framesWhile } from './board-page.ts';

const row = '20x36 | 8+4+4+4+4+4+4+4+4+4';

export const bench: Bench = { name: 'Designing a gang of 200 panels', run: lines };

async function* lines(): AsyncGenerator<BenchLine> {
  const missing = doorMissing('local');
  if (missing !== null) {
    yield { what: `Not looked at in a browser, because ${missing}`, value: '' };
    return;
  }
  const door = await openDoor('local', {
    demo: true,
    context: { viewport: { width: 1920, height: 1080 }, colorScheme: 'light' },
  });
  const { page } = door;
  try {
    await goToScreen(page, '/designs/new');
    const typed = await framesWhile(page, async () => {
      await page.getByLabel('Row', { exact: true }).fill(row);
      await page.getByRole('application', { name: /200 pieces/u }).waitFor();
    });
    yield* frameLines('a row typed', typed);
    yield* frameLines('a panel dragged', await framesWhile(page, () => drag(page)));
    yield* frameLines('and let go', await framesWhile(page, () => letGo(page)));
    yield* frameLines('moved by an arrow key', await framesWhile(page, () => arrows(page)));
  } finally {
    await door.close();
  }
}

function* frameLines(what: string, frames: readonly number[]): Generator<BenchLine> {
  yield {
    what: `${what}: longest of ${frames.length} frames`,
    value: `${Math.max(...frames).toFixed(0)} ms`,
  };
  const slow = frames.filter((one) => one > 50).length;
  yield { what: `${what}: frames over 50 ms`, value: String(slow), aim: '0' };
}

async function drag(page: Page): Promise<void> {
  const box = await page.locator('[data-piece=panel-150] .panel-face').boundingBox();
  if (box === null) throw new Error('No panel is in sight.');
  const [x, y] = [box.x + 8, box.y + 8];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= 60; step += 1) {
    await page.mouse.move(x + 300 * Math.sin((step / 60) * Math.PI), y - 2 * step);
    await page.waitForTimeout(16);
  }
  await page.locator('.dragging').waitFor({ state: 'attached' });
}

/** Until the take-off of the changed gang is drawn. */
async function letGo(page: Page): Promise<void> {
  await page.mouse.up();
  await page.waitForTimeout(100);
  await page.locator('.elevation-frame svg').first().and(page.locator(':not(.behind)')).waitFor();
}

async function arrows(page: Page): Promise<void> {
  await page.getByRole('application').focus();
  for (let press = 0; press < 12; press += 1) {
    await page.keyboard.press('ArrowRight');
    await page.waitForTimeout(50);
  }
}
