// What a job keeps around its plan: put, replaced, removed; records are only ever added.
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { BookWriter } from '../../core/book/book.ts';
import type { JobEntry } from '../../core/plan/job-entries.ts';
import { aFolder, aYard, done, now, rawHandle, run } from './a-book.ts';

const job = 'J1';
const hold: JobEntry<'pour-facts'> = {
  dateOpen: true,
  hold: null,
  reach: null,
  standsOn: null,
  laidDown: null,
  stripApproval: null,
};
const telling: JobEntry<'telling'> = {
  at: now,
  who: 'tester',
  until: now,
  instructions: [{ kind: 'follow', from: 'P1/A1', to: 'P2/A1' }],
  released: [],
};

async function aJob(writer: BookWriter): Promise<void> {
  await writer.putJob({
    code: job,
    name: 'A job',
    timeZone: 'America/New_York',
    currency: 'USD',
    units: 'us',
    planFrom: '2026-03-02',
    shifts: { timeZone: 'America/New_York', days: [1, 2, 3, 4, 5], start: '07:00', end: '15:30' },
    crew: 4,
    labourPerHCents: 5000,
    flyOnH: 1,
    regangBaseH: 2,
    cleanH: 12,
  });
}

describe('Entries of a job', () => {
  test('are read back in the order in which they were first entered, each by its shape', async () => {
    const book = await aYard(path.join(aFolder(), 'a.regang'));
    await done(book, aJob);
    await done(book, (writer) => writer.putJobEntry({ job, kind: 'pour-facts', id: 'P2' }, hold));
    await done(book, (writer) => writer.putJobEntry({ job, kind: 'pour-facts', id: 'P1' }, hold));
    const changed = { ...hold, dateOpen: false };
    await done(book, (writer) => writer.putJobEntry({ job, kind: 'pour-facts', id: 'P2' }, changed));
    const kept = await book.read((reader) => reader.jobEntries(job, 'pour-facts'));
    const entered = { at: '2026-03-02T07:00:00-05:00', who: 'tester' };
    expect(kept).toEqual([
      { id: 'P2', number: 1, entered, entry: changed },
      { id: 'P1', number: 2, entered, entry: hold },
    ]);
    await done(book, (writer) => writer.removeJobEntry({ job, kind: 'pour-facts', id: 'P2' }));
    const left = await book.read((reader) => reader.jobEntries(job, 'pour-facts'));
    expect(left.map(({ id }) => id)).toEqual(['P1']);
  });

  test('that are records are never changed or removed, whoever tries', async () => {
    const file = path.join(aFolder(), 'a.regang');
    const book = await aYard(file);
    await done(book, aJob);
    await done(book, (writer) => writer.putJobEntry({ job, kind: 'telling', id: 'T1' }, telling));
    const again = { ...telling, who: 'somebody else' };
    const put = await run(book, async (writer) => {
      await writer.putJobEntry({ job, kind: 'telling', id: 'T1' }, again);
      return { ok: true, value: null };
    });
    expect(put).toMatchObject({ ok: false, error: { code: 'book-refused' } });
    await book.close();
    const handle = await rawHandle(file);
    expect(() => handle.prepare('DELETE FROM job_entry').run()).toThrow('never removed');
    handle.close();
  });
});
