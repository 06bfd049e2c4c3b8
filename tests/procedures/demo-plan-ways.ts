// The questions of shortfalls, each asked once of the demo job: the ways out of one, and what is decided of one.
import { expect } from 'vitest';
import { wordsOf } from '../sheets/read-tree.ts';
import { job, type DemoHost } from './demo-host.ts';

export async function askOfWays({ ask, refused }: DemoHost): Promise<void> {
  const { shortfalls } = await ask('shortfall.list', { job });
  const rails = shortfalls.find(({ component }) => component === 'R8');
  if (rails === undefined) throw new Error('The demo has no shortfall of 8 ft rails.');
  const { component, from } = rails;
  const out = await ask('shortfall.ways', { job, component, from });
  expect(out.shortfall).toEqual(rails);
  // Seven days from Friday to Thursday, four rails at 42 cents: 4 x 7 x 42.
  expect(out.ways[0]).toMatchObject({ kind: 'hire', costCents: 1176, movesClash: false });
  // Ordered three working days before: Tuesday for Friday.
  expect(out.ways[0]?.order).toEqual({ by: '2026-03-10', isOver: false });
  expect(out.ask.map((each) => each.component)).toContain('R6');
  expect(await refused('shortfall.ways', { job, component, from: '2026-03-02T07:00:00-05:00' })).toBe(
    'no-such-shortfall',
  );
  const { tree, title } = await ask('sheet.shortfalls', { id: job });
  expect(title).toBe('Shortfalls TB26');
  const sheet = wordsOf(tree);
  // The same way out as the screen's first, with its cost in whole units, and near pieces for the designer alone.
  expect(sheet).toContain('Hire 4 R8, Fri 13 Mar to Thu 19 Mar, 7 days: about $12');
  expect(sheet).toContain('Order by Tue 10 Mar');
  expect(sheet).toContain('Ask the designer: R6');
  expect(sheet).toContain('Planning aid only');
  const decide = { job, component, from, decision: 'ignored' as const };
  expect(await refused('shortfall.decide', { commandId: 'ways-decide-0', ...decide, reason: ' ' })).toBe(
    'reason-missing',
  );
  const { id } = await ask('shortfall.decide', {
    commandId: 'ways-decide-1',
    ...decide,
    reason: 'on its way',
  });
  const decided = await ask('shortfall.list', { job });
  expect(decided.shortfalls).toHaveLength(shortfalls.length);
  expect(decided.decisions).toMatchObject([
    { shortfall: rails.id, decision: 'ignored', reason: 'on its way', quantity: 4, hasGrown: false },
  ]);
  await ask('shortfall.undecide', { commandId: 'ways-undecide-1', job, id });
  expect((await ask('shortfall.list', { job })).decisions).toEqual([]);
  expect(await refused('shortfall.undecide', { commandId: 'ways-undecide-2', job, id })).toBe(
    'unknown-decision',
  );
}
