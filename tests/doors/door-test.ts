// Registers a test for a door. Where its runtime is not installed the test passes with a message that says
// so; where CI is set a missing runtime is a failure, since CI has both.
import process from 'node:process';
import { test } from 'vitest';
import { doorMissing } from './doors.ts';
import type { DoorKind } from './doors.ts';

export function doorTest(kind: DoorKind, name: string, work: () => Promise<void>): void {
  test(name, async () => {
    const missing = doorMissing(kind);
    if (missing === null) {
      await work();
      return;
    }
    if (process.env['CI'] === 'true') throw new Error(`CI must have the ${kind} door, but ${missing}.`);
    console.log(`Not looked at, because ${missing}: ${name}`);
  });
}
