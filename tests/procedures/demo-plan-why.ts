// Why the plan does what it does, asked of the demo job: the ways weighed for a gang, and who holds what is short.
import { expect } from 'vitest';
import { job, type DemoHost } from './demo-host.ts';

export async function askOfWhy(ask: DemoHost['ask']): Promise<void> {
  const board = await ask('board.read', { job });
  const regang = board.turns.find(({ before }) => before.how === 'regang');
  if (regang === undefined) throw new Error('The demo re-gangs nothing.');
  const why = await ask('plan.why', { job, turn: regang.id });
  expect([why.pour, why.design]).toEqual([regang.pour, regang.design]);
  const { arrival, departure } = why;
  expect(arrival.chosen.how).toBe('regang');
  expect(arrival.chosen.costCents).toBe(0);
  expect(arrival.alternatives.map(({ how }) => how)).toContain('assemble');
  for (const { alternatives } of [arrival, departure]) {
    expect(alternatives.length).toBeLessThanOrEqual(7);
    const dearer = alternatives.map(({ unmetMore, costCents }) => unmetMore * 1e9 + costCents);
    expect(dearer).toEqual(dearer.toSorted((one, other) => one - other));
    for (const { choice, costCents, shortfalls, unmetMore } of alternatives) {
      const fixed = await ask('plan.whatif', { job, changes: [{ kind: 'fix', choice }] });
      expect(fixed.costChangeCents).toBe(costCents);
      expect(fixed.after.cost.unmet - fixed.before.cost.unmet).toBe(unmetMore);
      const touched = new Set(
        [...fixed.newShortfalls, ...fixed.changedShortfalls.map(({ after }) => after)].map(
          ({ component }) => component,
        ),
      );
      for (const { component, more } of shortfalls) if (more > 0) expect(touched).toContain(component);
    }
  }
  const [first] = board.shortfalls;
  if (first === undefined) throw new Error('The demo is short of nothing.');
  for (const { component, from } of board.shortfalls.slice(0, 4)) {
    const { shortfall, gangs } = await ask('shortfall.why', { job, component, from });
    const byTurn = shortfall.turns.reduce((sum, { pieces }) => sum + pieces, 0);
    expect(gangs.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(byTurn);
  }
}

/** The board's own runs kept: the plan stays as it is, and what was proved of it is known from then on. */
export async function askToKeep(ask: DemoHost['ask']): Promise<void> {
  const board = await ask('board.read', { job });
  const runs = [...Map.groupBy(board.turns, ({ run }) => run).values()].map((turns) => ({
    turns: turns.toSorted((one, other) => Date.parse(one.from) - Date.parse(other.from)).map(({ id }) => id),
  }));
  const kept = await ask('plan.keep', { commandId: 'demo-keep-1', job, runs, boundCents: board.boundCents });
  expect(kept.costChangeCents).toBe(0);
  expect(kept.before.boundCents).toBe(board.boundCents);
}
