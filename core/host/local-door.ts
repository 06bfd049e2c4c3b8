// The local door: the built page and the same calls over HTTP, on this machine only, for as long as one
// of its pages is open.
import { createServer } from 'node:http';
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { readCallBody } from './call-body.ts';
import { createChangeStreams } from './change-streams.ts';
import { createDoorGuard } from './door-guard.ts';
import type { Host } from './host.ts';
import { pageFile } from './page-files.ts';
import { pageHeaders } from './page-policy.ts';

export interface LocalDoorOptions {
  readonly host: Host;
  /** The folder of the built page. */
  readonly pages: string;
  /** 0 takes any free port. */
  readonly port: number;
  /** After the last page is gone for this long, `onEmpty` is called. Never before the first page came. */
  readonly emptyAfterMs: number;
  readonly onEmpty: () => void;
}

export interface LocalDoor {
  /** The first address, with the token. */
  readonly url: string;
  readonly port: number;
  readonly close: () => Promise<void>;
}

interface Reply {
  readonly status: number;
  readonly type: string;
  readonly body: string | Buffer;
  readonly headers?: Readonly<Record<string, string>>;
}

export async function openLocalDoor(options: LocalDoorOptions): Promise<LocalDoor> {
  const { host, pages } = options;
  const guard = createDoorGuard();
  let emptyTimer: NodeJS.Timeout | undefined;
  const streams = createChangeStreams((open) => {
    clearTimeout(emptyTimer);
    if (open === 0) emptyTimer = setTimeout(options.onEmpty, options.emptyAfterMs);
  });
  const stopListening = host.onChanged(streams.send);

  async function handle(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const objection = guard.objection(request, port);
    if (objection !== null) return send(response, plain(403, objection));
    const url = addressOf(request.url ?? '', port);
    if (url === null) return send(response, plain(404, 'There is no such address.'));
    const token = url.searchParams.get('token');
    if (request.method === 'GET' && token !== null) return send(response, exchange(token));
    if (!guard.hasCookie(request.headers)) return send(response, plain(403, needsToken));
    if (request.method === 'POST') return send(response, await call(request, url.pathname));
    if (request.method !== 'GET') return send(response, plain(405, 'Only GET and POST.'));
    if (url.pathname === '/changes') return streams.add(response);
    return send(response, await page(request, url.pathname));
  }

  /** A page of our own that goes on to the app: a redirect could count as coming from elsewhere, without the cookie. */
  function exchange(token: string): Reply {
    if (!guard.isToken(token)) return plain(403, needsToken);
    const body =
      '<!doctype html><meta charset="utf-8"><meta http-equiv="refresh" content="0;url=/"><link rel="icon" href="/icon.svg"><title>Regang</title>';
    return { ...html(body), headers: { 'set-cookie': guard.setCookie(port) } };
  }

  async function call(request: IncomingMessage, urlPath: string): Promise<Reply> {
    const name = /^\/call\/([a-z][a-zA-Z.-]{0,60})$/u.exec(urlPath)?.[1];
    if (name === undefined) return plain(404, 'There is no such address.');
    const body = await readCallBody(request, name);
    if (body.ok) return json(200, await host.call(name, body.value));
    return json(body.error.code === 'too-large' ? 413 : 400, body);
  }

  async function page(request: IncomingMessage, urlPath: string): Promise<Reply> {
    const file = await pageFile(pages, urlPath === '/' ? '/index.html' : urlPath);
    if (file !== null) {
      const caching = file.keep ? 'private, max-age=31536000, immutable' : 'no-store';
      return { status: 200, type: file.type, body: file.body, headers: { 'cache-control': caching } };
    }
    const isNavigation = request.headers['sec-fetch-mode'] === 'navigate' && !/[.%\\]/u.test(urlPath);
    const index = isNavigation ? await pageFile(pages, '/index.html') : null;
    return index === null ? plain(404, 'There is no such address.') : html(index.body);
  }

  const server = createServer((request, response) => {
    handle(request, response).catch((error: unknown) => {
      console.error(`regang: a request failed: ${String(error)}`);
      if (response.headersSent) response.destroy();
      else send(response, plain(500, 'The request failed; the terminal says why.'));
    });
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen({ port: options.port, host: '127.0.0.1', exclusive: true }, resolve);
  });
  const { port } = server.address() as AddressInfo;

  async function close(): Promise<void> {
    clearTimeout(emptyTimer);
    stopListening();
    streams.endAll();
    clearTimeout(emptyTimer);
    const closed = new Promise<void>((resolve) => server.close(() => resolve()));
    server.closeAllConnections();
    await closed;
    clearTimeout(emptyTimer);
  }

  return { url: `http://127.0.0.1:${port}/?token=${guard.token}`, port, close };
}

const needsToken =
  'This page opens with the address that was printed when the app was started; it holds a token.';

/** Put together and not resolved, so that a target such as `//elsewhere/` stays a path of this door. */
function addressOf(target: string, port: number): URL | null {
  const address = `http://127.0.0.1:${port}${target}`;
  return target.startsWith('/') && URL.canParse(address) ? new URL(address) : null;
}

function send(response: ServerResponse, reply: Reply): void {
  response.writeHead(reply.status, {
    ...pageHeaders,
    'cache-control': 'no-store',
    ...reply.headers,
    'content-type': reply.type,
    'content-length': Buffer.byteLength(reply.body),
  });
  response.end(reply.body);
}

function plain(status: number, text: string): Reply {
  return { status, type: 'text/plain; charset=utf-8', body: `${text}\n` };
}

function html(body: string | Buffer): Reply {
  return { status: 200, type: 'text/html; charset=utf-8', body };
}

function json(status: number, value: unknown): Reply {
  return { status, type: 'application/json; charset=utf-8', body: JSON.stringify(value) };
}
