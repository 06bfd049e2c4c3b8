// The local door: the built page and the same calls over HTTP, on this machine only, for as long as one
// of its pages is open.
import { createServer } from 'node:http';
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { readCallBody } from './call-body.ts';
import { createChangeStreams } from './change-streams.ts';
import type { ChangeStreams } from './change-streams.ts';
import { createDoorGuard } from './door-guard.ts';
import type { DoorGuard } from './door-guard.ts';
import { html, json, plain, send } from './door-replies.ts';
import type { Reply } from './door-replies.ts';
import type { Host } from './host.ts';
import { pageFile } from './page-files.ts';

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

export async function openLocalDoor(options: LocalDoorOptions): Promise<LocalDoor> {
  const { host, pages } = options;
  const guard = createDoorGuard();
  let emptyTimer: NodeJS.Timeout | undefined;
  const streams = createChangeStreams((open) => {
    clearTimeout(emptyTimer);
    if (open === 0) emptyTimer = setTimeout(options.onEmpty, options.emptyAfterMs);
  });
  const stopListening = host.onChanged(streams.send);
  const parts = { host, pages, guard, streams };
  const server = createServer((request, response) => {
    replyTo(parts, request, response, port)
      .then((reply) => (reply === null ? undefined : send(response, reply)))
      .catch((error: unknown) => {
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
    stopListening();
    const closed = new Promise<void>((resolve) => {
      server.close(() => resolve());
    });
    streams.endAll();
    server.closeAllConnections();
    await closed;
    // The last of them to end has set it anew.
    clearTimeout(emptyTimer);
  }

  return { url: `http://127.0.0.1:${port}/?token=${guard.token}`, port, close };
}

interface Parts {
  readonly host: Host;
  readonly pages: string;
  readonly guard: DoorGuard;
  readonly streams: ChangeStreams;
}

/** Null where the response is kept open as a stream of changes. */
async function replyTo(
  parts: Parts,
  request: IncomingMessage,
  response: ServerResponse,
  port: number,
): Promise<Reply | null> {
  const { guard, streams } = parts;
  const objection = guard.objection(request, port);
  if (objection !== null) return plain(403, objection);
  const url = addressOf(request.url ?? '', port);
  if (url === null) return plain(404, nothingThere);
  const token = url.searchParams.get('token');
  if (request.method === 'GET' && token !== null) return exchange(guard, token, port);
  if (!guard.hasCookie(request.headers)) return plain(403, needsToken);
  if (request.method === 'POST') return call(parts.host, request, url.pathname);
  if (request.method !== 'GET') return plain(405, 'Only GET and POST.');
  if (url.pathname !== '/changes') return page(parts.pages, request, url.pathname);
  streams.add(response);
  return null;
}

/** A page of our own that goes on to the app: a redirect could count as coming from elsewhere, without the cookie. */
function exchange(guard: DoorGuard, token: string, port: number): Reply {
  if (!guard.isToken(token)) return plain(403, needsToken);
  const body =
    '<!doctype html><meta charset="utf-8"><meta http-equiv="refresh" content="0;url=/"><link rel="icon" href="/icon.svg"><title>Regang</title>';
  return { ...html(body), headers: { 'set-cookie': guard.setCookie(port) } };
}

async function call(host: Host, request: IncomingMessage, urlPath: string): Promise<Reply> {
  const name = /^\/call\/([a-z][a-zA-Z.-]{0,60})$/u.exec(urlPath)?.[1];
  if (name === undefined) return plain(404, nothingThere);
  const body = await readCallBody(request, name);
  if (body.ok) return json(200, await host.call(name, body.value));
  return json(body.error.code === 'too-large' ? 413 : 400, body);
}

async function page(pages: string, request: IncomingMessage, urlPath: string): Promise<Reply> {
  const file = await pageFile(pages, urlPath === '/' ? '/index.html' : urlPath);
  if (file !== null) {
    const caching = file.keep ? 'private, max-age=31536000, immutable' : 'no-store';
    return { status: 200, type: file.type, body: file.body, headers: { 'cache-control': caching } };
  }
  const isNavigation = request.headers['sec-fetch-mode'] === 'navigate' && !/[.%\\]/u.test(urlPath);
  const index = isNavigation ? await pageFile(pages, '/index.html') : null;
  return index === null ? plain(404, nothingThere) : html(index.body);
}

/** Put together and not resolved, so that a target such as `//elsewhere/` stays a path of this door. */
function addressOf(target: string, port: number): URL | null {
  const address = `http://127.0.0.1:${port}${target}`;
  return target.startsWith('/') && URL.canParse(address) ? new URL(address) : null;
}

const needsToken =
  'This page opens with the address that was printed when the app was started; it holds a token.';
const nothingThere = 'There is no such address.';
