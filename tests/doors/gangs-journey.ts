// A journey over gangs on paper, as a coordinator and a yard person make it on the demo job. Written once;
// gangs-journey.test.ts takes it through both doors.
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { OpenDoor } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';
import { quantityIn } from './read-pdf.ts';
import { pdfOf } from './sheet-pdf.ts';

const field = (page: Page, name: string): Locator => page.getByLabel(name, { exact: true });
const drawing = (page: Page, words: string): Locator =>
  page.getByRole('application', { name: new RegExp(`^Drawing of .*${words}`, 'u') });

/** How many of a component the take-off on screen has. */
async function pieces(page: Page, component: string): Promise<number> {
  const row = page
    .getByRole('region', { name: 'Take-off' })
    .getByRole('row', { name: new RegExp(`^${component}: reasons `, 'u') });
  const words = await row.getByRole('cell').allInnerTexts();
  return Number(words.find((text) => /^\d+$/u.test(text.trim())));
}

/** Types a gang, breaks a rule with it and mends that, and keeps it. */
export async function typesAGang(page: Page): Promise<void> {
  await goToScreen(page, '/designs/new');
  await field(page, 'Row').fill('36 30 24 24 | 8+4');
  await drawing(page, `9'-6" long, 12'-0" high, 8 pieces`).waitFor();
  const findings = page.getByRole('region', { name: 'Findings' });
  expect(await findings.getByText('stop', { exact: true }).count()).toBe(0);

  // A panel doubled and turned on its side lies over its neighbours: a stop at its place, gone with the panel.
  const sheet = drawing(page, '');
  await sheet.press('Enter');
  await sheet.press('Control+d');
  await sheet.press('t');
  await findings.getByText('stop', { exact: true }).first().waitFor();
  await findings
    .getByText(/overlap|in each other/iu)
    .first()
    .waitFor();
  await sheet.press('Delete');
  await drawing(page, '8 pieces').waitFor();
  await expect.poll(() => findings.getByText('stop', { exact: true }).count()).toBe(0);

  await field(page, 'Code').fill('GZ');
  await field(page, 'Name').fill('Odd wall gang 9 ft 6 in x 12 ft');
  await field(page, 'Hand').selectOption('left');
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByRole('heading', { name: 'GZ Odd wall gang' }).waitFor();
}

/** Makes its other hand, and sees that the two are no twins. */
export async function mirrorsIt(page: Page): Promise<void> {
  await page.getByRole('navigation', { name: 'Design GZ' }).getByRole('link', { name: 'Mirror' }).click();
  await page.getByText('it does not fly on as GZ').waitFor();
  expect(await field(page, 'Code').inputValue()).toBe('GZR');
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByRole('heading', { name: 'GZR' }).waitFor();
  await page.getByText('it does not fly on as GZ').first().waitFor();
}

/** A yard person gives short joints a lock more, sees whom that touches, keeps it; the gang's locks follow. */
export async function changesABand(page: Page): Promise<void> {
  await goToScreen(page, '/designs/GZ');
  await page.getByRole('application', { name: /Elevation of GZ /u }).waitFor();
  const before = await pieces(page, 'LK');
  await goToScreen(page, '/rules/OMB?table=locks');
  const bands = page.getByRole('grid', { name: 'Locks by length of the joint' });
  const cell = bands
    .getByRole('row', { name: /^4.-2. 2/u })
    .getByRole('gridcell')
    .nth(1);

  // Fewer locks on a longer joint are refused at the cell, with the reason, and not saved.
  await cell.click();
  await page.keyboard.type('9');
  await page.keyboard.press('Enter');
  await page
    .getByText(/go down|goes down|fewer|rise/iu)
    .first()
    .waitFor();
  expect(await page.getByRole('button', { name: 'Save' }).isDisabled()).toBe(true);

  await bands
    .getByRole('row', { name: /^4.-2. 9/u })
    .getByRole('gridcell')
    .nth(1)
    .click();
  await page.keyboard.type('3');
  await page.keyboard.press('Enter');
  await page.getByText('GZ', { exact: true }).first().waitFor();
  const save = page.getByRole('button', { name: 'Save' });
  await expect.poll(() => save.isEnabled()).toBe(true);
  await save.click();
  await page.getByText('Version 2, in force').waitFor();

  await goToScreen(page, '/designs/GZ');
  // Three joints of 4 ft between the upper panels and four level ones of 2 to 3 ft take one more each.
  await expect.poll(() => pieces(page, 'LK')).toBe(before + 7);
  await page.getByText('by rule table 2').waitFor();
}

/** Fills both sides of a wall from what is ready in the yard, keeps its gangs and opens one of them. */
export async function fillsAWall(page: Page): Promise<void> {
  await goToScreen(page, '/fill');
  const entries = page.getByRole('form', { name: 'What is to be formed' });
  await entries.getByLabel('Legs on the face of side A, with their turns').fill('24 lef 12');
  await entries.getByRole('alert').getByText('Maybe write it like').waitFor();
  expect(await page.getByRole('button', { name: 'Propose gangs' }).isDisabled()).toBe(true);
  await entries.getByLabel('Legs on the face of side A, with their turns').fill('24');
  await entries.getByLabel('Length').fill('12');
  await entries.getByLabel('gangs already on paper first').uncheck();
  await entries.getByRole('radio', { name: 'what is ready' }).click();
  await entries.getByLabel(/^ENN /u).check();
  await page.getByRole('button', { name: 'Propose gangs' }).click();
  await page.getByText('Proven: nothing better exists.').waitFor();
  await page.getByText('every tie through').waitFor();
  // 24 ft on both sides in gangs of 12 ft: two on a side.
  const faces = page.getByRole('img', { name: /^Both faces unfolded/u });
  expect(await faces.getAttribute('aria-label')).toMatch(
    /side A: G\d+ new, G\d+ new; side B: G\d+ new, G\d+ new$/u,
  );
  const gangs = page.getByRole('region', { name: 'New gangs' });
  for (const hours of await gangs.getByLabel(/^Hours to /u).all()) await hours.fill('1.5');
  // The two are each other's mirror image: both as left hands are refused, and nothing is kept.
  const hands = await gangs.getByLabel(/^Hand of /u).all();
  expect(hands).toHaveLength(2);
  for (const hand of hands) await hand.selectOption('left');
  await gangs.getByRole('button', { name: 'Keep these gangs' }).click();
  await gangs.getByRole('alert').getByText('is the mirror image of').waitFor();
  await hands[1]?.selectOption('right');
  await gangs.getByRole('button', { name: 'Keep these gangs' }).click();
  await gangs.getByText('Kept:').waitFor();
  await gangs.getByRole('link').first().click();
  await page.getByRole('application', { name: /Elevation of G\d+ .*12'-0" high/u }).waitFor();
}

/** Enters how it is picked, then prints both sheets and reads out of them what the screen said. */
export async function printsBothSheets(door: OpenDoor, folder: string): Promise<void> {
  const { page } = door;
  await goToScreen(page, '/designs/GZ');
  await page.getByRole('application', { name: /Elevation of GZ /u }).waitFor();
  const locks = await pieces(page, 'LK');
  await page
    .getByRole('navigation', { name: 'Design GZ' })
    .getByRole('link', { name: 'Pick', exact: true })
    .click();
  const entries = page.getByRole('form', { name: 'How it is picked' });
  await entries.getByLabel('Weight of slings and shackles').fill('250');
  await entries.getByLabel('Radius at pick-up').fill('92');
  await entries.getByLabel('Radius where it is set').fill('148');
  await page.getByText('Not kept yet.').waitFor();
  await page.getByRole('button', { name: 'Keep' }).click();
  await page.getByText('Kept as it stands here.').waitFor();

  await goToScreen(page, '/sheets/assembly/GZ');
  const assembly = await pdfOf(door, folder);
  expect(quantityIn(assembly.words, 'LK', 'Lock')).toBe(locks);
  expect(quantityIn(assembly.words, 'P824', 'Panel 24 in x 8 ft')).toBe(2);
  await goToScreen(page, '/sheets/pick/GZ');
  const pick = await pdfOf(door, folder);
  expect(pick.words).toMatch(new RegExp(`LK Lock ${locks} [0-9.,]+ lb catalogue`, 'u'));
  // By the chart of the demo's crane: 3,300 lb at 148 ft.
  expect(pick.words).toContain('3,300 lb');
}
