// A phone: a real browser of its size with a profile of its own, so that it can be closed and opened again with what it
// kept; and the few things a person does on its page.
import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { PhoneState } from '../../core/host/phone-calls.ts';
import type { CoreCall } from './call-core.ts';
import { startPhone } from './doors.ts';

export interface Phone {
  readonly context: BrowserContext;
  readonly page: Page;
}

export async function openPhone(profile: string): Promise<Phone> {
  const context = await startPhone(profile);
  const page = context.pages()[0] ?? (await context.newPage());
  page.setDefaultTimeout(20_000);
  return { context, page };
}

export type OpenPhoneDoor = NonNullable<PhoneState['door']>;

export async function phoneDoor(call: CoreCall, name: string, input: object = {}): Promise<OpenPhoneDoor> {
  const answered = await call<PhoneState>(name, input);
  if (!answered.ok) throw new Error(answered.error.message);
  if (answered.value.door === null) throw new Error('The phone door is closed.');
  return answered.value.door;
}

/** Asks for a code where the app is open, and signs in with it. */
export async function signIn(page: Page, call: CoreCall, name: string): Promise<void> {
  const { code } = await phoneDoor(call, 'phone.code');
  if (code.state !== 'open') throw new Error(`The code is ${code.state}.`);
  await page.getByLabel('Code').fill(`${code.digits.slice(0, 4)} ${code.digits.slice(4)}`);
  await page.getByLabel('Your name').fill(name);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.getByRole('heading', { name: 'Strip tickets' }).waitFor();
}

/** Opens the line of a component in the gang of a part, by its title. */
export async function openLine(page: Page, part: RegExp, component: string): Promise<void> {
  const lines = page.getByRole('region', { name: part });
  await lines.getByRole('button', { name: new RegExp(`^${component} `, 'u') }).click();
  await page.getByRole('dialog').waitFor();
}

export async function closeLine(page: Page): Promise<void> {
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
}

/** Counts a line by tapping: so many ready, by + or by the number pad. */
export async function countLine(page: Page, part: RegExp, component: string, ready: number): Promise<void> {
  await openLine(page, part, component);
  const sheet = page.getByRole('dialog');
  await sheet.getByRole('button', { name: /^ready\b(?!,)/u }).click();
  if (ready > 3) {
    await sheet.getByRole('button', { name: 'Number …' }).click();
    for (const digit of String(ready)) await sheet.getByRole('button', { name: digit, exact: true }).click();
    await sheet.getByRole('button', { name: `It is ${ready}` }).click();
  } else
    for (let taps = 0; taps < ready; taps += 1) await sheet.getByRole('button', { name: 'One more' }).click();
  await expect.poll(() => sheet.getByLabel('Counted ready').innerText()).toBe(String(ready));
  await closeLine(page);
}

export async function says(page: Page, words: string | RegExp): Promise<void> {
  await page.locator('.sending-words', { hasText: words }).waitFor({ timeout: 40_000 });
}

export async function sendNow(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Send now' }).click();
}
