// Notes from CSV: a paper of several rows is one note, booked ones move their pieces, drafts stand as due.
import { afterEach, expect, test } from 'vitest';
import { noteClaims } from '../../core/yard/note-claims.ts';
import { filledBook, type TestBook } from './a-book.ts';

const heading =
  'kind,note,state,at,from,to,component,owner,condition,sent,counted,counted there,vehicle,signed here,signed there,protest,remark';
const short = [
  'delivery,D-1,booked,2026-03-03 09:10,DEPOT,YARD,LK,HIRE,,40,36,,Truck 4,Clerk,Driver,Four fewer,first',
  'delivery,D-1,,,,,P836,HIRE,to-clean,2,2,,,,,,',
];

let made: TestBook | undefined;

afterEach(() => made?.end());

async function take(...rows: readonly string[]) {
  made = await filledBook();
  const outcome = await made.take('notes', [heading, ...rows].join('\n'));
  const notes = await made.book.read((reader) => reader.notes());
  const movements = await made.book.read((reader) => reader.movements({ limit: 1000 }));
  return { outcome, notes, movements };
}

test('A booked note moves what was counted, keeps what was sent, and its claim of 4', async () => {
  const { outcome, notes, movements } = await take(...short);
  expect(outcome).toMatchObject({ rows: 2, added: 1, bad: [] });
  expect(notes).toMatchObject([
    {
      kind: 'delivery',
      number: 'D-1',
      state: 'booked',
      expectedAt: null,
      vehicle: 'Truck 4',
      protest: 'Four fewer',
    },
  ]);
  const own = movements.filter(({ paper }) => paper === notes[0]?.id);
  expect(own.map(({ component, quantity, condition, at }) => [component, quantity, condition, at])).toEqual([
    ['P836', 2, 'to-clean', '2026-03-03T09:10:00-05:00'],
    ['LK', 36, 'ready', '2026-03-03T09:10:00-05:00'],
  ]);
  expect(notes.flatMap(noteClaims)).toMatchObject([{ component: 'LK', disputed: 4 }]);
});

test('A draft is due at its time and moves nothing', async () => {
  const { notes, movements } = await take(
    'delivery,D-2,draft,2026-03-12 09:00,DEPOT,YARD,LK,HIRE,,10,,,,,,,',
  );
  expect(notes).toMatchObject([{ state: 'draft', expectedAt: '2026-03-12T09:00:00-04:00' }]);
  expect(movements.some(({ paper }) => paper !== null)).toBe(false);
});

test('A return keeps what the depot counted', async () => {
  const back = 'return,R-1,booked,2026-03-04 15:00,YARD,DEPOT,LK,HIRE,,8,8,6,,,,,';
  const { notes } = await take(...short, back);
  expect(notes.find(({ kind }) => kind === 'return')).toMatchObject({ countedThere: [6] });
});

const one = (part: string, by: string): string =>
  'delivery,D-9,booked,2026-03-03 09:10,DEPOT,YARD,LK,HIRE,,4,4,,,,,,'.replace(part, by);

test.each([
  ['an unknown component', [one('LK', 'LQ')], 'component'],
  ['an unknown owner', [one('HIRE', 'NOBODY')], 'owner'],
  ['an unknown place', [one('DEPOT', 'NOWHERE')], 'from'],
  ['from a place to itself', [one('DEPOT', 'YARD')], 'to'],
  ['booked and not counted', [one('4,4', '4,')], 'counted'],
  ['a kind that is none', [one('delivery', 'gift')], 'kind'],
  [
    'another vehicle on a later row',
    [short[0] ?? '', 'delivery,D-1,,,,,P836,HIRE,,2,2,,Truck 5,,,,'],
    'vehicle',
  ],
])('%s is refused at its place and nothing is stored', async (_, rows, column) => {
  const { outcome, notes } = await take(...rows);
  expect(outcome.bad.map((bad) => bad.column)).toContain(column);
  expect(notes).toEqual([]);
});

test('A number that the book has is not taken twice', async () => {
  const { outcome } = await take(...short);
  expect(outcome.stored).toBe(true);
  const again = await made?.take('notes', [heading, ...short].join('\n'));
  expect(again?.bad.map((bad) => [bad.line, bad.column])).toEqual([
    [2, 'note'],
    [3, 'note'],
  ]);
});
