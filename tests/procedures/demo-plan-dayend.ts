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
  const steps = lines.map(({ id, kind, pour }) =>
    kind === 'pour' && pour === 'P01' ? { id, done: false, reason: 'concrete' as const } : { id, done: true },
  );
  const preview = await ask('dayend.preview', { job, date, steps });
  expect(preview.moves).toEqual([
    {
      pour: 'P01',
      what: 'pour',
      side: null,
      from: '2026-03-03T13:00:00-05:00',
      to: '2026-03-04T13:00:00-05:00',
      because: 'not-done',
    },
  ]);
  const end = { job, date, steps, remark: null };
  const saved = await ask('dayend.save', { commandId: 'demo-day-end-1', ...end });
  expect(saved).toMatchObject({ report: '2026-03-03 1', moved: 1, findings: [] });
  const [week] = (await ask('dayend.misses', { job })).weeks;
  expect(week).toMatchObject({ week: '2026-03-02', daysEnded: 1, planned: lines.length });
  await ask('dayend.takeback', { commandId: 'demo-day-end-2', job, report: saved.report });
  expect((await ask('dayend.misses', { job })).weeks).toEqual([]);
  expect((await ask('dayend.read', { job, date })).lines).toEqual(lines);
}

export async function askOfDaySheets(ask: DemoHost['ask']): Promise<void> {
  const week = await ask('sheet.week', { id: `${job}@2026-03-02` });
  expect(week.foot).toBe('Week plan Mon 2 Mar to Sun 15 Mar · revision 1 · TB26 Tarrowmere Basin');
  const day = await ask('sheet.day', { id: `${job}@2026-03-03` });
  expect(day.title).toBe('Day sheet TB26 2026-03-03 revision 1');
  const of = { job, of: '2026-03-02', given: ['The foreman', 'The steel crew'] };
  expect((await ask('sheet.printed', { commandId: 'demo-print-1', kind: 'week', ...of })).revision).toBe(1);
  expect((await ask('sheet.prints', { job })).prints).toMatchObject([
    { id: 'demo-print-1', kind: 'week', of: '2026-03-02', revision: 1, given: of.given },
  ]);
}
