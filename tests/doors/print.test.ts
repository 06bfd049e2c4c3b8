// Every screen on paper: black on white though the window is dark, without what is only pressed, with the job,
// the date, the name and the cautions, and nothing of it past the paper's edge.
import { describe, expect } from 'vitest';
import { doorTest } from './door-test.ts';
import { openDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';
import { screenRoutes } from './screen-routes.ts';

const paperPx = 1200;
/** "Wed 11 Mar 2026 07:00", on sheets with the name behind it. */
const printedAt = /^\w{3} \d+ \w{3} \d{4} \d\d:\d\d(?: by tester)?$/u;
const deciding = ['board', 'what-if', 'day-end', 'shortfalls', 'design', 'design-on-side', 'pours', 'pour'];

describe('printing', () => {
  doorTest(
    'local',
    `each of ${screenRoutes.length} screens prints dark on white, whole, with its job`,
    async () => {
      const door = await openDoor('local', {
        demo: true,
        context: { colorScheme: 'dark', viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce' },
      });
      const { page } = door;
      try {
        for (const { name, address } of screenRoutes) {
          await page.emulateMedia({ media: null });
          await goToScreen(page, address);
          expect(await page.evaluate(() => document.documentElement.dataset['theme'])).toBe('dark');
          await page.emulateMedia({ media: 'print' });
          // Sheets have a head and cautions of their own.
          const isSheet = address.startsWith('/sheets/');
          const head = page.locator(isSheet ? '.sh-sheet-head' : '.title-block');
          await head.getByText(printedAt).waitFor();
          const seen = await page.evaluate(() => ({
            ground: getComputedStyle(document.body).backgroundColor,
            ink: getComputedStyle(document.body).color,
            nav: document.querySelector('nav')?.checkVisibility(),
            widest: Math.max(
              ...[...document.querySelectorAll('#root *')]
                .filter((one) => one.checkVisibility() && one.closest('.visually-hidden, svg *') === null)
                .map((one) => one.getBoundingClientRect().right),
            ),
          }));
          expect(seen, name).toMatchObject({
            ground: 'rgb(255, 255, 255)',
            ink: 'rgb(0, 0, 0)',
            nav: false,
          });
          expect(seen.widest, name).toBeLessThanOrEqual(paperPx + 1);
          expect(await page.getByRole('button', { name: 'Find or do' }).isVisible()).toBe(false);
          const block = await head.innerText();
          if (isSheet) {
            expect(block, name).toMatch(/Job\s+\S+[^]*Printed\s+\w{3}[^]* by tester/u);
            expect(await page.locator('.title-block').isVisible()).toBe(false);
            expect(await page.locator('.sh-caution').count(), name).toBeGreaterThan(5);
          } else expect(block, name).toMatch(/Signed in as\s+tester[^]*Printed\s+\w{3}/u);
          if (name !== 'book' && !isSheet)
            expect(block, name).toMatch(/Job\s+\S+[^]*Planned from\s+\w{3} \d+ \w{3}/u);
          if (deciding.includes(name))
            expect(await page.locator('.caution-line').isVisible(), name).toBe(true);
          expect(pagesOf(await page.pdf({ preferCSSPageSize: true })), name).toBeGreaterThan(0);
        }
        // Without looking at it first: the browser says only when it begins and when it has ended.
        await page.emulateMedia({ media: null });
        await goToScreen(page, '/board?weeks=all');
        expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBeGreaterThan(2);
        await page.locator('.board-band').waitFor({ state: 'detached' });
        expect(await page.locator('nav').first().isVisible()).toBe(true);
        expect(await page.locator('.title-block').innerText()).not.toContain('Printed');
      } finally {
        await door.close();
      }
    },
  );
});

/** Counted in the file itself: every page of a PDF is an object of the type Page. */
function pagesOf(pdf: Buffer): number {
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/gu)?.length ?? 0;
}
