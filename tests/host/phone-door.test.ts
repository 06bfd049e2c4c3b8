// The phone door over bare HTTP: who is let in, what a phone may ask, and that everything else is refused.
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { PhoneState } from '../../core/host/phone-calls.ts';
import { aHost } from './a-host.ts';
import { askDoor, type Got } from './ask-door.ts';
import { phoneFakes } from './phone-fakes.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'regang-phone-'));
const phonePages = path.join(folder, 'pages');
mkdirSync(path.join(phonePages, 'assets'), { recursive: true });
writeFileSync(path.join(phonePages, 'phone.html'), '<title>Count</title>');
writeFileSync(path.join(phonePages, 'assets', 'phone-Ab3_x9Zq.js'), 'void 0;');
writeFileSync(path.join(folder, 'secret.html'), 'secret');

const fakes = phoneFakes();
let elapsedMs = 0;
const { host } = aHost({ procedures: fakes.procedures, phonePages, elapsedMs: () => elapsedMs });
let door: NonNullable<PhoneState['door']>;
let here: string;

beforeAll(async () => {
  await host.call('host.create', { file: 'one' });
  const jobs = readFileSync(path.join(import.meta.dirname, '../../seed-demo/jobs.csv'), 'utf8');
  const text = jobs.replaceAll('TB26', 'J1');
  expect(await host.call('import.file', { commandId: 'command-job', kind: 'jobs', text })).toMatchObject({
    ok: true,
  });
});
afterAll(() => host.close());
beforeEach(async () => {
  fakes.entered.length = 0;
  fakes.asked.length = 0;
  await stateAfter('phone.close');
  door = (await stateAfter('phone.open', { address: '127.0.0.1', job: 'J1', port: 0 })).door!;
  here = `http://127.0.0.1:${door.port}`;
});

async function stateAfter(name: string, input: unknown = {}): Promise<PhoneState> {
  const answered = await host.call(name, input);
  if (!answered.ok) throw new Error(`${name}: ${answered.error.message}`);
  return answered.value as PhoneState;
}

const ask = (method: string, target: string, headers: Record<string, string>, body?: string): Promise<Got> =>
  askDoor(door.port, { method, target, headers, ...(body !== undefined && { body }) });

const json = { 'content-type': 'application/json' };

async function call(name: string, input: unknown, headers: Record<string, string> = {}) {
  const got = await ask(
    'POST',
    `/call/${name}`,
    { ...json, origin: here, ...headers },
    JSON.stringify(input),
  );
  return {
    ...got,
    answered: JSON.parse(got.body) as { ok: boolean; error?: { code: string }; value?: unknown },
  };
}

function digits(): string {
  if (door.code.state !== 'open') throw new Error('No code is open.');
  return door.code.digits;
}

async function signIn(name = 'Ray'): Promise<string> {
  const got = await call('phone.sign-in', { code: digits(), name });
  expect(got.answered).toEqual({ ok: true, value: { job: 'J1', name } });
  return String(got.headers['set-cookie']?.[0]?.split(';')[0]);
}

async function renew(): Promise<void> {
  door = (await stateAfter('phone.code')).door!;
}

const batch = (id: string, more: object = {}) => ({
  id,
  ticket: 'S-1',
  lines: [{ part: 'P01/A1', component: 'LK', condition: 'ready', quantity: 4 }],
  at: '2026-03-02T06:50:00-05:00',
  sentAt: '2026-03-02T07:00:00-05:00',
  ...more,
});

describe('the code', () => {
  test('is eight digits, good once, and gives a cookie that is HttpOnly and SameSite=Strict', async () => {
    expect(digits()).toMatch(/^\d{8}$/u);
    const code = digits();
    const got = await call('phone.sign-in', { code, name: 'Ray' });
    expect(got.headers['set-cookie']?.[0]).toMatch(
      /^regang-phone-\d+=[\w-]{43}; HttpOnly; SameSite=Strict; Path=\/; Max-Age=57600$/u,
    );
    expect((await call('phone.sign-in', { code, name: 'Ann' })).answered.error?.code).toBe('no-code');
    expect((await stateAfter('phone.state')).door?.code).toEqual({ state: 'used' });
  });

  test('five wrong tries close it, and the right one is then refused too', async () => {
    const right = digits();
    const wrong = String((Number(right) + 1) % 100_000_000).padStart(8, '0');
    const codes: (string | undefined)[] = [];
    for (let tries = 0; tries < 5; tries += 1)
      codes.push((await call('phone.sign-in', { code: wrong, name: 'Ray' })).answered.error?.code);
    expect(codes).toEqual(['wrong-code', 'wrong-code', 'wrong-code', 'wrong-code', 'code-closed']);
    expect((await call('phone.sign-in', { code: right, name: 'Ray' })).answered.error?.code).toBe('no-code');
    await renew();
    await signIn();
  });

  test('many tries at the same time are still five', async () => {
    const right = Number(digits());
    const tried = await Promise.all(
      Array.from({ length: 40 }, (_, index) =>
        call('phone.sign-in', {
          code: String((right + 1 + index) % 100_000_000).padStart(8, '0'),
          name: 'Ray',
        }),
      ),
    );
    const count = (code: string): number =>
      tried.filter(({ answered }) => answered.error?.code === code).length;
    expect([count('wrong-code'), count('code-closed'), count('no-code')]).toEqual([4, 1, 35]);
  });

  test('ends after ten minutes, and a new one ends the one before', async () => {
    const first = digits();
    await renew();
    const tried = await call('phone.sign-in', { code: first, name: 'Ray' });
    expect(tried.answered.error?.code).toBe(first === digits() ? undefined : 'wrong-code');
    elapsedMs += 10 * 60_000;
    expect((await call('phone.sign-in', { code: digits(), name: 'Ray' })).answered.error?.code).toBe(
      'no-code',
    );
  });

  test('a name that is missing or too long is refused and the code stays good', async () => {
    for (const name of ['', '   ', 'x'.repeat(21)])
      expect((await call('phone.sign-in', { code: digits(), name })).answered.error?.code).toBe('bad-input');
    await signIn();
  });
});

describe('who is let in', () => {
  test('the page is served to anybody at its address; everything about the job needs a session', async () => {
    expect((await ask('GET', '/', {})).body).toBe('<title>Count</title>');
    for (const name of [
      'phone.hello',
      'ticket.list',
      'ticket.enter',
      'count.read',
      'host.state',
      'no.such',
    ]) {
      const got = await call(name, {});
      expect([got.status, got.answered.error?.code]).toEqual([401, 'signed-out']);
    }
    expect(fakes.asked).toEqual([]);
  });

  test('any other Host and any other Origin is refused, with the cookie too', async () => {
    const cookie = await signIn();
    for (const other of [
      'localhost',
      `localhost:${door.port}`,
      `rebind.example:${door.port}`,
      '127.0.0.1',
      'x',
    ])
      expect((await ask('GET', '/', { cookie, host: other })).status).toBe(403);
    for (const origin of [
      'http://example.com',
      'null',
      `http://localhost:${door.port}`,
      `${here}.example.com`,
    ])
      expect((await ask('POST', '/call/ticket.list', { ...json, cookie, origin }, '{}')).status).toBe(403);
    expect((await ask('POST', '/call/ticket.list', { ...json, cookie }, '{}')).status).toBe(403);
    for (const method of ['PUT', 'DELETE', 'OPTIONS', 'PATCH'])
      expect((await ask(method, '/', { cookie, origin: here })).status).toBe(405);
  });

  test('a made-up cookie, one under another name and one of an earlier opening are refused', async () => {
    const cookie = await signIn();
    const secret = cookie.slice(cookie.indexOf('=') + 1);
    for (const wrong of [`regang-phone-${door.port}=x`, `regang-${door.port}=${secret}`, `x=${secret}`])
      expect((await call('ticket.list', {}, { cookie: wrong })).status).toBe(401);
    const before = door.port;
    await stateAfter('phone.close');
    door = (await stateAfter('phone.open', { address: '127.0.0.1', job: 'J1', port: before })).door!;
    expect((await call('ticket.list', {}, { cookie })).status).toBe(401);
  });

  test('every phone is listed with its name, and one that is ended is out', async () => {
    const ray = await signIn('Ray');
    await renew();
    const ann = await signIn('Ann');
    await call('ticket.enter', batch('0123456789abcdef'), { cookie: ann });
    const { sessions } = (await stateAfter('phone.state')).door!;
    expect(sessions.map(({ name, entries, lines }) => [name, entries, lines])).toEqual([
      ['Ray', 0, 0],
      ['Ann', 1, 1],
    ]);
    await stateAfter('phone.end', { session: sessions[0]!.id });
    expect((await call('ticket.list', {}, { cookie: ray })).answered.error?.code).toBe('signed-out');
    expect((await call('ticket.list', {}, { cookie: ann })).answered.ok).toBe(true);
    expect(await host.call('phone.end', { session: sessions[0]!.id })).toMatchObject({
      error: { code: 'no-such-phone' },
    });
  });

  test('a session ends by itself after sixteen hours', async () => {
    const cookie = await signIn();
    elapsedMs += 16 * 3_600_000 - 1;
    expect((await call('ticket.list', {}, { cookie })).status).toBe(200);
    elapsedMs += 1;
    expect((await call('ticket.list', {}, { cookie })).status).toBe(401);
  });
});

describe('what a phone may ask', () => {
  test('the open tickets of the one job, whatever else it says', async () => {
    const cookie = await signIn();
    const listed = await call('ticket.list', {}, { cookie });
    expect(listed.answered.value).toEqual({ tickets: [{ job: 'J1', state: 'open' }] });
    expect((await call('ticket.list', { job: 'J2' }, { cookie })).answered.error?.code).toBe('bad-input');
    expect((await call('ticket.read', { ticket: 'S-1' }, { cookie })).answered.ok).toBe(true);
    expect((await call('ticket.read', { ticket: 'S-2' }, { cookie })).answered.error?.code).toBe('other-job');
    const elsewhere = batch('0123456789abcdef', { ticket: 'S-2' });
    expect((await call('ticket.enter', elsewhere, { cookie })).answered.error?.code).toBe('other-job');
    expect(fakes.entered).toEqual([]);
  });

  test('no other procedure and no call of the host, however it is written', async () => {
    const cookie = await signIn();
    const others = [
      'ticket.book',
      'ticket.drop',
      'count.book',
      'yard.move',
      'host.state',
      'phone.state',
      'phone.code',
    ];
    for (const name of [...others, 'constructor', 'to-string', 'import.file'])
      expect((await call(name, {}, { cookie })).answered.error?.code, name).toBe('not-for-phones');
    for (const target of [
      '/call/',
      '/call/../host.state',
      '/call/%74icket.list',
      '/Call/ticket.list',
      '/call/__proto__',
    ])
      expect((await ask('POST', target, { ...json, cookie, origin: here }, '{}')).status, target).toBe(404);
    expect(fakes.asked).toEqual([]);
  });

  test('a count is read as one of its counters only', async () => {
    const cookie = await signIn();
    expect((await call('count.read', { count: 'count-1' }, { cookie })).answered.error?.code).toBe(
      'bad-input',
    );
    expect((await call('count.read', { count: 'count-1', counter: 2 }, { cookie })).answered.ok).toBe(true);
  });

  test('what is entered carries the name of the phone, whatever else the phone says', async () => {
    const cookie = await signIn('Ray');
    const lied = await call('ticket.enter', batch('0123456789abcdef', { device: 'here' }), { cookie });
    expect(lied.answered.error?.code).toBe('bad-input');
    await call('ticket.enter', batch('0123456789abcdef'), { cookie });
    await call('ticket.enter', batch('0123456789abcdef', { sentAt: '2026-03-03T07:00:00-05:00' }), {
      cookie,
    });
    expect(fakes.entered).toEqual([
      {
        name: 'ticket.enter',
        id: '0123456789abcdef',
        at: '2026-03-02T06:50:00-05:00',
        device: 'phone of Ray',
      },
    ]);
  });

  test('a body over 256 KiB is 413, one that is not JSON 400, and no answer is kept', async () => {
    const cookie = await signIn();
    const large = JSON.stringify({ x: 'x'.repeat(256 * 1024) });
    const asPage = { ...json, cookie, origin: here };
    expect((await ask('POST', '/call/ticket.enter', asPage, large)).status).toBe(413);
    expect((await ask('POST', '/call/ticket.enter', asPage, '{')).status).toBe(400);
    expect(
      (await ask('POST', '/call/ticket.enter', { ...asPage, 'content-type': 'text/plain' }, '{}')).status,
    ).toBe(400);
    expect((await call('ticket.list', {}, { cookie })).headers['cache-control']).toBe('no-store');
  });
});

describe('the door', () => {
  test('no way of writing two dots leads out of the folder, and the policy stands on every answer', async () => {
    for (const target of [
      '/../secret.html',
      '/%2e%2e/secret.html',
      '/..%2fsecret.html',
      '/assets/..%2f..%2fsecret.html',
    ]) {
      const got = await ask('GET', target, { 'sec-fetch-mode': 'navigate' });
      expect([got.status, got.body.includes('secret')]).toEqual([404, false]);
    }
    for (const target of ['/', '/assets/phone-Ab3_x9Zq.js', '/nowhere'])
      expect((await ask('GET', target, {})).headers['content-security-policy']).toContain(
        "default-src 'none'",
      );
  });

  test('opens on an address of this machine only, for a job of the book, once', async () => {
    const open = (input: object) => host.call('phone.open', { job: 'J1', ...input });
    expect(await open({ address: '127.0.0.1' })).toMatchObject({ error: { code: 'phone-door-open' } });
    await stateAfter('phone.close');
    expect(await open({ address: '192.0.2.7' })).toMatchObject({ error: { code: 'no-such-address' } });
    expect(await open({ address: '0.0.0.0' })).toMatchObject({ error: { code: 'no-such-address' } });
    expect(await open({ address: '127.0.0.1', job: 'J9' })).toMatchObject({ error: { code: 'unknown-job' } });
    expect(await host.call('phone.code', {})).toMatchObject({ error: { code: 'phone-door-closed' } });
  });

  test('a port that is taken is refused in words, and nothing is open then', async () => {
    const { port } = door;
    const other = aHost({ procedures: fakes.procedures, phonePages });
    await other.host.call('host.create', { file: 'two' });
    await stateAfter('phone.close');
    const { createServer } = await import('node:net');
    const taking = createServer();
    await new Promise<void>((resolve) => {
      taking.listen({ host: '127.0.0.1', port }, resolve);
    });
    expect(await host.call('phone.open', { address: '127.0.0.1', job: 'J1', port })).toMatchObject({
      error: { code: 'port-taken', message: expect.stringContaining(String(port)) },
    });
    expect((await stateAfter('phone.state')).door).toBeNull();
    await new Promise<void>((resolve) => {
      taking.close(() => resolve());
    });
    await other.host.close();
  });

  test('closes with the book: nobody listens at its address when another book is open', async () => {
    const before = (await host.call('host.state', {})) as { value: { book: { file: string } } };
    await host.call('host.create', { file: 'another' });
    expect((await stateAfter('phone.state')).door).toBeNull();
    await expect(listens(door.port)).resolves.toBe(false);
    await host.call('host.open', { file: before.value.book.file });
  });
});

function listens(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1', () => {
      socket.destroy();
      resolve(true);
    });
    socket.once('error', () => resolve(false));
  });
}
