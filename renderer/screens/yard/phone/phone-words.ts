// The words of the phone door: how far an address reaches, and how the code stands.
import { never } from '../../../../core/answer.ts';
import type { HostOutput } from '../../../client/core.tsx';

export type PhoneState = HostOutput<'phone.state'>;
export type OpenPhoneDoor = NonNullable<PhoneState['door']>;
export type OwnAddress = PhoneState['addresses'][number];

export function reachWords(reach: OwnAddress['reach']): string {
  switch (reach) {
    case 'private':
      return 'a private network: whoever is on it can reach this address';
    case 'self-given':
      return 'no network gave this address: only what is plugged in directly reaches it';
    case 'public':
      return 'not a private network: it may be reached from outside the site';
    case 'this-machine':
      return 'this machine only: no phone reaches it; to try the page out';
    default:
      return never(reach);
  }
}

/** "1234 5678", as it is read aloud. */
export function spokenDigits(digits: string): string {
  return `${digits.slice(0, 4)} ${digits.slice(4)}`;
}

/** "9:05" */
export function minutesLeft(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

export function codeWords(code: OpenPhoneDoor['code']): string {
  switch (code.state) {
    case 'open':
      return code.wrongTries === 0
        ? `good once, for ${minutesLeft(code.secondsLeft)} more`
        : `good once, for ${minutesLeft(code.secondsLeft)} more; tried wrongly ${code.wrongTries} of 5 times`;
    case 'used':
      return 'A phone signed in with it. Each phone needs a code of its own.';
    case 'expired':
      return 'The code ran out after ten minutes.';
    case 'closed':
      return 'The code was tried wrongly five times and is closed. Is everybody on this network known?';
    default:
      return never(code);
  }
}
