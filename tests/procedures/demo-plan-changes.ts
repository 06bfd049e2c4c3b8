// Changes of the plan asked of the demo: what they would do, carried out, listed and taken back.
import { expect } from 'vitest';
import { type DemoHost, job } from './demo-host.ts';

export async function askOfChanges({ ask }: Pick<DemoHost, 'ask'>): Promise<void> {
  const changes = [{ kind: 'move' as const, pour: 'P09', workingDays: 1 }];
  const before = await ask('board.read', { job });
  const asked = await ask('plan.whatif', { job, changes });
  expect(asked.costChangeCents).toBe(asked.after.cost.totalCents - before.cost.totalCents);
  const { applied } = await ask('plan.apply', {
    commandId: 'demo-change-1',
    job,
    changes,
    about: 'P09 a day later',
  });
  expect((await ask('board.read', { job })).cost).toEqual(asked.after.cost);
  const listed = await ask('change.list', { job });
  expect(listed.changes[0]).toMatchObject({ applied, about: 'P09 a day later', takenBackAt: null });
  await ask('plan.takeback', { commandId: 'demo-change-2', job, applied });
  const after = await ask('board.read', { job });
  expect([after.turns, after.cost]).toEqual([before.turns, before.cost]);
}

export async function askOfKept({ ask }: Pick<DemoHost, 'ask'>): Promise<void> {
  const changes = [{ kind: 'move' as const, pour: 'P09', workingDays: 1 }];
  const { id } = await ask('whatif.keep', { commandId: 'demo-kept-1', job, name: 'P09 later', changes });
  expect((await ask('whatif.list', { job })).kept).toMatchObject([{ id, name: 'P09 later', whyNot: null }]);
  const compared = await ask('whatif.compare', { job, one: 'now', other: { kept: id } });
  expect(compared.pours.map(({ pour }) => pour)).toEqual(['P09']);
  await ask('whatif.drop', { commandId: 'demo-kept-2', job, id });
}
