// The questions of a day's end, asked of the demo job.
import { expect } from 'vitest';
import { type DemoHost, job } from './demo-host.ts';

export async function askOfDayEnd(ask: DemoHost['ask']): Promise<void> {
  const date = '2026-03-03';
  const { lines, report, reasons } = await ask('dayend.read', { job, date });
  expect(report).toBeNull();
  expect(reasons).toHaveLength(8);
  // W1 is poured and W2 is set on the second day of the plan.
  expect(lines.map(({ kind, pour }) => `${kind} ${pour}`)).toEqual(
    expect.arrayContaining(['pour P01', 'set P02']),
  );
  expect((await ask('dayend.misses', { job })).weeks).toEqual([]);
  expect((await ask('dayend.rates', { job })).rates).toEqual([]);
}
