// The phones that signed in at a phone door: each holds a random secret as a cookie, is listed with the name entered
// on it, and can be ended. They end with the door, and after a long shift by themselves.
import { randomBytes, randomUUID } from 'node:crypto';
import type { IncomingHttpHeaders } from 'node:http';
import { cookieValues, sameSecret, setCookie } from './door-guard.ts';

const sessionMs = 16 * 3_600_000;
export const mostSessions = 20;

export interface PhoneSession {
  readonly id: string;
  readonly name: string;
  readonly since: string;
  lastSeen: string;
  /** What came from it: entries, and lines in them. */
  entries: number;
  lines: number;
}

export class PhoneSessions {
  readonly #elapsedMs: () => number;
  #held: readonly { readonly session: PhoneSession; readonly secret: string; readonly until: number }[] = [];

  constructor(elapsedMs: () => number) {
    this.#elapsedMs = elapsedMs;
  }

  /** The header that gives the phone its cookie; null where there are too many phones. */
  begin(name: string, at: string, port: number): string | null {
    if (this.list().length >= mostSessions) return null;
    const secret = randomBytes(32).toString('base64url');
    const session = { id: randomUUID(), name, since: at, lastSeen: at, entries: 0, lines: 0 };
    this.#held = [...this.#held, { session, secret, until: this.#elapsedMs() + sessionMs }];
    // Kept by the phone when its browser is closed, which phones do of their own accord.
    return `${setCookie(cookieName(port), secret)}; Max-Age=${sessionMs / 1000}`;
  }

  of(headers: IncomingHttpHeaders, port: number): PhoneSession | null {
    const given = cookieValues(headers, new RegExp(`^${cookieName(port)}$`, 'u'));
    this.#dropOld();
    const held = this.#held.find(({ secret }) => given.some((value) => sameSecret(value, secret)));
    return held?.session ?? null;
  }

  list(): readonly PhoneSession[] {
    this.#dropOld();
    return this.#held.map(({ session }) => session);
  }

  /** Whether there was one of that id. */
  end(id: string): boolean {
    const before = this.#held.length;
    this.#held = this.#held.filter(({ session }) => session.id !== id);
    return this.#held.length < before;
  }

  #dropOld(): void {
    this.#held = this.#held.filter(({ until }) => until > this.#elapsedMs());
  }
}

function cookieName(port: number): string {
  return `regang-phone-${port}`;
}
