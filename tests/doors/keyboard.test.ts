// The screens by keyboard alone: Tab goes through each of them and out again, and what closes or is taken
// out never leaves the focus nowhere.
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { doorTest } from './door-test.ts';
import { openDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';
import { screenRoutes } from './screen-routes.ts';

const mostStops = 120;

// In two halves side by side.
describe.concurrent.each([0, 1])('every second screen from number %d on', (half) => {
  const routes = screenRoutes.filter((_, index) => index % 2 === half);
  doorTest('local', `Tab goes through each of ${routes.length} and comes out of it`, async () => {
    await withPage(async (page) => {
      for (const { name, address } of routes) {
        await goToScreen(page, address);
        await toTheTop(page);
        const seen: string[] = [];
        for (let press = 0; press < mostStops; press += 1) {
          await page.keyboard.press('Tab');
          const stop = await focused(page);
          if (stop === 'nothing') break;
          seen.push(stop);
        }
        // The seven screens and actions of the top, the units and theme of the foot, and something between.
        expect(seen.length, name).toBeGreaterThan(10);
        expect(seen.length, `${name} holds the focus: ${seen.slice(-3).join(', ')}`).toBeLessThan(mostStops);
      }
    });
  });
});

doorTest('local', 'the focus goes back to where it came from when what had it is gone', async () => {
  await withPage(async (page) => {
    await goToScreen(page, '/board');
    const head = page.locator('[data-pour=P02]');
    await head.press('Enter');
    await page.getByRole('button', { name: /^Close/ }).press('Enter');
    await expectFocus(page, /^P02 /);
    await head.press('Shift+ArrowRight');
    const change = page.getByRole('complementary', { name: 'What the move changes' });
    await change.getByRole('heading', { name: 'Short' }).waitFor();
    await change.getByRole('button', { name: 'Keep it' }).press('Enter');
    await change.waitFor({ state: 'detached' });
    await expectFocus(page, /^P02 /);

    await goToScreen(page, '/yard');
    await page.getByRole('button', { name: 'Book a movement' }).press('Enter');
    await expectFocus(page, /^Book a movement$/);
    await page.keyboard.press('Escape');
    await expectFocus(page, /^Book a movement$/);

    await goToScreen(page, '/pours/P08');
    await page.getByRole('button', { name: 'Take out SH for brace shoes' }).press('Enter');
    await expectFocus(page, /^Take out BR /);
    const gate = page.getByRole('checkbox').first();
    await gate.press(' ');
    await expect.poll(() => gate.isChecked()).toBe(true);
    await expect.poll(() => gate.evaluate((box) => box === document.activeElement)).toBe(true);

    await page.keyboard.press('Control+k');
    await page.keyboard.type('shortfalls');
    await page.keyboard.press('Enter');
    await page.getByRole('grid', { name: 'Shortfalls' }).waitFor();
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('MAIN');
  });
});

async function withPage(work: (page: Page) => Promise<void>): Promise<void> {
  const door = await openDoor('local', { demo: true, context: { viewport: { width: 1280, height: 800 } } });
  door.page.setDefaultTimeout(15_000);
  try {
    await work(door.page);
  } finally {
    await door.close();
  }
}

async function expectFocus(page: Page, words: RegExp): Promise<void> {
  await expect.poll(() => focused(page)).toMatch(words);
}

/** Tab goes on from the top of the page, wherever a pane that opened has taken the focus to. */
function toTheTop(page: Page): Promise<void> {
  return page.evaluate(() => {
    document.body.tabIndex = -1;
    document.body.focus();
    document.body.removeAttribute('tabindex');
  });
}

/** What has the focus, by its label or words. */
function focused(page: Page): Promise<string> {
  return page.evaluate(() => {
    const element = document.activeElement;
    if (element === null || element === document.body) return 'nothing';
    return element.getAttribute('aria-label') ?? element.textContent;
  });
}
