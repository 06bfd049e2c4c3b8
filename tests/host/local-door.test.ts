// The local door spoken to over bare HTTP, where every header can be wrong.
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { request as httpRequest } from 'node:http';
import { connect, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openLocalDoor } from '../../core/host/local-door.ts';
import type { LocalDoor } from '../../core/host/local-door.ts';
import { aHost } from './a-host.ts';
import { askDoor, type Got } from './ask-door.ts';

const pages = path.join(mkdtempSync(path.join(tmpdir(), 'regang-door-')), 'pages');
mkdirSync(path.join(pages, 'assets'), { recursive: true });
writeFileSync(path.join(pages, 'index.html'), '<title>Regang</title>');
writeFileSync(path.join(pages, 'assets', 'main-Ab3_x9Zq.js'), 'void 0;');
writeFileSync(path.join(path.dirname(pages), 'secret.html'), 'secret');

const { host } = aHost();
let door: LocalDoor;
let cookie: string;
let here: string;

beforeAll(async () => {
  door = await openLocalDoor({ host, pages, port: 0, emptyAfterMs: 60_000, onEmpty: () => undefined });
  here = `http://127.0.0.1:${door.port}`;
  const first = await ask('GET', new URL(door.url).pathname + new URL(door.url).search, {});
  cookie = String(first.headers['set-cookie']?.[0]?.split(';')[0]);
  await host.call('host.create', { file: 'one' });
});
afterAll(async () => {
  await door.close();
  await host.close();
});

const ask = (method: string, target: string, headers: Record<string, string>, body?: string): Promise<Got> =>
  askDoor(door.port, { method, target, headers, ...(body !== undefined && { body }) });

const asPage = () => ({ cookie, origin: here, 'content-type': 'application/json' });
const post = (name: string, headers: Record<string, string>, body = '{}') =>
  ask('POST', `/call/${name}`, headers, body);

const photo = (bytes: number) => JSON.stringify({ base64: Buffer.alloc(bytes).toString('base64') });

describe('who is let in', () => {
  test('the token is 256 random bits, and its cookie is HttpOnly, SameSite=Strict and another secret', async () => {
    const url = new URL(door.url);
    const token = url.searchParams.get('token') ?? '';
    expect(Buffer.from(token, 'base64url')).toHaveLength(32);
    const first = await ask('GET', url.pathname + url.search, {});
    expect(first.status).toBe(200);
    const [set] = first.headers['set-cookie'] ?? [];
    expect(set).toMatch(/^regang-\d+=[\w-]{43}; HttpOnly; SameSite=Strict; Path=\/$/u);
    expect(set).not.toContain(token);
    expect(first.body).not.toContain(token);
  });

  test('without token or cookie nothing is served: not the page, not a file, not a call, not the changes', async () => {
    for (const target of ['/', '/index.html', '/assets/main-Ab3_x9Zq.js', '/changes', '/nowhere'])
      expect((await ask('GET', target, {})).status).toBe(403);
    const { cookie: _none, ...others } = asPage();
    expect((await post('host.state', others)).status).toBe(403);
  });

  test('a wrong token, an empty one, one of another start and the token as a cookie are refused', async () => {
    const token = new URL(door.url).searchParams.get('token') ?? '';
    for (const wrong of ['', 'x', `${token}x`, token.slice(1), token.toLowerCase()])
      expect((await ask('GET', `/?token=${wrong}`, {})).status).toBe(403);
    expect((await post('host.state', { ...asPage(), cookie: `regang-${door.port}=${token}` })).status).toBe(
      403,
    );
  });

  test('with the cookie the page and its files are served, and only GET and POST are', async () => {
    expect((await ask('GET', '/', { cookie })).body).toBe('<title>Regang</title>');
    expect((await ask('GET', '/assets/main-Ab3_x9Zq.js', { cookie })).status).toBe(200);
    for (const method of ['PUT', 'DELETE', 'OPTIONS', 'PATCH'])
      expect((await ask(method, '/', asPage())).status).toBe(405);
  });

  test('any other Host is refused with the cookie too: localhost, a name that resolves here, another port', async () => {
    for (const other of [
      'localhost',
      `localhost:${door.port}`,
      'rebind.example',
      `rebind.example:${door.port}`,
      '127.0.0.1',
      '127.0.0.1:1',
      'x',
    ])
      expect((await ask('GET', '/', { cookie, host: other })).status).toBe(403);
  });

  test('any other Origin is refused, and a call without one', async () => {
    for (const origin of [
      'http://example.com',
      'null',
      `https://127.0.0.1:${door.port}`,
      `http://localhost:${door.port}`,
      'http://127.0.0.1',
      `${here}.example.com`,
    ])
      expect((await post('host.state', { ...asPage(), origin })).status).toBe(403);
    const { origin: _none, ...others } = asPage();
    expect((await post('host.state', others)).status).toBe(403);
  });

  test('it listens on 127.0.0.1 and on no other address of the machine', async () => {
    // Were it on all addresses, the same port could not be taken on another one.
    const other = createServer();
    await new Promise<void>((resolve, reject) => {
      other.once('error', reject);
      other.listen({ host: '127.0.0.2', port: door.port, exclusive: true }, resolve);
    }).catch((error: NodeJS.ErrnoException) => {
      // Platforms without that address say so; that says nothing about the door.
      if (error.code !== 'EADDRNOTAVAIL') throw error;
    });
    await new Promise<void>((resolve) => (other.listening ? other.close(() => resolve()) : resolve()));
  });
});

describe('calls', () => {
  test('a call is answered with its value, 200 and never kept', async () => {
    const got = await post('host.state', asPage());
    expect(got.status).toBe(200);
    expect(got.headers['cache-control']).toBe('no-store');
    expect(JSON.parse(got.body)).toMatchObject({ ok: true, value: { door: 'local', book: { name: 'one' } } });
  });

  test('a refusal is 200 too, with its code', async () => {
    const got = await post(
      'test.add',
      asPage(),
      JSON.stringify({ commandId: 'command-1', code: 'A', kind: 'x' }),
    );
    expect(got.status).toBe(200);
    expect(JSON.parse(got.body)).toMatchObject({ ok: false, error: { code: 'bad-input', field: 'kind' } });
    expect(JSON.parse((await post('no.such', asPage())).body)).toMatchObject({
      error: { code: 'unknown-procedure' },
    });
  });

  test('a body that is not JSON, or is called something else, is 400', async () => {
    expect((await post('host.state', asPage(), '{')).status).toBe(400);
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data', ''])
      expect((await post('host.state', { ...asPage(), 'content-type': type })).status).toBe(400);
  });

  test('a body over 4 MiB is 413; a file to import may have up to 64, a photo of 12 MiB goes in as text', async () => {
    const body = JSON.stringify({ text: 'x'.repeat(5 * 1024 * 1024) });
    expect((await post('test.add', asPage(), body)).status).toBe(413);
    expect((await post('import.file', asPage(), body)).status).toBe(200);
    const mebi = 1024 * 1024;
    expect((await post('attachment.add', asPage(), photo(12 * mebi))).status).toBe(200);
    expect((await post('attachment.add', asPage(), photo(13 * mebi))).status).toBe(413);
  });

  test('addresses beside /call/NAME are 404', async () => {
    for (const target of [
      '/call/',
      '/call/../host.state',
      '/call/a/b',
      '/Call/host.state',
      '/call/%68ost.state',
      '/',
    ])
      expect((await ask('POST', target, asPage(), '{}')).status).toBe(404);
  });
});

describe('the page', () => {
  test('the policy allows the page itself and nothing else, on every answer', async () => {
    for (const target of ['/', '/assets/main-Ab3_x9Zq.js', '/nowhere']) {
      const { headers } = await ask('GET', target, { cookie });
      expect(headers['content-security-policy']).toBe(
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; font-src 'self'; " +
          "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
      );
      expect(headers['x-content-type-options']).toBe('nosniff');
      expect(headers['referrer-policy']).toBe('no-referrer');
    }
  });

  test('files named by their digest are kept, the page itself is not', async () => {
    expect((await ask('GET', '/assets/main-Ab3_x9Zq.js', { cookie })).headers['cache-control']).toContain(
      'immutable',
    );
    expect((await ask('GET', '/', { cookie })).headers['cache-control']).toBe('no-store');
  });

  test('a navigation to an unknown path gets the page; a file that is not there is 404', async () => {
    const navigation = { cookie, 'sec-fetch-mode': 'navigate' };
    expect((await ask('GET', '/board', navigation)).body).toBe('<title>Regang</title>');
    expect((await ask('GET', '/assets/gone.js', navigation)).status).toBe(404);
    expect((await ask('GET', '/board', { cookie })).status).toBe(404);
  });

  test('no way of writing two dots leads out of the folder', async () => {
    for (const target of [
      '/../secret.html',
      '/%2e%2e/secret.html',
      '/..%2fsecret.html',
      '/..%5csecret.html',
      '/assets/..%2f..%2fsecret.html',
      '/.%2e/secret.html',
    ]) {
      const got = await ask('GET', target, { cookie, 'sec-fetch-mode': 'navigate' });
      expect(got.body).not.toContain('secret');
      expect(got.status).toBe(404);
    }
  });

  test('a request line that is no HTTP ends that connection and not the door', async () => {
    await new Promise<void>((resolve) => {
      const socket = connect(door.port, '127.0.0.1', () => socket.write('\u0000\u0001 nonsense\r\n\r\n'));
      socket.on('close', () => resolve());
      socket.on('error', () => resolve());
      socket.resume();
    });
    expect((await ask('GET', '//', { cookie })).status).toBe(404);
    expect((await ask('GET', '/', { cookie })).status).toBe(200);
  });
});

describe('changes', () => {
  test('an open stream hears of each command, with the change number', async () => {
    const stream = await openStream();
    await post('test.add', asPage(), JSON.stringify({ commandId: 'command-9', code: 'NORTH', kind: 'yard' }));
    const heard = await stream.next('event: changed');
    expect(heard).toMatch(/event: changed\ndata: \{"changeNumber":\d+\}\n\n/u);
    stream.end();
  });

  test('the door says that it is empty when the last stream is gone for its time, and not before a first came', async () => {
    let empty = 0;
    const { promise: isEmpty, resolve: told } = Promise.withResolvers<void>();
    const before = door;
    const onEmpty = (): void => {
      empty += 1;
      told();
    };
    door = await openLocalDoor({ host, pages, port: 0, emptyAfterMs: 40, onEmpty });
    const kept = [cookie, here] as const;
    here = `http://127.0.0.1:${door.port}`;
    const first = await ask('GET', new URL(door.url).pathname + new URL(door.url).search, {});
    cookie = String(first.headers['set-cookie']?.[0]?.split(';')[0]);
    await new Promise((resolve) => setTimeout(resolve, 120));
    expect(empty).toBe(0);
    const one = await openStream();
    const two = await openStream();
    one.end();
    await new Promise((resolve) => setTimeout(resolve, 120));
    expect(empty).toBe(0);
    two.end();
    await isEmpty;
    expect(empty).toBe(1);
    await door.close();
    [cookie, here] = kept;
    door = before;
  });
});

function openStream(): Promise<{
  readonly next: (text: string) => Promise<string>;
  readonly end: () => void;
}> {
  return new Promise((resolve, reject) => {
    const request = httpRequest(
      { host: '127.0.0.1', port: door.port, path: '/changes', headers: { cookie }, agent: false },
      (response) => {
        expect(response.headers['content-type']).toBe('text/event-stream');
        let text = '';
        response.setEncoding('utf8');
        const next = (wanted: string): Promise<string> =>
          new Promise((found) => {
            const look = (): void => {
              if (text.includes(wanted)) found(text);
            };
            response.on('data', look);
            look();
          });
        response.on('data', (chunk: string) => (text += chunk));
        response.on('error', () => undefined);
        resolve({ next, end: () => request.destroy() });
      },
    );
    request.once('error', reject);
    request.end();
  });
}
