// A journey through the yard, as a yard person makes it on the demo job: a delivery that is short, a gang built and
// stood, its pour stripped and counted with losses and damage, a count with a difference that is counted again and
// explained, and what the plan and the rates say of it all. Written once; yard-journey.test.ts takes it through both doors.
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { goToScreen } from './go-to-screen.ts';

const box = (page: Page | Locator, name: string): Locator => page.getByRole('textbox', { name, exact: true });
const choice = (page: Page | Locator, name: string): Locator =>
  page.getByRole('combobox', { name, exact: true });
const press = (page: Page | Locator, name: string | RegExp): Promise<void> =>
  page.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name }).click();

/** The most locks that are short on one day, by the shortfalls on screen; 0 where none is. */
export async function locksShort(page: Page): Promise<number> {
  await goToScreen(page, '/shortfalls');
  const grid = page.getByRole('grid');
  await grid.getByRole('row').nth(1).waitFor();
  const rows = await grid
    .getByRole('row')
    .evaluateAll((all) =>
      all.map((row) =>
        [...row.querySelectorAll('[role=gridcell], td')].map((cell) => cell.textContent.trim()),
      ),
    );
  const figures = rows
    .filter(([, component = '']) => /^LK\b/u.test(component))
    .map(([short]) => Number(short));
  return Math.max(0, ...figures);
}

/** Four brackets on the paper, three on the truck: booked as counted, and the fourth is claimed. */
export async function receivesADelivery(page: Page): Promise<void> {
  await goToScreen(page, '/yard/papers/new?kind=delivery');
  await choice(page, 'Component of line 1').fill('WB');
  await page.keyboard.press('Tab');
  await box(page, 'Sent of line 1').fill('4');
  await box(page, 'Received of line 1').fill('3');
  await box(page, 'Truck came').fill('27 Feb 09:00');
  await box(page, 'Under protest').fill('One bracket is not on the truck');
  await press(page, 'Book it');
  await page.getByRole('heading', { name: 'Papers Delivery D-102' }).waitFor();
  await page
    .getByRole('region', { name: 'Claims' })
    .getByText('4 on the paper, 3 counted here: 1 short')
    .waitFor();
}

/** A wall gang from the yard's pieces, for the first pour. */
export async function buildsAGang(page: Page): Promise<void> {
  await goToScreen(page, '/yard/gangs?add=open');
  await choice(page, 'Design').selectOption('GA');
  await choice(page, 'For the turn').selectOption('P01/A1');
  await box(page, 'When').fill('27 Feb 10:00');
  await press(page, 'Build GA-1');
  await page
    .getByRole('grid', { name: 'Gangs' })
    .getByRole('row', { name: /GA-1/u })
    .getByText('assembled')
    .waitFor();
}

/** It stands at the pour for which it was built. */
export async function standsIt(page: Page): Promise<void> {
  await goToScreen(page, '/yard/gangs/GA-1');
  const pane = page.getByRole('complementary', { name: 'Gang GA-1' });
  await press(pane, 'Stand at a turn');
  await choice(pane, 'At the turn').selectOption('P01/A1');
  await box(pane, 'When').fill('2 Mar 09:00');
  await press(pane, 'Book this step');
  await pane.getByText(/^standing, upright, since Mon 2 Mar 09:00/u).waitFor();
}

/** The ticket of its pour: cleared by name, two locks gone and a panel damaged in the gang, four loose locks gone. */
export async function stripsItsPour(page: Page): Promise<void> {
  await goToScreen(page, '/yard/strip');
  await press(page, 'Make ticket of P01');
  await page.getByRole('heading', { name: 'Strip tickets S-1' }).waitFor();
  await page.getByText('Fly on to P04 side A, nr 1').waitFor();
  await box(page, 'Cleared by').fill('Site engineer');
  await page
    .getByRole('region', { name: 'Clearance' })
    .getByRole('textbox', { name: 'When' })
    .fill('4 Mar 14:30');
  await box(page, 'Under which clause').fill('24 hours by the specification');
  await box(page, 'On what evidence').fill('Cubes 7 and 8');
  await press(page, 'Enter the clearance');
  await page.getByText('Site engineer').first().waitFor();

  await box(page, 'LK of P01/A1, ready').fill('24');
  await box(page, 'P836 of P01/A1, ready').fill('3');
  await box(page, 'P836 of P01/A1, to repair').fill('1');
  // More than were there is refused at the line, and nothing typed is lost.
  await box(page, 'LK of loose, to clean').fill('13');
  await page.keyboard.press('Control+Enter');
  await page
    .getByText(/12 .*13|13 .*12/u)
    .first()
    .waitFor();
  expect(await box(page, 'LK of P01/A1, ready').inputValue()).toBe('24');
  await box(page, 'LK of loose, to clean').fill('8');
  await page.keyboard.press('Control+Enter');
  await page
    .getByText(/tester/u)
    .first()
    .waitFor();

  const booking = page.getByRole('region', { name: 'Booking' });
  await box(booking, 'Stripped at').fill('4 Mar 15:00');
  await press(booking, 'They came back as expected');
  await press(booking, 'Book S-1');
  await page.getByRole('region', { name: 'Booked' }).waitFor();
  await page.getByText('Still missing').waitFor();
}

/** What is known of the locks' losses by turn: how many, and the rate that is used. */
export async function lockRate(page: Page): Promise<readonly [lost: string, rate: string]> {
  await goToScreen(page, '/yard/condition?show=rates');
  const row = page.getByRole('table', { name: /^Loss and damage/u }).getByRole('row', { name: /^LK Lock/u });
  await row.waitFor();
  const cells = await row.getByRole('cell').allInnerTexts();
  return [cells[4] ?? '', cells[6] ?? ''];
}

/** One turn is record enough: the locks' own losses take the place of the default. */
export async function trustsTheRecord(page: Page): Promise<void> {
  await goToScreen(page, '/yard/condition?show=rates');
  const turns = page.getByRole('textbox', { name: /^Own record after/u });
  await turns.fill('1');
  await turns.press('Enter');
}

/** A spot check finds 25 locks fewer, out of tolerance, counted again three; lost, and booked as such. */
export async function countsTheYard(page: Page): Promise<void> {
  await goToScreen(page, '/yard/counts?start=spot');
  await press(page, 'Start');
  await page.getByRole('heading', { name: 'Counts N-1' }).waitFor();
  // 648 of the first day and D-099, less 26 in the gang and 4 lost of the loose ones: 592 ready and 26 dirty.
  await page.getByRole('row', { name: /^LK Lock 618/u }).waitFor();
  await box(page, 'LK at ENN, ready').fill('570');
  await box(page, 'LK at ENN, to clean').fill('23');
  await page.keyboard.press('Control+Enter');
  await page.getByText('1 of 10 counted').waitFor();
  await page.getByText('Differences', { exact: true }).click();
  const found = page.getByRole('grid', { name: 'Differences' }).getByRole('row', { name: /^LK Lock/u });
  await found.getByText('25 short').waitFor();
  // 642 are held, 24 of them in the gang; both bases stand beside the percentage.
  expect(await found.innerText()).toMatch(/3\.9 % of 642 owned[\s\S]*4 % of 618 expected/u);
  await found.click();
  await press(page, 'Count it again');
  await box(page, 'LK at ENN, ready').fill('592');
  await box(page, 'LK at ENN, to clean').fill('23');
  await page.keyboard.press('Control+Enter');
  await page.getByText('Differences', { exact: true }).click();
  await found.getByText('3 short').waitFor();
  await found.click();
  await press(page, 'Another explanation');
  await choice(page, 'Explanation 1').selectOption('lost');
  expect(await box(page, 'Pieces of explanation 1').inputValue()).toBe('3');
  await page.getByText('Everything is explained.').waitFor();
  await page.getByRole('checkbox', { name: /^leave out 9 not counted/u }).check({ force: true });
  await press(page, 'Book the count');
  await page
    .getByText(/^booked/u)
    .first()
    .waitFor();
}
