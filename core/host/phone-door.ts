// The phone door: a small page and a few calls on one network address that a person chose, for phones that gave the
// one-time code. The page itself is no secret; everything about the job needs a session.
import type { IncomingMessage } from 'node:http';
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { badInput } from './bad-input.ts';
import { calledName, readCallBody } from './call-body.ts';
import { objection } from './door-guard.ts';
import { json, nothingThere, plain } from './door-replies.ts';
import type { Reply } from './door-replies.ts';
import { openDoorServer } from './door-server.ts';
import { addressOf, pageReply } from './page-reply.ts';
import { askOfPhone, type CallCore } from './phone-asks.ts';
import { PhoneCode } from './phone-code.ts';
import { mostSessions, PhoneSessions } from './phone-sessions.ts';

export interface PhoneDoorOptions {
  readonly call: CallCore;
  /** The folder of the phone's page. */
  readonly pages: string;
  readonly address: string;
  readonly port: number;
  readonly job: string;
  /** Now, ISO 8601 with offset. */
  readonly now: () => string;
  /** A clock that only goes forward. */
  readonly elapsedMs: () => number;
}

export interface PhoneDoor {
  readonly url: string;
  readonly port: number;
  readonly code: PhoneCode;
  readonly sessions: PhoneSessions;
  readonly close: () => Promise<void>;
}

/** Hundreds of lines fit; nothing else that a phone sends is larger. */
const largestBytes = 256 * 1024;
const limits = { connections: 100, requestMs: 30_000 };

/** A name is kept with every entry, beside what the clock of the phone said. */
export const longestName = 20;

export async function openPhoneDoor(options: PhoneDoorOptions): Promise<PhoneDoor> {
  const code = new PhoneCode(options.elapsedMs);
  const sessions = new PhoneSessions(options.elapsedMs);
  const parts = { ...options, code, sessions };
  const server = await openDoorServer({
    address: options.address,
    port: options.port,
    reply: (request, _response, port) => replyTo(parts, request, port),
    limits,
  });
  code.renew();
  const url = `http://${options.address}:${server.port}/`;
  return { url, port: server.port, code, sessions, close: server.close };
}

interface Parts extends PhoneDoorOptions {
  readonly code: PhoneCode;
  readonly sessions: PhoneSessions;
}

async function replyTo(parts: Parts, request: IncomingMessage, port: number): Promise<Reply> {
  const here = `${parts.address}:${port}`;
  const objected = objection(request, here);
  if (objected !== null) return plain(403, objected);
  const url = addressOf(request.url ?? '', here);
  if (url === null) return plain(404, nothingThere);
  if (request.method === 'GET') return pageReply(parts.pages, 'phone.html', request, url.pathname);
  if (request.method !== 'POST') return plain(405, 'Only GET and POST.');
  const name = calledName(url.pathname);
  if (name === null) return plain(404, nothingThere);
  const session = parts.sessions.of(request.headers, port);
  // Refused before its body is read: a stranger's is not looked at.
  if (session === null && name !== 'phone.sign-in') return json(401, signedOut);
  const body = await readCallBody(request, largestBytes);
  if (!body.ok) return json(body.error.code === 'too-large' ? 413 : 400, body);
  if (name === 'phone.sign-in') return signIn(parts, body.value, port);
  if (session === null) return json(401, signedOut);
  const at = parts.now();
  session.lastSeen = at;
  return json(200, await askOfPhone({ call: parts.call, job: parts.job, session, at }, name, body.value));
}

const signedOut = refuse('signed-out', 'This phone is not signed in, or was signed out.', {
  hint: 'Maybe ask for a new code where the app is open. What was counted stays on this phone.',
});

const signingIn = z.strictObject({
  code: z.string().max(40),
  name: z
    .string()
    .trim()
    .min(1, 'a name is wanted')
    .max(longestName, `a name of at most ${longestName} letters`),
});

function signIn(parts: Parts, input: unknown, port: number): Reply {
  const parsed = signingIn.safeParse(input);
  // Looked at before the code, which would be used up.
  if (!parsed.success) return json(200, badInput(parsed.error, input));
  const full = parts.sessions.list().length >= mostSessions;
  if (full) return json(200, tooMany);
  const taken = parts.code.take(parsed.data.code);
  if (!taken.ok) return json(200, taken);
  const cookie = parts.sessions.begin(parsed.data.name, parts.now(), port);
  if (cookie === null) return json(200, tooMany);
  const { job } = parts;
  return { ...json(200, answer({ job, name: parsed.data.name })), headers: { 'set-cookie': cookie } };
}

const tooMany = refuse('too-many-phones', `${mostSessions} phones are signed in.`, {
  hint: 'Maybe end one of them where the app is open.',
});
