// Week plan and day sheet of the demo job: printed, a pour moved, and exactly that pour marked on the next printing.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { withClass, wordsOf } from '../sheets/read-tree.ts';
import { demoHost, job, type DemoHost } from './demo-host.ts';

let host: DemoHost;
beforeAll(async () => {
  host = await demoHost();
});
afterAll(() => host.close());

const week = { job, kind: 'week', of: '2026-03-02' } as const;
const marksOf = async (id: string) => {
  const { tree } = await host.ask('sheet.week', { id });
  return {
    marked: withClass(tree, 'wall-lines')
      .slice(0, 1)
      .flatMap((table) => withClass(table, 'changed'))
      .map(wordsOf),
    words: wordsOf(tree),
  };
};

const titleAt = async (now: string): Promise<string> =>
  (await host.ask('sheet.week', { id: job, now })).title;

test('by itself the week begins on a Monday, the one after it is spoken of on Thursday', async () => {
  // 3 March 2026 is a Tuesday, 5 March a Thursday.
  expect(await titleAt('2026-03-03T10:00:00-05:00')).toBe('Week plan TB26 2026-03-02 revision 1');
  expect(await titleAt('2026-03-05T10:00:00-05:00')).toBe('Week plan TB26 2026-03-09 revision 1');
});

test('the board and the wall say the same: dates of every pour, and pieces short by day', async () => {
  const board = await host.ask('board.read', { job });
  const { words } = await marksOf(`${job}@2026-03-02`);
  const shown = board.pours.filter(
    ({ times }) => times.sides.some(({ setFrom }) => setFrom < '2026-03-16') && times.stripTo >= '2026-03-02',
  );
  expect(shown.length).toBeGreaterThan(7);
  for (const { pour } of shown) expect(words).toContain(`${pour.code} ${pour.name}`);
  // W1 is poured on Tuesday at 13:00; 24 hours later it may be stripped, within the shift.
  expect(words).toContain(
    'P01 Tank wall W1, 24 ft – Mon 2 Mar 07:00 Mon 2 Mar 10:30 Tue 3 Mar 13:00 Wed 4 Mar 13:00',
  );
  const short = board.shortfalls.filter(({ from, to }) => from < '2026-03-16' && to > '2026-03-02');
  expect(short.length).toBeGreaterThan(0);
  for (const { component, name } of short) expect(words).toContain(`${component} ${name}`);
});

test('a moved pour is marked cell by cell, and no other; printed again it bears the next number', async () => {
  const print = (commandId: string, given: string[]) =>
    host.ask('sheet.printed', { commandId, ...week, given });
  expect((await print('print-test-1', ['Foreman'])).revision).toBe(1);
  expect((await marksOf(`${job}@2026-03-02`)).marked).toEqual([]);
  // Somebody else gets a copy of the same.
  expect((await print('print-test-2', ['Crane operator'])).revision).toBe(1);
  expect((await marksOf(`${job}@2026-03-02`)).words).toContain('Given to Foreman, Crane operator');
  await host.ask('pour.move', { commandId: 'print-test-3', job, moves: [{ pour: 'P06', workingDays: 1 }] });
  const { marked, words } = await marksOf(`${job}@2026-03-02`);
  // C3 and C4: set Monday 9 March 07:00, poured Tuesday 14:00, 12 hours of strength, stripped Wednesday 07:00.
  expect(marked.slice(0, 3)).toEqual([
    '▲ changed: was Mon 9 Mar 07:00',
    '▲ changed: was Tue 10 Mar 14:00',
    '▲ changed: was Wed 11 Mar 07:00',
  ]);
  expect(marked).toHaveLength(3);
  expect(words).toContain('Superseded once revision 3 exists.');
  expect((await print('print-test-4', [])).revision).toBe(2);
  expect((await host.ask('sheet.prints', { job })).prints.map(({ revision }) => revision)).toEqual([2, 1, 1]);
});

test('the day sheet has the steps of the day as the board has them, and its open gates', async () => {
  const { tree } = await host.ask('sheet.day', { id: `${job}@2026-03-03` });
  const words = wordsOf(tree);
  expect(words).toContain('Shift 07:00 to 15:30');
  expect(words).toContain('set 4 GA at P02');
  expect(words).toContain('pour P01 Not ready: inspection by Inspector of works, Tue 3 Mar');
  const board = await host.ask('board.read', { job });
  const steps = board.steps.filter(({ date, kind }) => date === '2026-03-03' && kind !== 'ready');
  expect(withClass(tree, 'day-words')).toHaveLength(steps.length);
});

test('with hours of a crane and numbers entered: picks in order, minutes of those there are, whom to call', async () => {
  const { settings, cranes } = await host.ask('planning.read', { job });
  const crane = cranes[0]?.crane ?? '';
  const hours = { crane, days: [1, 2, 3, 4, 5], start: '07:00', end: '15:30', minutesPerPick: 12 };
  const phones = [{ who: 'Inspector of works', phone: '555 0142' }];
  await host.ask('planning.save', {
    commandId: 'day-sheet-1',
    job,
    settings: { ...settings, cranes: [hours], phones },
  });
  const day = await host.ask('sheet.day', { id: `${job}@2026-03-03` });
  const work = await host.ask('work.read', { job });
  const picks = work.days.find(({ date }) => date === '2026-03-03')?.cranes[0]?.picks ?? [];
  // W2 is set on Tuesday with its four gangs.
  expect(picks.filter(({ kind, pour }) => kind === 'set' && pour === 'P02')).toHaveLength(4);
  const [list] = withClass(day.tree, 'day-items');
  expect(withClass(list ?? day.tree, 'day-item')).toHaveLength(picks.length);
  expect(wordsOf(day.tree)).toContain(`Picks of ${crane} in order`);
  expect(wordsOf(day.tree)).toContain('pour of P01 Tue 3 Mar Inspector of works, 555 0142');
  const wall = wordsOf((await host.ask('sheet.week', { id: `${job}@2026-03-02` })).tree);
  expect(wall).toContain('day crew hours crane minutes pieces short');
  // 12 minutes a pick, and the hours that were set.
  expect(wall).toMatch(/Tue 3 Mar [\d.]+ of 42\.5 h(?:, too much)? \d+ of 510 min/u);
  expect(wall).toContain('Whom to call Inspector of works 555 0142');
});

test('an id that names no job and day is refused', async () => {
  expect(await host.refused('sheet.week', { id: `${job}@soon` })).toBe('sheet-id');
  expect(await host.refused('sheet.day', { id: 'X@2026-03-03' })).toBe('unknown-job');
});
