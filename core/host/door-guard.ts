// Who may speak to a door. Every page in every browser of this machine can reach 127.0.0.1, and what listens on a
// network is reached by more, so that each request must name this very address, come from a page of it, and carry
// the cookie for which a secret was exchanged: at the local door the token of this start.
import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingHttpHeaders, IncomingMessage } from 'node:http';

export interface DoorGuard {
  /** In the first address; good for as long as the door is open. */
  readonly token: string;
  readonly isToken: (given: string) => boolean;
  readonly hasCookie: (headers: IncomingHttpHeaders) => boolean;
  readonly setCookie: (port: number) => string;
  /** Why a request is not let in, or null. The token and the cookie are a question of their own. */
  readonly objection: (request: IncomingMessage, port: number) => string | null;
}

export function createDoorGuard(): DoorGuard {
  const token = randomBytes(32).toString('base64url');
  const cookie = randomBytes(32).toString('base64url');
  return {
    token,
    isToken: (given) => sameSecret(given, token),
    hasCookie: (headers) => cookieValues(headers, /^regang-\d+$/u).some((value) => sameSecret(value, cookie)),
    // Cookies do not tell ports apart: the name does, so that two doors do not take each other's away.
    setCookie: (port) => setCookie(`regang-${port}`, cookie),
    objection: (request, port) => objection(request, `127.0.0.1:${port}`),
  };
}

/** @param here the address and port at which the door is: nothing else is a name of it */
export function objection(request: IncomingMessage, here: string): string | null {
  const { headers } = request;
  if (headers.host !== here) return `The Host header must be ${here}.`;
  const origin = headers.origin;
  if (origin !== undefined && origin !== `http://${here}`) return `The Origin header must be http://${here}.`;
  if (request.method !== 'GET' && origin === undefined) return 'The Origin header is missing.';
  return null;
}

/** It is kept from scripts, and no page from elsewhere sends it along. */
export function setCookie(name: string, secret: string): string {
  return `${name}=${secret}; HttpOnly; SameSite=Strict; Path=/`;
}

export function cookieValues(headers: IncomingHttpHeaders, name: RegExp): readonly string[] {
  return (headers.cookie ?? '')
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part.includes('=') && name.test(part.slice(0, part.indexOf('='))))
    .map((part) => part.slice(part.indexOf('=') + 1));
}

/** Digests are of one length, so that the time taken says nothing about the secret. */
export function sameSecret(given: string, secret: string): boolean {
  return timingSafeEqual(digest(given), digest(secret));
}

function digest(text: string): Buffer {
  return createHash('sha256').update(text).digest();
}
