// The one-time code by which a phone signs in: eight digits, good once and for ten minutes, and closed after five
// wrong tries. Time is counted by a clock that nobody can set back.
import { randomInt } from 'node:crypto';
import { answer, refuse, type Answer } from '../answer.ts';
import { sameSecret } from './door-guard.ts';

export const codeMs = 10 * 60_000;
export const mostWrongTries = 5;

export type CodeState =
  | {
      readonly state: 'open';
      readonly digits: string;
      readonly secondsLeft: number;
      readonly wrongTries: number;
    }
  | { readonly state: 'used' | 'expired' | 'closed' };

export class PhoneCode {
  readonly #elapsedMs: () => number;
  #digits = '';
  #until = 0;
  #wrongTries = 0;
  #state: CodeState['state'] = 'expired';

  /** @param elapsedMs a clock that only goes forward */
  constructor(elapsedMs: () => number) {
    this.#elapsedMs = elapsedMs;
  }

  /** A new one takes the place of any that was open. */
  renew(): void {
    this.#digits = String(randomInt(100_000_000)).padStart(8, '0');
    this.#until = this.#elapsedMs() + codeMs;
    this.#wrongTries = 0;
    this.#state = 'open';
  }

  state(): CodeState {
    const left = this.#until - this.#elapsedMs();
    if (this.#state === 'open' && left <= 0) this.#state = 'expired';
    if (this.#state !== 'open') return { state: this.#state };
    const secondsLeft = Math.ceil(left / 1000);
    return { state: 'open', digits: this.#digits, secondsLeft, wrongTries: this.#wrongTries };
  }

  /** Takes the code if it is the right one; it is then used up. */
  take(given: string): Answer<null> {
    const { state } = this.state();
    if (state !== 'open')
      return refuse('no-code', 'No code is open.', {
        field: 'code',
        hint: 'Maybe ask for a new one where the app is open.',
      });
    if (sameSecret(given.replaceAll(/\D/gu, ''), this.#digits)) {
      this.#state = 'used';
      return answer(null);
    }
    this.#wrongTries += 1;
    if (this.#wrongTries < mostWrongTries)
      return refuse('wrong-code', 'That is not the code.', {
        field: 'code',
        hint: `Maybe read it again: ${mostWrongTries - this.#wrongTries} more wrong tries close it.`,
      });
    this.#state = 'closed';
    return refuse('code-closed', `The code was tried wrongly ${mostWrongTries} times and is closed.`, {
      field: 'code',
      hint: 'Maybe ask for a new one where the app is open.',
    });
  }
}
