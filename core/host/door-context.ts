// What the door knows and the core must be told: the time, and who asks.
import { userInfo } from 'node:os';
import { Temporal } from 'temporal-polyfill';
import type { CommandContext } from '../procedures/procedure.ts';

/** Now with the machine's offset, and REGANG_WHO or the name under which the user is signed in. */
export function doorContext(): CommandContext {
  const at = Temporal.Now.zonedDateTimeISO().toString({ timeZoneName: 'never', smallestUnit: 'millisecond' });
  return { at, who: process.env['REGANG_WHO'] ?? userName() };
}

function userName(): string {
  try {
    return userInfo().username;
  } catch {
    return 'unknown';
  }
}
