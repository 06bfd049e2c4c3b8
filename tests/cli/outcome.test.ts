import { describe, expect, test } from 'vitest';
import { bug, done, outcomeOf, refused } from '../../core/cli/outcome.ts';

describe('exit codes', () => {
  test('0 where it is done, 2 where the input is refused, 1 where the machine or the app is in the way', () => {
    expect(done({}).exitCode).toBe(0);
    expect(refused({ code: 'bad-input', message: 'x' }).exitCode).toBe(2);
    for (const code of ['bug', 'disk-full', 'node-too-old', 'sqlite-not-loaded'])
      expect(refused({ code, message: 'x' }).exitCode).toBe(1);
    expect(bug(new Error('x'))).toEqual({ document: { error: { code: 'bug', message: 'x' } }, exitCode: 1 });
  });

  test('an answer becomes its value or {"error":…} and nothing else', () => {
    expect(outcomeOf({ ok: true, value: 5 })).toEqual({ document: 5, exitCode: 0 });
    const error = { code: 'no', message: 'No.', field: 'x' };
    expect(outcomeOf({ ok: false, error })).toEqual({ document: { error }, exitCode: 2 });
  });
});
