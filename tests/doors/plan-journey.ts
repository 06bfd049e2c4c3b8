// A journey over the planner, as a coordinator makes it on the demo job: at ten past six a pour is a day off, something
// is short, two plans are weighed against each other, a better one is looked for, and the day is ended. Written once;
// plan-journey.test.ts takes it through both doors.
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { goToScreen } from './go-to-screen.ts';

/** The core answers one question after another: a command may wait behind a long one. */
const patient = { timeout: 30_000 };

const pane = (page: Page, name: string | RegExp): Locator => page.getByRole('complementary', { name });
const banner = (page: Page): Locator => page.getByRole('banner');

/** What the plan costs, as the board's head says it, in cents. */
export async function planCost(page: Page): Promise<number> {
  const words = await page.locator('.cost-line b').innerText();
  const [, dollars, cents] = /\$([\d,]+)\.(\d\d)/u.exec(words) ?? [];
  if (dollars === undefined || cents === undefined) throw new Error(`"${words}" is no cost.`);
  return Number(dollars.replaceAll(',', '')) * 100 + Number(cents);
}

async function undo(page: Page): Promise<void> {
  await banner(page).getByRole('button', { name: 'Undo' }).click();
  await banner(page)
    .getByText(/^Undone: /u)
    .waitFor();
}

/** Types that a pour is a day off, reads what that changes in the whole plan, and keeps it only as a what-if. */
export async function typesADayLater(page: Page): Promise<void> {
  await goToScreen(page, '/board');
  const before = await planCost(page);
  await page.locator('body').press('/');
  await page.keyboard.type('14 +1d');
  await page.keyboard.press('Enter');
  const change = pane(page, 'What the move changes');
  await change.getByRole('heading', { name: 'Move P14 by 1 working day?' }).waitFor();
  const pour = change.getByRole('table', { name: /^P14 / });
  await pour.getByRole('row', { name: /^Pour ends / }).waitFor();
  await pour.getByRole('row', { name: /^Pieces free / }).waitFor();
  for (const part of ['Short', 'Cost', 'Call'])
    await change.getByRole('heading', { name: new RegExp(`^${part}`, 'u') }).waitFor();
  await change.getByRole('button', { name: 'Keep as a what-if' }).click();
  await change.getByLabel('Name of the what-if').fill('P14 a day later');
  await page.keyboard.press('Enter');
  await change.getByText('Kept.').waitFor();
  await change.getByRole('button', { name: 'Leave as it was' }).click();
  await expect.poll(() => change.count(), patient).toBe(0);
  expect(await planCost(page)).toBe(before);
}

/** Holds the kept what-if against the plan as it stands, and against other changes that are being tried. */
export async function comparesTwoPlans(page: Page): Promise<void> {
  await goToScreen(page, '/board/what-if');
  const kept = page.getByRole('region', { name: 'Kept what-ifs' });
  await kept.getByRole('button', { name: 'Look at P14 a day later beside the plan' }).click();
  const table = page.getByRole('table', { name: 'Two plans' });
  await table.getByRole('columnheader', { name: 'As it stands' }).waitFor();
  await table.getByRole('columnheader', { name: 'P14 a day later' }).waitFor();
  await page.getByLabel('Change', { exact: true }).fill('P14 +2d');
  await page.keyboard.press('Enter');
  await page.getByLabel('Left').selectOption('P14 a day later');
  await table.getByRole('columnheader', { name: 'P14 a day later' }).waitFor();
  await table.getByRole('columnheader', { name: 'With the changes to try' }).waitFor();
  // The one moves it by a day, the other by two.
  const rows = table.getByRole('row');
  expect(await rows.count()).toBeGreaterThan(4);
  await table.getByRole('button', { name: 'Accept P14 a day later' }).waitFor();
  await page.getByRole('button', { name: 'Clear' }).click();
}

/** Opens a shortfall, carries out the second of its ways out, sees it gone, takes it back. */
export async function takesTheSecondWayOut(page: Page): Promise<void> {
  await goToScreen(page, '/board');
  const before = await planCost(page);
  await page.getByRole('link', { name: /^All \d+ shortfalls$/u }).click();
  // Four rails on Friday 13 March.
  const list = page.getByRole('grid', { name: 'Shortfalls' });
  const short = list.getByRole('row', { name: /R8 Stiffening rail 8 ft/u });
  const many = await short.count();
  await short.first().click();
  const shortfall = pane(page, 'Shortfall of R8');
  const ways = shortfall.getByRole('region', { name: 'Ways out' }).getByRole('listitem');
  const second = ways.filter({ has: page.getByRole('button', { name: /^Apply: /u }) }).nth(1);
  await second.getByRole('button', { name: /^Apply: /u }).click();
  await expect.poll(() => short.count(), patient).toBe(many - 1);
  await undo(page);
  await expect.poll(() => short.count(), patient).toBe(many);
  await goToScreen(page, '/board');
  expect(await planCost(page)).toBe(before);
}

/** Looks for a better plan for as long as it likes, stops it, keeps its best, and takes that back. */
export async function looksForABetterPlan(page: Page): Promise<void> {
  await goToScreen(page, '/board');
  const before = await planCost(page);
  await page.getByRole('button', { name: 'Look for a better plan' }).click();
  const better = pane(page, 'A better plan');
  await better.getByRole('radio', { name: '10 min' }).click();
  await better.getByRole('button', { name: 'Look', exact: true }).click();
  await better.getByText(/^Looking: \d+ s of at most 600 s$|^Done after/u).waitFor();
  const found = better.getByRole('region', { name: 'What was found' });
  await found.getByText('Still to be saved').waitFor();
  // It says at every moment how much could still be saved, or that nothing could.
  await found
    .getByText(/at most \$[\d,.]+, \d+\.\d+ %|no plan costs less/u)
    .first()
    .waitFor();
  await better.getByRole('button', { name: /^(Stop and keep|Keep) its best$/u }).click();
  await better.getByText('Its best is the plan of the board now').waitFor();
  await better.getByText(/^(Stopped|Done) after \d+ s/u).waitFor();
  expect(await planCost(page)).toBeLessThanOrEqual(before);
  await undo(page);
  await expect.poll(() => planCost(page), patient).toBe(before);
  await page.keyboard.press('Escape');
  await expect.poll(() => better.count(), patient).toBe(0);
}

/** Asks of a re-ganged gang why, fixes what it could do otherwise, reads what that costs, and releases it. */
export async function asksWhy(page: Page): Promise<void> {
  await goToScreen(page, '/board?pour=P09&gang=P09/B2');
  const before = await planCost(page);
  const gang = pane(page, 'Gang P09/B2');
  await gang.getByText('re-ganged from GB of P05').waitFor();
  await gang.getByRole('button', { name: 'Why this?' }).click();
  const ways = gang.getByRole('table', { name: 'Other ways to come' });
  const anew = ways.getByRole('row', { name: /^assemble it anew/u });
  const cost = /\+\$([\d.]+)/u.exec(await anew.innerText())?.[1];
  await ways
    .getByRole('row', { name: /too late|too little time/u })
    .first()
    .waitFor();
  await anew.getByRole('button', { name: 'Fix: assemble it anew' }).click();
  await gang.getByText(/^assembled, /u).waitFor();
  await gang.getByText(`it costs the plan +$${cost}`).waitFor();
  expect(await planCost(page)).toBe(before + Math.round(Number(cost) * 100));
  await gang.getByRole('button', { name: 'Release', exact: true }).click();
  await gang.getByText('re-ganged from GB of P05').waitFor();
  await expect.poll(() => planCost(page), patient).toBe(before);
}

/** Ends Tuesday 3 March: all of it happened but one step, which goes on to the next shift with its reason. */
export async function endsTheDay(page: Page): Promise<void> {
  await goToScreen(page, '/board/day-end?date=2026-03-03');
  const list = page.getByRole('table', { name: 'Steps of Tue 3 Mar' });
  await page.locator('body').press('a');
  const ticks = list.getByRole('checkbox');
  const many = await ticks.count();
  expect(many).toBeGreaterThan(2);
  await expect.poll(() => list.getByRole('checkbox', { checked: true }).count(), patient).toBe(many);
  // The last of them did not: one key says why.
  await ticks.last().focus();
  await page.keyboard.press('1');
  await expect.poll(() => list.getByRole('checkbox', { checked: true }).count(), patient).toBe(many - 1);
  await page.getByRole('button', { name: 'End Tue 3 Mar' }).click();
  await page.getByText(/^ended .* by /u).waitFor();
  await page.getByRole('button', { name: 'Correct Tue 3 Mar' }).waitFor();
  const next = page.getByRole('navigation', { name: 'Days' }).getByRole('link', { name: /^Wed 4 Mar/u });
  await next.click();
  await page.getByText('left over from Tue 3 Mar').first().waitFor();
}

/** On a job too large to be proven soon, the search is under way when it is stopped; its best is kept. */
export async function stopsALongSearch(page: Page): Promise<void> {
  await goToScreen(page, '/board?pane=better');
  const better = pane(page, 'A better plan');
  await better.getByRole('radio', { name: '10 min' }).click();
  await better.getByRole('button', { name: 'Look', exact: true }).click();
  await better.getByText(/^Looking: [1-9]\d* s of at most 600 s$/u).waitFor();
  await better.getByRole('button', { name: 'Stop and keep its best' }).click();
  await better.getByText('Its best is the plan of the board now').waitFor();
  await better.getByText(/^Stopped after \d+ s/u).waitFor();
}
