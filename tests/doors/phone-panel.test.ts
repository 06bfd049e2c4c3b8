// Opening for phones at both doors: the address is chosen, the picture of it is read as a phone would, a phone signs in
// by it, is listed, signed out, and finds nobody when it is closed.
import { fork } from 'node:child_process';
import { rmSync } from 'node:fs';
import { createServer } from 'node:net';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Answer } from '../../core/answer.ts';
import type { PhoneState } from '../../core/host/phone-calls.ts';
import { broken } from './broken-rules.ts';
import { doorTest } from './door-test.ts';
import { appEnvironment, doorKinds, doorMissing, newFolder, openDoor, root } from './doors.ts';
import { goToScreen } from './go-to-screen.ts';
import { openPhone, says } from './phone-page.ts';
import { readQr } from './qr-reader.ts';

// The desktop's core runs as a program of its own, here in plain Node, and finds the page beside itself.
test('the core as it is built serves the page of phones and ends with the door open', async () => {
  const home = newFolder();
  const child = fork(path.join(root, 'dist', 'core', 'process.mjs'), [], { env: appEnvironment(home) });
  let calls = 0;
  const call = async (name: string, input: object): Promise<Answer<PhoneState>> => {
    calls += 1;
    const id = calls;
    const answered = new Promise<Answer<PhoneState>>((resolve) => {
      child.on('message', (message: { id?: number; answer: Answer<PhoneState> }) => {
        if (message.id === id) resolve(message.answer);
      });
    });
    child.send({ id, name, input });
    return answered;
  };
  expect(await call('host.demo', {})).toMatchObject({ ok: true });
  const opened = await call('phone.open', { address: '127.0.0.1', job: 'TB26', port: 0 });
  const url = opened.ok ? (opened.value.door?.url ?? '') : '';
  expect(await (await fetch(url)).text()).toContain('<title>Count – Regang</title>');
  expect((await fetch(`${url}worker.js`)).status).toBe(200);
  const ended = new Promise<number | null>((resolve) => {
    child.once('exit', resolve);
  });
  child.send({ stop: true });
  expect(await ended).toBe(0);
  rmSync(home, { recursive: true, force: true });
});

/** One that was free a moment ago: the usual one may be in use on this machine. */
async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => {
    server.listen({ host: '127.0.0.1', port: 0 }, resolve);
  });
  const { port } = server.address() as AddressInfo;
  await new Promise<void>((resolve) => {
    server.close(() => resolve());
  });
  return port;
}

for (const kind of doorKinds)
  doorTest(
    kind,
    `at the ${kind} door a phone comes in by the picture, and is out when it is closed`,
    async () => {
      // A phone is a browser of its own.
      const missing = doorMissing('local');
      if (missing !== null) {
        console.log(`No phone came in, because ${missing}.`);
        return;
      }
      const app = await openDoor(kind, { demo: true });
      const profile = newFolder();
      const phone = await openPhone(profile);
      try {
        const { page } = app;
        page.setDefaultTimeout(20_000);
        await goToScreen(page, '/yard/counts');
        await page.getByRole('link', { name: 'Count on a phone' }).click();
        await page.getByRole('button', { name: 'Open for phones' }).waitFor();
        expect(await broken(page)).toEqual([]);
        const port = await openForPhones(page);
        const there = page.getByText(`http://127.0.0.1:${port}/`, { exact: true });
        await there.waitFor();
        const digits = (await page.getByRole('status', { name: 'The code' }).innerText()).replace(' ', '');
        const [address] = await readQr(await page.locator('.phone-mark').screenshot());
        expect(address).toBe(`http://127.0.0.1:${port}/#/code/${digits}`);
        expect(await broken(page)).toEqual([]);

        await phone.page.goto(address ?? '');
        await phone.page.getByLabel('Your name').fill('Ray');
        await phone.page.getByRole('button', { name: 'Sign in' }).click();
        await phone.page.getByRole('heading', { name: 'To count, job TB26' }).waitFor();
        await page.getByText(/^Ray, since .*: nothing sent yet$/u).waitFor();
        await page.getByText('A phone signed in with it. Each phone needs a code of its own.').waitFor();
        await page.getByRole('button', { name: 'Sign out Ray' }).click();
        await page.getByText('None yet.').waitFor();
        await says(phone.page, 'This phone is signed out');
        await page.getByRole('button', { name: 'Code for the next phone' }).click();
        await page.getByRole('status', { name: 'The code' }).waitFor();

        await page.getByRole('button', { name: 'Close for phones' }).click();
        await page.getByRole('button', { name: 'Open for phones' }).waitFor();
        await says(phone.page, 'No connection');
      } finally {
        await phone.context.close();
        await app.close();
        rmSync(profile, { recursive: true, force: true });
      }
    },
  );

async function openForPhones(page: Page): Promise<number> {
  await page.getByRole('radio', { name: /^127\.0\.0\.1/u }).check();
  const field = page.getByLabel('Port');
  await field.fill('80');
  await page.getByText('A number from 1024 to 65535 is wanted.').waitFor();
  const port = await freePort();
  await field.fill(String(port));
  await page.getByRole('button', { name: 'Open for phones' }).click();
  return port;
}
