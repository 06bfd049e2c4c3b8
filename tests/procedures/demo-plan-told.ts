// What is told and what is fixed, on the demo job: both are marked on the board, obeyed, priced, and taken back.
import { expect } from 'vitest';
import { job, type DemoHost } from './demo-host.ts';

const now = '2026-03-04T07:00:00-05:00';

export async function askOfTold({ ask, refused }: DemoHost): Promise<void> {
  const before = await ask('told.list', { job, now });
  expect([before.stands, before.changed, before.toldShifts]).toEqual([[], 0, 2]);
  // Two shifts of the job: that of the day and that of the next.
  expect(before.until.slice(0, 10)).toBe('2026-03-05');
  expect(before.next.length).toBeGreaterThan(2);
  const { told } = await ask('told.mark', { commandId: 'demo-told-1', job, now });
  expect(told).toEqual(before.next.map((each) => each.instruction));
  expect(await refused('told.mark', { commandId: 'demo-told-2', job, now })).toBe('nothing-to-tell');
  const after = await ask('told.list', { job, now });
  expect(after.next).toEqual([]);
  expect(
    after.stands.map(({ instruction, standing, since, who }) => [instruction, standing, since, who]),
  ).toEqual(told.map((each) => [each, 'followed', now, 'tester']));
  const board = await ask('board.read', { job });
  const sides = board.turns.flatMap((turn) => [turn.told.before, turn.told.after]);
  const follows = told.filter((each) => each.kind === 'follow').length;
  expect(sides.filter((side) => side === 'followed')).toHaveLength(told.length + follows);
  expect([board.changedTold, board.cost.changeCents]).toEqual([0, 0]);
  await ask('told.release', { commandId: 'demo-told-3', job, instructions: told, now });
  expect((await ask('told.list', { job, now })).stands).toEqual([]);
  const again = { commandId: 'demo-told-4', job, instructions: told, now };
  expect(await refused('told.release', again)).toBe('not-told');
}

export async function askOfFixed({ ask, refused }: DemoHost): Promise<void> {
  const free = await ask('board.read', { job });
  const flown = free.turns.find(({ pour, before }) => pour === 'P06' && before.how === 'fly-on');
  if (flown === undefined || flown.before.how !== 'fly-on')
    throw new Error('The demo flies nothing on to P06.');
  const choice = { kind: 'assemble', turn: flown.id } as const;
  const { id } = await ask('fixed.set', { commandId: 'demo-fixed-1', job, choice });
  const otherwise = { kind: 'follow', from: flown.before.turn, to: flown.id } as const;
  const clash = { commandId: 'demo-fixed-2', job, choice: otherwise };
  expect(await refused('fixed.set', clash)).toBe('fixed-impossible');
  const board = await ask('board.read', { job });
  const turn = board.turns.find((each) => each.id === flown.id);
  expect([turn?.before.how, turn?.fixed.before, turn?.fixed.after]).toEqual(['assemble', true, false]);
  const { fixed } = await ask('fixed.list', { job });
  expect(fixed.map((each) => [each.id, each.choice, each.who, each.whyNot])).toEqual([
    [id, choice, 'tester', null],
  ]);
  const [only] = fixed;
  expect(only?.costCents).toBeGreaterThan(0);
  expect((only?.costCents ?? 0) + free.cost.totalCents).toBe(board.cost.totalCents);
  await ask('fixed.drop', { commandId: 'demo-fixed-3', job, id });
  expect((await ask('board.read', { job })).cost).toEqual(free.cost);
}
