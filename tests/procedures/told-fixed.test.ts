// What is told, fixed and built on the demo job, and what becomes of it when pours move.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoHost, job, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let commands = 0;
const commandId = (): string => `told-fixed-${(commands += 1)}`;

beforeAll(async () => {
  host = await demoHost();
});

afterAll(async () => {
  await host.close();
});

const now = '2026-03-02T07:00:00-05:00';

async function turn(id: string) {
  const board = await host.ask('board.read', { job });
  const found = board.turns.find((each) => each.id === id);
  if (found === undefined) throw new Error(`No turn ${id}`);
  return { ...found, board };
}

async function moved(pour: string, workingDays: number): Promise<void> {
  await host.ask('pour.move', { commandId: commandId(), job, moves: [{ pour, workingDays }] });
}

describe('a gang that the yard has built', () => {
  test('begins its turn made up, before it stands, while it stands and after, and no step assembles it', async () => {
    const { before, design, board } = await turn('P01/A1');
    expect(before.how).toBe('assemble');
    const built = { gang: `${design}-1`, design, from: 'ENN', at: now, turn: 'P01/A1' };
    await host.ask('gang.build', { commandId: commandId(), ...built });
    const there = await turn('P01/A1');
    expect(there.before.how).toBe('built');
    expect(there.board.cost.labourCents).toBeLessThan(board.cost.labourCents);
    const assembled = there.board.steps
      .filter((step) => step.kind === 'assemble')
      .flatMap((step) => step.turns);
    expect(assembled).not.toContain('P01/A1');
    const stands = { gang: built.gang, state: 'standing', at: '2026-03-02T08:00:00-05:00' } as const;
    await host.ask('gang.step', { commandId: commandId(), ...stands });
    expect((await turn('P01/A1')).before.how).toBe('built');
    const stripped = { ...stands, state: 'stripped', at: '2026-03-05T12:00:00-05:00' } as const;
    await host.ask('gang.step', { commandId: commandId(), ...stripped });
    expect((await turn('P01/A1')).before.how).toBe('built');
    expect((await turn('P01/A1')).board.cost).toEqual(there.board.cost);
  });
});

describe('a fixed choice', () => {
  test('that a moved pour makes impossible is named on the board, left out, and obeyed again when the pour is back', async () => {
    const board = await host.ask('board.read', { job });
    const { plan } = {
      plan: board.turns.find(({ pour, before }) => pour === 'P10' && before.how === 'fly-on'),
    };
    if (plan === undefined || plan.before.how !== 'fly-on') throw new Error('Nothing flies on to P10.');
    const choice = { kind: 'follow', from: plan.before.turn, to: plan.id } as const;
    const { id } = await host.ask('fixed.set', { commandId: commandId(), job, choice });
    expect((await turn(plan.id)).fixed.before).toBe(true);
    const from = board.turns.find((each) => each.id === choice.from)?.pour ?? '';
    await moved(from, 30);
    const then = await turn(plan.id);
    expect(then.fixed.before).toBe(false);
    const findings = then.board.planFindings.filter(({ rule }) => rule === 'fixed-choice');
    expect(findings.map(({ where }) => where)).toEqual([choice.from]);
    expect(findings[0]?.message).toContain(`the gang of ${choice.from} goes on to ${choice.to}, but`);
    const [listed] = (await host.ask('fixed.list', { job })).fixed;
    expect([listed?.id, listed?.costCents]).toEqual([id, null]);
    expect(findings[0]?.message).toContain(listed?.whyNot ?? 'nothing');
    await moved(from, -30);
    expect((await turn(plan.id)).fixed.before).toBe(true);
    await host.ask('fixed.drop', { commandId: commandId(), job, id });
  });

  test('of a turn that is not there is refused, and so is one that is fixed already', async () => {
    const nowhere = { kind: 'no-regang', turn: 'P99/A1' } as const;
    const refused = (choice: typeof nowhere | { kind: 'assemble'; turn: string }): Promise<string> =>
      host.refused('fixed.set', { commandId: commandId(), job, choice });
    expect(await refused(nowhere)).toBe('fixed-impossible');
    const choice = { kind: 'assemble', turn: 'P02/A1' } as const;
    const { id } = await host.ask('fixed.set', { commandId: commandId(), job, choice });
    expect(await refused(choice)).toBe('fixed-already');
    await host.ask('fixed.drop', { commandId: commandId(), job, id });
    expect(await host.refused('fixed.drop', { commandId: commandId(), job, id })).toBe('unknown-choice');
  });
});

describe('what was told', () => {
  test('and is then fixed otherwise is changed: named, marked at both turns, counted and paid', async () => {
    const later = '2026-03-10T07:00:00-04:00';
    const { told } = await host.ask('told.mark', { commandId: commandId(), job, now: later });
    const before = await host.ask('board.read', { job });
    expect([before.changedTold, before.cost.changeCents]).toEqual([0, 0]);
    const follow = told.find((each) => each.kind === 'follow');
    if (follow?.kind !== 'follow') throw new Error('No gang is told to go on.');
    const choice = { kind: 'break-down', turn: follow.from } as const;
    const { id } = await host.ask('fixed.set', { commandId: commandId(), job, choice });
    const after = await host.ask('board.read', { job });
    const list = await host.ask('told.list', { job, now: later });
    const changed = list.stands.filter(({ standing }) => standing === 'changed');
    expect(changed.map(({ instruction }) => instruction)).toContainEqual(follow);
    expect(after.changedTold).toBe(changed.length);
    expect(after.cost.changeCents).toBe(changed.length * list.changeCents);
    const { labourCents, hireCents, changeCents, totalCents } = after.cost;
    expect(labourCents + hireCents + changeCents).toBe(totalCents);
    expect((await turn(follow.from)).told.after).toBe('changed');
    expect((await turn(follow.to)).told.before).toBe('changed');
    await host.ask('fixed.drop', { commandId: commandId(), job, id });
    expect((await host.ask('board.read', { job })).cost).toEqual(before.cost);
  });

  test('of a pour that is dropped is gone, and counted but not paid', async () => {
    const list = await host.ask('told.list', { job });
    const speaksOf = (pour: string): number =>
      list.stands.filter(({ from, to }) => from?.pour === pour || to?.pour === pour).length;
    const pour = list.stands.find(({ to }) => to !== null)?.to?.pour ?? '';
    const without = await host.ask('plan.whatif', { job, changes: [{ kind: 'drop', pour }] });
    expect(speaksOf(pour)).toBeGreaterThan(0);
    await host.ask('pour.remove', { commandId: commandId(), job, pour });
    const gone = (await host.ask('told.list', { job })).stands.filter(({ standing }) => standing === 'gone');
    expect(gone).toHaveLength(speaksOf(pour));
    const board = await host.ask('board.read', { job });
    expect(board.changedTold).toBeGreaterThanOrEqual(gone.length);
    expect(board.cost.changeCents).toBe((board.changedTold - gone.length) * list.changeCents);
    expect(board.cost.totalCents).toBe(without.after.cost.totalCents);
  });

  test('and released may be changed for nothing', async () => {
    const { stands } = await host.ask('told.list', { job });
    const instructions = stands.map(({ instruction }) => instruction);
    await host.ask('told.release', { commandId: commandId(), job, instructions });
    const board = await host.ask('board.read', { job });
    expect([board.changedTold, board.cost.changeCents]).toEqual([0, 0]);
  });
});

describe('a plan that was kept', () => {
  test('is where the next one begins: the board is never dearer than it', async () => {
    const made = await host.ask('plan.make', { commandId: commandId(), job, improveSeconds: 1 });
    const board = await host.ask('board.read', { job });
    expect(board.cost.unmet).toBeLessThanOrEqual(made.cost.unmet);
    expect(board.cost.totalCents).toBeLessThanOrEqual(made.cost.totalCents);
  });
});
