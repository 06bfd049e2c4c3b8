// The local door: the built page and the same calls over HTTP, on this machine only, for as long as one
// of its pages is open.
import type { IncomingMessage, ServerResponse } from 'node:http';
import { calledName, readCallBody } from './call-body.ts';
import { createChangeStreams } from './change-streams.ts';
import type { ChangeStreams } from './change-streams.ts';
import { createDoorGuard } from './door-guard.ts';
import type { DoorGuard } from './door-guard.ts';
import { html, json, nothingThere, plain } from './door-replies.ts';
import type { Reply } from './door-replies.ts';
import { openDoorServer } from './door-server.ts';
import type { Host } from './host.ts';
import { addressOf, pageReply } from './page-reply.ts';

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
  const parts = { host, pages, guard, streams };
  const server = await openDoorServer({
    address: '127.0.0.1',
    port: options.port,
    reply: (request, response, port) => replyTo(parts, request, response, port),
  });
  const { port } = server;
  const stopListening = host.onChanged(streams.send);

  async function close(): Promise<void> {
    stopListening();
    streams.endAll();
    await server.close();
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
  const url = addressOf(request.url ?? '', `127.0.0.1:${port}`);
  if (url === null) return plain(404, nothingThere);
  const token = url.searchParams.get('token');
  if (request.method === 'GET' && token !== null) return exchange(guard, token, port);
  if (!guard.hasCookie(request.headers)) return plain(403, needsToken);
  if (request.method === 'POST') return call(parts.host, request, url.pathname);
  if (request.method !== 'GET') return plain(405, 'Only GET and POST.');
  if (url.pathname !== '/changes') return pageReply(parts.pages, 'index.html', request, url.pathname);
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

/** An imported file comes inside its call; anything else is small. */
const largestOf: Readonly<Record<string, number>> = {
  'import.file': 64 * 1024 * 1024,
  'attachment.add': 17 * 1024 * 1024,
};
const largestBytes = 4 * 1024 * 1024;

async function call(host: Host, request: IncomingMessage, urlPath: string): Promise<Reply> {
  const name = calledName(urlPath);
  if (name === null) return plain(404, nothingThere);
  const body = await readCallBody(request, largestOf[name] ?? largestBytes);
  if (body.ok) return json(200, await host.call(name, body.value));
  return json(body.error.code === 'too-large' ? 413 : 400, body);
}

const needsToken =
  'This page opens with the address that was printed when the app was started; it holds a token.';
