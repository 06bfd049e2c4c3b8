// The questions of notes, figures, attachments and what is owed, each asked once of the demo job.
import { expect } from 'vitest';
import type { DemoHost } from './demo-host.ts';

const text = {
  from: 'TFH',
  to: 'ENN',
  job: null,
  arrivedAt: null,
  leftAt: null,
  vehicle: null,
  signedHere: null,
  signedThere: null,
  protest: null,
  remark: null,
};
const line = { component: 'LK', owner: 'TFH', condition: 'ready' as const, container: null, remark: null };

export async function askOfPapers(ask: DemoHost['ask']): Promise<void> {
  const { notes, nextNumbers } = await ask('note.list', {});
  // The demo's own: D-099 four short, R-207 two fewer at the depot, D-101 due.
  expect(notes.map(({ number, state, claims }) => [number, state, claims])).toEqual([
    ['D-099', 'booked', 1],
    ['D-101', 'draft', 0],
    ['R-207', 'booked', 1],
  ]);
  const number = nextNumbers['delivery'] ?? '';
  expect(number).toBe('D-102');
  const draft = (id: string, more: object) => ({
    commandId: `save-${id}`,
    note: {
      id,
      kind: 'delivery' as const,
      number,
      expectedAt: null,
      version: 0,
      ...text,
      lines: [],
      ...more,
    },
  });
  const lines = [{ ...line, sent: 4, counted: 4 }];
  await ask('note.save', draft('demo-note-1', { lines }));
  await ask('note.book', { commandId: 'demo-note-book', note: 'demo-note-1' });
  const read = await ask('note.read', { note: 'demo-note-1' });
  expect(read.movements).toHaveLength(1);
  expect((await ask('sheet.delivery', { id: 'demo-note-1' })).title).toBe('Delivery note D-102');
  await ask('note.reverse', { commandId: 'demo-note-back', note: 'demo-note-1', remark: 'Tried' });
  await ask('note.save', draft('demo-note-2', { number: 'D-103' }));
  await ask('note.drop', { commandId: 'demo-note-drop', note: 'demo-note-2' });
  const going = { kind: 'return' as const, number: 'R-208', from: 'ENN', to: 'TFH', lines };
  await ask('note.save', draft('demo-note-3', going));
  await ask('note.book', { commandId: 'demo-note-go', note: 'demo-note-3' });
  const told = await ask('note.told', { commandId: 'demo-told', note: 'demo-note-3', countedThere: [3] });
  expect(told.claims).toMatchObject([{ disputed: 1 }]);
  expect((await ask('sheet.return', { id: 'demo-note-3' })).title).toBe('Return note R-208');
  await ask('note.reverse', { commandId: 'demo-note-stay', note: 'demo-note-3', remark: 'Tried' });
  const { rows, claims } = await ask('yard.owed', {});
  // 174 from the first day and 36 of D-099.
  expect(rows.find(({ component }) => component === 'LK')).toMatchObject({ received: 210, owed: 210 });
  expect(claims.map(({ number: of, disputed }) => [of, disputed])).toEqual([
    ['D-099', 4],
    ['R-207', 2],
  ]);
  await askOfFigures(ask);
}

async function askOfFigures(ask: DemoHost['ask']): Promise<void> {
  const figure = { owner: 'TFH', component: 'LK', asOf: '2026-02-20', paper: null, remark: null };
  const signed = { ...figure, whose: 'ours' as const, quantity: 210, signedBy: 'Yard clerk' };
  await ask('figure.add', { commandId: 'demo-figure-1', figure: signed });
  expect((await ask('figure.list', {})).rows).toMatchObject([{ component: 'LK', held: 210 }]);
  const place = { what: 'owner' as const, code: 'OTHERS', name: 'Not known', kind: 'others' as const };
  await ask('yard.placeSave', { commandId: 'demo-place-1', place: { ...place, agreement: null } });
  expect((await ask('yard.foreign', {})).rows).toEqual([]);
  const one = { owner: 'OURS', location: 'ENN', condition: 'ready' as const };
  const swap = { component: 'LK', quantity: 1, remark: 'Tried' };
  const other = { owner: 'TFH', location: 'ENN', condition: 'ready' as const };
  const away = { ...other, location: 'TFH' };
  await ask('yard.swap', { commandId: 'demo-swap-1', ...swap, one, other: away });
  await ask('yard.swap', { commandId: 'demo-swap-2', ...swap, one: { ...one, location: 'TFH' }, other });
  const { attachment } = await ask('attachment.add', {
    commandId: 'demo-photo-1',
    id: 'demo-photo',
    paper: 'demo-note-1',
    occasion: 'other',
    fileName: 'page.pdf',
    base64: Buffer.from('%PDF-1.7 nothing').toString('base64'),
    component: null,
    remark: null,
  });
  expect((await ask('attachment.list', { paper: 'demo-note-1' })).attachments).toEqual([attachment]);
  expect((await ask('attachment.read', { attachment: 'demo-photo' })).attachment).toEqual(attachment);
}
