// Counting on a phone: the real page in a browser of its size, with and without a connection, closed and opened again,
// in two tabs, after the ticket was booked; and what the book has of it, each once.
import { rmSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { ticketRead } from '../../core/procedures/ticket-read.ts';
import type { z } from 'zod';
import { broken } from './broken-rules.ts';
import { coreOf, type CoreCall } from './call-core.ts';
import { doorTest } from './door-test.ts';
import { newFolder, openDoor } from './doors.ts';
import {
  closeLine,
  countLine,
  openLine,
  openPhone,
  type OpenPhoneDoor,
  type Phone,
  phoneDoor,
  says,
  sendNow,
  signIn,
} from './phone-page.ts';

type Ticket = z.output<typeof ticketRead.output>;

const gang = /^GA at P01 side A, nr 1/u;
const loose = /^Loose pieces of P01/u;

interface AtWork {
  readonly call: CoreCall;
  readonly door: OpenPhoneDoor;
  readonly ticket: string;
  readonly phone: Phone;
  /** Closes the phone and opens it again on the same profile. */
  readonly again: (before?: (phone: Phone) => Promise<void>) => Promise<Page>;
}

/** The demo with an open ticket of its first pour, the door open, and a phone signed in at the ticket. */
async function atWork(work: (at: AtWork) => Promise<void>): Promise<void> {
  const profile = newFolder();
  const app = await openDoor('local', { demo: true });
  const call = await coreOf(app);
  const made = await call<{ ticket: string }>('ticket.make', {
    commandId: 'make-ticket-of-P01',
    job: 'TB26',
    pour: 'P01',
    loose: true,
  });
  if (!made.ok) throw new Error(made.error.message);
  const door = await phoneDoor(call, 'phone.open', { address: '127.0.0.1', job: 'TB26', port: 0 });
  let phone = await openPhone(profile);
  try {
    await phone.page.goto(door.url);
    await signIn(phone.page, call, 'Ray');
    await phone.page.getByRole('link', { name: /^S-1, pour P01/u }).click();
    await phone.page.getByRole('region', { name: gang }).waitFor();
    const again = async (before?: (next: Phone) => Promise<void>): Promise<Page> => {
      await phone.context.close();
      phone = await openPhone(profile);
      await before?.(phone);
      await phone.page.goto(door.url);
      return phone.page;
    };
    await work({ call, door, ticket: made.value.ticket, phone, again });
  } finally {
    await phone.context.close();
    await app.close();
    rmSync(profile, { recursive: true, force: true });
  }
}

async function readTicket(call: CoreCall, ticket: string): Promise<Ticket> {
  const read = await call<Ticket>('ticket.read', { ticket });
  if (!read.ok) throw new Error(read.error.message);
  return read.value;
}

/** How many of a component are counted ready in the first gang. */
async function readyInGang(call: CoreCall, ticket: string, component: string): Promise<number | undefined> {
  const { parts } = await readTicket(call, ticket);
  return parts[0]?.expected.find((line) => line.component === component)?.counted.ready;
}

async function book(call: CoreCall, ticket: string): Promise<void> {
  const booked = await call('ticket.book', {
    commandId: `book-${ticket}`,
    ticket,
    at: '2026-03-05T12:00:00-05:00',
    uncountedAsExpected: true,
  });
  if (!booked.ok) throw new Error(`${booked.error.message} ${booked.error.hint}`);
}

doorTest('local', 'counts without a connection, closed and opened again, and sends each line once', () =>
  atWork(async ({ call, ticket, phone, again }) => {
    await countLine(phone.page, gang, 'LK', 2);
    await says(phone.page, '1 line not yet sent');
    await sendNow(phone.page);
    await says(phone.page, 'Everything is sent');
    expect((await readTicket(call, ticket)).entries).toMatchObject([
      { who: 'Ray', device: 'phone of Ray', lines: 1, pieces: 2 },
    ]);
    // The worker that opens the page without a connection has its files by now.
    await phone.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await phone.context.setOffline(true);
    await countLine(phone.page, gang, 'LK', 20);
    await countLine(phone.page, gang, 'P436', 3);
    await openLine(phone.page, gang, 'P836');
    await phone.page.getByRole('button', { name: /^to clean/u }).click();
    await phone.page.getByRole('button', { name: /^= expected: 4/u }).click();
    await closeLine(phone.page);
    await says(phone.page, /3 lines not yet sent.*No connection: kept on this phone/u);
    const page = await again(({ context }) => context.setOffline(true));
    await says(page, /3 lines not yet sent.*No connection: kept on this phone/u);
    await page.getByRole('link', { name: /^S-1, pour P01/u }).click();
    await page
      .getByRole('region', { name: gang })
      .getByRole('button', { name: /^P436 .*3 of 4 expected, 1 missing/u })
      .waitFor();
    expect((await readTicket(call, ticket)).entries).toHaveLength(1);
    await page.context().setOffline(false);
    // By itself, after a while in which nothing was tapped.
    await says(page, 'Everything is sent');
    const { entries, parts } = await readTicket(call, ticket);
    expect(entries.map(({ lines, pieces }) => [lines, pieces])).toEqual([
      [1, 2],
      [3, 18 + 3 + 4],
    ]);
    const counted = parts[0]!.expected.map((line) => [
      line.component,
      line.counted.ready,
      line.counted['to-clean'],
    ]);
    expect(counted).toEqual(
      expect.arrayContaining([
        ['LK', 20, 0],
        ['P436', 3, 0],
        ['P836', 0, 4],
      ]),
    );
  }),
);

doorTest(
  'local',
  'an answer that was lost is asked for again, after the booking too, and nothing is twice',
  () =>
    atWork(async ({ call, ticket, phone: { page } }) => {
      await countLine(page, gang, 'LK', 5);
      // It comes in, and the phone is not told.
      await page.route('**/call/ticket.enter', async (route) => {
        await route.fetch();
        await route.abort();
      });
      await sendNow(page);
      await says(page, /1 line not yet sent.*No connection/u);
      await expect.poll(() => readyInGang(call, ticket, 'LK')).toBe(5);
      await book(call, ticket);
      await page.unroute('**/call/ticket.enter');
      await sendNow(page);
      await says(page, 'Everything is sent');
      expect((await readTicket(call, ticket)).entries).toHaveLength(1);
      expect(await page.getByText('refused').count()).toBe(0);
    }),
);

for (const where of [
  'where a browser has locks',
  'where it has none, as on a plain network address',
] as const)
  doorTest('local', `two tabs of one phone send what it holds once, ${where}`, () =>
    atWork(async ({ call, ticket, phone: { context, page }, door }) => {
      if (where !== 'where a browser has locks') {
        await context.addInitScript(() => {
          Object.defineProperty(Navigator.prototype, 'locks', { get: () => undefined });
          Object.defineProperty(Crypto.prototype, 'randomUUID', { value: undefined });
        });
        await page.reload();
        await page.getByRole('region', { name: gang }).waitFor();
      }
      await context.setOffline(true);
      await countLine(page, gang, 'LK', 6);
      await context.setOffline(false);
      const other = await context.newPage();
      await other.goto(door.url);
      await says(other, '1 line not yet sent');
      await Promise.all([sendNow(page), sendNow(other)]);
      await says(page, 'Everything is sent');
      await says(other, 'Everything is sent');
      expect(await readyInGang(call, ticket, 'LK')).toBe(6);
      expect((await readTicket(call, ticket)).entries).toHaveLength(1);
    }),
  );

doorTest(
  'local',
  'what is counted after the booking stays on the phone, and goes to the ticket of late finds',
  () =>
    atWork(async ({ call, ticket, phone: { context, page } }) => {
      await countLine(page, gang, 'LK', 20);
      await sendNow(page);
      await says(page, 'Everything is sent');
      await context.setOffline(true);
      await countLine(page, gang, 'LK', 22);
      await book(call, ticket);
      await context.setOffline(false);
      await sendNow(page);
      await page.getByRole('link', { name: '1 line was refused: look at it' }).click();
      const card = page.getByRole('region', { name: '1 line of S-1' });
      await card.getByText(/S-1 was booked by tester/u).waitFor();
      await card.getByText('2 LK ready').waitFor();
      await card.getByRole('button', { name: 'Keep as late finds' }).click();
      await card.getByText('They wait for a second ticket').waitFor();
      expect((await readTicket(call, ticket)).entries).toHaveLength(1);
      const late = await call<{ ticket: string; name: string }>('ticket.late', {
        commandId: 'late-finds-1',
        ticket,
      });
      if (!late.ok) throw new Error(late.error.message);
      await page.goto(`${page.url().split('#')[0]}#/`);
      await page.getByRole('link', { name: new RegExp(`^${late.value.name}, pour P01`, 'u') }).waitFor();
      await page.getByRole('link', { name: /^Refused, and late finds 1 line kept/u }).click();
      await card.getByRole('button', { name: `Count them on ${late.value.name}` }).click();
      await says(page, '1 line not yet sent');
      await sendNow(page);
      await says(page, 'Everything is sent');
      const { parts, entries } = await readTicket(call, late.value.ticket);
      expect(entries).toHaveLength(1);
      expect(parts.flatMap(({ expected }) => expected)).toContainEqual(
        expect.objectContaining({ component: 'LK', counted: expect.objectContaining({ ready: 2 }) }),
      );
    }),
);

doorTest('local', 'more than expected is refused with the reason, stays, and goes in as extra', () =>
  atWork(async ({ call, ticket, phone: { page } }) => {
    await countLine(page, gang, 'P436', 5);
    await sendNow(page);
    await page.getByRole('link', { name: '1 line was refused: look at it' }).click();
    const card = page.getByRole('region', { name: '1 line of S-1' });
    await card.getByText(/P436/u).first().waitFor();
    await card.getByRole('button', { name: 'Change them' }).click();
    await openLine(page, gang, 'P436');
    await page.getByRole('button', { name: '1 really more: enter as extra' }).click();
    await page.getByRole('dialog').getByText('4 of 4 expected, all there, 1 extra').waitFor();
    await closeLine(page);
    await sendNow(page);
    await says(page, 'Everything is sent');
    const { parts, entries } = await readTicket(call, ticket);
    expect(entries).toHaveLength(1);
    expect(parts[0]!.extra).toMatchObject([{ component: 'P436', counted: { ready: 1 } }]);
  }),
);

doorTest('local', 'a phone that was signed out keeps its lines, asks for a new code, and sends them', () =>
  atWork(async ({ call, ticket, phone: { page } }) => {
    const { sessions } = await phoneDoor(call, 'phone.state');
    await phoneDoor(call, 'phone.end', { session: sessions[0]!.id });
    await countLine(page, loose, 'BR', 1);
    await sendNow(page);
    await says(page, /1 line not yet sent.*This phone is signed out: all of it stays here/u);
    await page.getByRole('link', { name: 'Enter a code' }).click();
    await page.getByText('1 line not yet sent').waitFor();
    await signIn(page, call, 'Ann');
    await says(page, 'Everything is sent');
    expect((await readTicket(call, ticket)).entries).toMatchObject([{ who: 'Ann', device: 'phone of Ann' }]);
  }),
);

doorTest('local', 'a clock that is years wrong does not matter: the entry is as old as it is', () =>
  atWork(async ({ call, ticket, phone: { page } }) => {
    const before = Date.now();
    await page.clock.setFixedTime('2019-01-01T08:00:00Z');
    await countLine(page, gang, 'LK', 1);
    await page.clock.setFixedTime('2019-01-01T09:00:00Z');
    await sendNow(page);
    await says(page, 'Everything is sent');
    const [entry] = (await readTicket(call, ticket)).entries;
    expect(entry?.device).toBe('phone of Ray, its clock 2019-01-01T08:00');
    const hourAgo = Date.parse(entry?.at ?? '') + 3_600_000;
    expect(hourAgo).toBeGreaterThanOrEqual(before);
    expect(hourAgo).toBeLessThanOrEqual(Date.now());
  }),
);

doorTest('local', 'a stock count is counted blind, recounted, and entered as one counter', () =>
  atWork(async ({ call, phone: { page } }) => {
    const lines = [{ location: 'ENN', component: 'LK', owner: null }];
    const started = await call<{ count: string }>('count.start', {
      commandId: 'start-count-1',
      kind: 'spot',
      lines,
      blind: true,
      counters: 2,
    });
    if (!started.ok) throw new Error(started.error.message);
    await page.getByRole('link', { name: 'To count' }).click();
    await page.getByRole('button', { name: /^N-1: ENN/u }).click();
    await page.getByRole('link', { name: /^N-1, counter 2: ENN/u }).click();
    const place = /^ENN/u;
    await page.getByRole('region', { name: place }).getByText('not counted yet').waitFor();
    await countLine(page, place, 'LK', 126);
    await sendNow(page);
    await says(page, 'Everything is sent');
    await countLine(page, place, 'LK', 128);
    await sendNow(page);
    await says(page, 'Everything is sent');
    const read = await call<{ lines: unknown[]; entries: number }>('count.read', {
      count: started.value.count,
      counter: 2,
    });
    expect(read).toMatchObject({
      value: { entries: 2, lines: [{ figures: [{ counter: 2, quantity: 128, recounts: 1, who: 'Ray' }] }] },
    });
  }),
);

doorTest('local', 'no rule of accessibility is broken on any of its screens', () =>
  atWork(async ({ call, phone: { page }, door }) => {
    const found: string[] = [];
    const look = async (name: string): Promise<void> => {
      found.push(...(await broken(page)).map((line) => `${name}: ${line}`));
    };
    await look('a ticket');
    await openLine(page, gang, 'P436');
    await look('a line');
    await page.getByRole('button', { name: 'Number …' }).click();
    await look('the number pad');
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await closeLine(page);
    await countLine(page, gang, 'P436', 5);
    await sendNow(page);
    await page.getByRole('link', { name: /refused/u }).click();
    await page.getByRole('button', { name: 'Change them' }).waitFor();
    await look('what was refused');
    await page.goto(`${door.url}#/`);
    await page.getByRole('link', { name: /^S-1/u }).waitFor();
    await look('the list');
    const { sessions } = await phoneDoor(call, 'phone.state');
    await phoneDoor(call, 'phone.end', { session: sessions[0]!.id });
    await page.goto(`${door.url}#/sign-in`);
    await page.getByLabel('Code').fill('1234');
    await page.getByRole('button', { name: 'Sign in' }).click();
    await page.getByRole('alert').waitFor();
    await look('signing in');
    // Gloves: every target is 48 px or more in both directions.
    for (const address of ['#/', '#/sign-in', '#/unsent']) {
      await page.goto(`${door.url}${address}`);
      found.push(...(await smallTargets(page)).map((line) => `${address}: ${line}`));
    }
    expect(found).toEqual([]);
  }),
);

async function smallTargets(page: Page): Promise<readonly string[]> {
  await page.getByRole('heading').first().waitFor();
  return page.evaluate(() =>
    [...document.querySelectorAll('button, a, input')]
      .map((element) => ({ words: element.textContent, box: element.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.height < 48 || box.width < 48))
      .map(({ words, box }) => `${words} is ${box.width} by ${box.height}`),
  );
}
