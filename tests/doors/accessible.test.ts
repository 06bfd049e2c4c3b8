// Every screen, light and dark, held against the rules of WCAG 2.2 A and AA that a program can look at. The
// rules and their reading are those of axe-core; what only people can judge it does not see.
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { broken } from './broken-rules.ts';
import { doorTest } from './door-test.ts';
import { openDoor, type OpenDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';
import { screenRoutes } from './screen-routes.ts';

/** What a screen shows only after something was done on it. */
const opened: readonly { readonly name: string; readonly address: string; readonly open: Opening }[] = [
  { name: 'a pour chosen', address: '/board?pour=P08', open: async () => undefined },
  { name: 'the board by gang', address: '/board?rows=run&weeks=all', open: async () => undefined },
  { name: 'the board on the wall', address: '/board?wall=1', open: async () => undefined },
  { name: 'a move proposed', address: '/board', open: proposeMove },
  { name: 'the ways of a gang', address: '/board?pour=P09&gang=P09/B2', open: askWhy },
  { name: 'a better plan found', address: '/board?pane=better', open: lookForBetter },
  {
    name: 'the ways out of a shortfall',
    address: '/shortfalls?short=LK%402026-03-13T07%3A00%3A00-04%3A00',
    open: findWays,
  },
  { name: 'the palette', address: '/board', open: (page) => page.locator('body').press('Control+k') },
  { name: 'a design', address: '/designs/GC', open: async () => undefined },
  { name: 'a movement booked', address: '/yard', open: openBooking },
  { name: 'a booking refused', address: '/yard', open: refuseBooking },
  { name: 'the movements', address: '/yard?show=movements', open: async () => undefined },
  { name: 'a wall filled', address: '/fill', open: fillAWall },
  { name: 'a band refused', address: '/rules/OMB?table=locks', open: refuseBand },
  { name: 'a crane and its chart', address: '/designs/GA/pick', open: openCrane },
  { name: 'a count being entered', address: '/yard/counts?start=spot', open: startCount },
  { name: 'a difference of a count', address: '/yard/counts?start=spot', open: findDifference },
  { name: 'a strip ticket being counted', address: '/yard/strip', open: countATicket },
  { name: 'a strip ticket booked', address: '/yard/strip', open: bookATicket },
  { name: 'a pour in full', address: '/pours/P08', open: async () => undefined },
  { name: 'three dates for a pour', address: '/pours/P26', open: askDates },
];
type Opening = (page: Page) => Promise<void>;

async function askDates(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Three dates for P26' }).click();
  await page
    .getByRole('button', { name: 'Take this date' })
    .or(page.getByText('The date it has now.'))
    .first()
    .waitFor();
}

async function findWays(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Apply: Hire/u }).waitFor();
}

async function proposeMove(page: Page): Promise<void> {
  await page.locator('body').press('/');
  await page.keyboard.type('P08 +2d');
  await page.keyboard.press('Enter');
  await page.locator('.difference').waitFor();
}

async function askWhy(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Why this?' }).click();
  await page.getByRole('table', { name: 'Other ways to go' }).waitFor();
}

async function lookForBetter(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Look', exact: true }).click();
  await page.getByText('Best so far').waitFor();
}

async function fillAWall(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Propose gangs' }).click();
  await page.getByRole('img', { name: /^Both faces/u }).waitFor();
}

async function refuseBand(page: Page): Promise<void> {
  const bands = page.getByRole('grid', { name: 'Locks by length of the joint' });
  await bands.getByRole('row').nth(2).getByRole('gridcell').nth(1).click();
  await page.keyboard.type('99');
  await page.keyboard.press('Enter');
}

async function openCrane(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Its chart …' }).click();
  await page.getByRole('dialog').waitFor();
}

async function startCount(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Start', exact: true }).click();
  await page.getByLabel('LK at ENN, ready', { exact: true }).fill('12 bdl');
  await page.getByText('How many LK are in a bundle is not known.').waitFor();
}

async function findDifference(page: Page): Promise<void> {
  await startCount(page);
  await page.getByLabel('LK at ENN, ready', { exact: true }).fill('600');
  await page.getByRole('button', { name: /^Enter 1 line/u }).click();
  await page.getByText('Entered: 1 line.').waitFor();
  await page.getByRole('radio', { name: 'Differences' }).click();
  await page.getByRole('row', { name: /LK/u }).click();
  await page.getByRole('complementary', { name: /^LK at ENN: /u }).waitFor();
}

async function countATicket(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Make ticket of P01' }).click();
  await page.getByText('Nobody counted all').waitFor();
  await page.getByText('More than expected, or not on the list').click();
  await page.getByLabel('Go to').fill('RG:S:OTHER:S-4');
  await page.keyboard.press('Enter');
  await page.getByText('here is job TB26').waitFor();
  await page.getByLabel('P836 of P01/A1, ready', { exact: true }).fill('x');
}

async function bookATicket(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Make ticket of P02' }).click();
  await page.getByLabel('P836 of P02/A1, ready', { exact: true }).fill('3');
  await page.keyboard.press('Control+Enter');
  await page.getByText('Entered: 1 line.').waitFor();
  await page.getByRole('button', { name: 'They came back as expected' }).click();
  await page.getByRole('heading', { name: 'Missing, against whom' }).waitFor();
  await page.getByRole('button', { name: /^Book S-/u }).click();
  await page.getByRole('heading', { name: 'Still missing' }).waitFor();
}

async function openBooking(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Book a movement' }).click();
  await page.getByRole('complementary', { name: 'Book a movement' }).waitFor();
}

async function refuseBooking(page: Page): Promise<void> {
  await openBooking(page);
  const slip = page.getByRole('complementary', { name: 'Book a movement' });
  await slip.getByLabel('How many of line 1').fill('-4');
  await slip.getByRole('button', { name: 'Book', exact: true }).click();
}

// Light and dark side by side: each has a browser of its own, and the two are most of the time a test run takes.
describe.concurrent.each(['light', 'dark'] as const)('in %s', (colorScheme) => {
  doorTest('local', `nothing on any of ${screenRoutes.length} screens breaks a rule`, async () => {
    const door = await openDoor('local', { demo: true, context: contextOf(colorScheme) });
    await lookAt(
      door,
      screenRoutes.map((route) => ({ ...route, open: async () => undefined })),
    );
  });

  doorTest('local', 'nor does what is opened on them', async () => {
    const door = await openDoor('local', { demo: true, context: contextOf(colorScheme) });
    await lookAt(door, opened);
  });

  doorTest('local', 'nor the first start, before there is a book', async () => {
    const door = await openDoor('local', { context: contextOf(colorScheme) });
    await lookAt(door, [{ name: 'first start', address: '/', open: async () => undefined }]);
  });
});

function contextOf(colorScheme: 'light' | 'dark') {
  return { colorScheme, viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce' } as const;
}

async function lookAt(
  door: OpenDoor,
  places: readonly { readonly name: string; readonly address: string; readonly open: Opening }[],
): Promise<void> {
  const { page } = door;
  page.setDefaultTimeout(15_000);
  try {
    const found: string[] = [];
    for (const { name, address, open } of places) {
      await goToScreen(page, address);
      await open(page);
      found.push(...(await broken(page)).map((line) => `${name}: ${line}`));
      await page.keyboard.press('Escape');
    }
    expect(found).toEqual([]);
  } finally {
    await door.close();
  }
}
