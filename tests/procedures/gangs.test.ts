// Gangs of the demo job as things: built from the yard, stood, stripped, re-ganged and broken down, with the pieces
// counted in the ledger at every step.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoHost, job, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let commands = 0;
const id = (): string => `gang-test-${(commands += 1)}`;

beforeAll(async () => {
  host = await demoHost();
});

afterAll(async () => {
  await host.close();
});

const at = (day: number, hour = 7): string =>
  `2026-03-${String(day).padStart(2, '0')}T${String(hour).padStart(2, '0')}:00:00-05:00`;

async function held(location: string): Promise<Record<string, number>> {
  const { rows } = await host.ask('yard.quantities', { location });
  const sums: Record<string, number> = {};
  for (const row of rows) sums[row.component] = (sums[row.component] ?? 0) + row.quantity;
  return sums;
}

async function totals(): Promise<Record<string, number>> {
  const { rows } = await host.ask('yard.quantities', {});
  const sums: Record<string, number> = {};
  for (const row of rows) sums[row.component] = (sums[row.component] ?? 0) + row.quantity;
  return sums;
}

async function takeOffOf(design: string): Promise<Record<string, number>> {
  const { lines } = await host.ask('design.read', { design });
  return Object.fromEntries(
    lines.filter((line) => line.component !== 'LH').map((line) => [line.component, line.quantity]),
  );
}

describe('a gang from the yard to the wall and back', () => {
  test('GA-1 built at ENN holds what GA is made of but for its hooks, and the yard that much less', async () => {
    const before = await held('ENN');
    const all = await totals();
    const { nextTags } = await host.ask('gang.list', {});
    expect(nextTags['GA']).toBe('GA-1');
    const lines = await host.ask('gang.lines', { design: 'GA', from: 'ENN' });
    expect(lines.short).toBe(0);
    const built = await host.ask('gang.build', {
      commandId: id(),
      gang: 'GA-1',
      design: 'GA',
      from: 'ENN',
      at: at(2),
      turn: 'P01/A1',
    });
    const pieces = await takeOffOf('GA');
    expect(await held('GA-1')).toEqual(pieces);
    expect(built.pieces).toBe(Object.values(pieces).reduce((sum, some) => sum + some, 0));
    const after = await held('ENN');
    for (const [component, quantity] of Object.entries(pieces))
      expect((before[component] ?? 0) - (after[component] ?? 0)).toBe(quantity);
    expect(await totals()).toEqual(all);
    const { gangs, nextTags: tags } = await host.ask('gang.list', {});
    expect(gangs).toMatchObject([
      { gang: 'GA-1', state: 'assembled', place: 'ENN', job, nextTurn: 'P01/A1', turn: null, findings: [] },
    ]);
    expect(tags['GA']).toBe('GA-2');
    const design = await host.ask('design.read', { design: 'GA' });
    expect(gangs[0]?.weightGrams).toBe(design.weightGrams);
  });

  test('the same command sent again builds no second gang', async () => {
    const same = { commandId: 'gang-test-twice', gang: 'GA-2', design: 'GA', from: 'ENN', at: at(2) };
    await host.ask('gang.build', same);
    const once = await held('ENN');
    await host.ask('gang.build', same);
    expect(await held('ENN')).toEqual(once);
    expect(await host.refused('gang.build', { ...same, commandId: id() })).toBe('tag-taken');
    expect(await host.refused('gang.build', { ...same, commandId: id(), gang: 'ENN' })).toBe('place-taken');
  });

  test('it stands at P01 with loose pieces issued to it, is stripped and flies on', async () => {
    const stood = await host.ask('gang.step', {
      commandId: id(),
      gang: 'GA-1',
      state: 'standing',
      at: at(2, 8),
    });
    expect(stood).toEqual({ gang: 'GA-1', state: 'standing', place: 'TB26/P01', turn: 'P01/A1' });
    const refused = { commandId: id(), gang: 'GA-2', state: 'standing', at: at(2, 9), job } as const;
    expect(await host.refused('gang.step', { ...refused, turn: 'P01/A1' })).toBe('turn-taken');
    expect(await host.refused('gang.step', { ...refused, turn: 'P03/A1' })).toBe('wrong-design');
    expect(await host.refused('gang.step', { ...refused, turn: 'P99/A1' })).toBe('unknown-turn');

    const issued = await host.ask('pour.issue', {
      commandId: id(),
      job,
      pour: 'P01',
      from: 'ENN',
      at: at(2, 9),
    });
    expect(issued.pieces['LK']).toBe(12);
    expect(issued.pieces['BR']).toBe(4);
    expect(await held('TB26/P01')).toEqual(issued.pieces);
    expect(
      await host.refused('pour.issue', { commandId: id(), job, pour: 'P01', from: 'ENN', at: at(2, 9) }),
    ).toBe('nothing-to-issue');

    expect(await host.refused('gang.break', { commandId: id(), gang: 'GA-1', to: 'ENN', at: at(5) })).toBe(
      'bad-step',
    );
    await host.ask('gang.step', {
      commandId: id(),
      gang: 'GA-1',
      state: 'stripped',
      at: at(4, 14),
      nextTurn: 'P04/A1',
    });
    expect(
      await host.refused('gang.step', { commandId: id(), gang: 'GA-1', state: 'standing', at: at(3) }),
    ).toBe('step-too-early');
    const next = await host.ask('gang.step', { commandId: id(), gang: 'GA-1', state: 'standing', at: at(5) });
    expect([next.place, next.turn]).toEqual(['TB26/P04', 'P04/A1']);
    await host.ask('gang.step', { commandId: id(), gang: 'GA-1', state: 'stripped', at: at(9) });
  });

  test('re-ganged into GB exactly the difference of the two designs moves', async () => {
    const [ga, gb] = [await takeOffOf('GA'), await takeOffOf('GB')];
    const differs = [...new Set([...Object.keys(ga), ...Object.keys(gb)])];
    const shown = await host.ask('gang.lines', { design: 'GB', from: 'ENN', gang: 'GA-1' });
    const done = await host.ask('gang.regang', {
      commandId: id(),
      gang: 'GA-1',
      design: 'GB',
      from: 'ENN',
      to: 'ENN',
      condition: 'to-clean',
      at: at(9, 9),
    });
    for (const component of differs) {
      const by = (gb[component] ?? 0) - (ga[component] ?? 0);
      expect(done.putIn[component] ?? 0).toBe(Math.max(0, by));
      expect(done.takenOut[component] ?? 0).toBe(Math.max(0, -by));
      const line = shown.lines.find((each) => each.component === component);
      expect([line?.putIn, line?.takenOut]).toEqual([Math.max(0, by), Math.max(0, -by)]);
    }
    expect(await held('GA-1')).toEqual(gb);
    const { gang, steps, movements } = await host.ask('gang.read', { gang: 'GA-1' });
    expect([gang.design, gang.state, gang.findings]).toEqual(['GB', 'assembled', []]);
    expect(steps[0]?.state).toBe('assembled');
    expect(steps).toHaveLength(6);
    expect(movements.filter((each) => each.reason === 'break-down').every((each) => each.to === 'ENN')).toBe(
      true,
    );
  });

  test('broken down nothing is left in it; a quantity too few is refused with both figures', async () => {
    const { content } = await host.ask('gang.read', { gang: 'GA-1' });
    const lines = content.map(({ component, quantity }) => ({
      component,
      quantity,
      condition: 'to-clean' as const,
    }));
    const [first, ...rest] = lines;
    if (first === undefined) throw new Error('GA-1 is empty');
    const fewer = [{ ...first, quantity: first.quantity - 1 }, ...rest];
    const asked = { gang: 'GA-1', to: 'ENN', at: at(10) };
    expect(await host.refused('gang.break', { ...asked, commandId: id(), lines: fewer })).toBe(
      'not-what-is-in-it',
    );
    await host.ask('gang.break', { ...asked, commandId: id(), lines });
    expect(await held('GA-1')).toEqual({});
    expect(
      await host.refused('gang.regang', {
        ...asked,
        commandId: id(),
        design: 'GA',
        from: 'ENN',
        condition: 'ready',
      }),
    ).toBe('bad-step');
    await host.ask('gang.build', { commandId: id(), gang: 'GA-1', design: 'GA', from: 'ENN', at: at(11) });
    expect(await held('GA-1')).toEqual(await takeOffOf('GA'));
    expect((await host.ask('book.check', {})).problems).toEqual([]);
  });
});

describe('what is short', () => {
  test('gangs built until one component runs out: every short component is named, and nothing half built', async () => {
    let tag = 3;
    for (;;) {
      const { short, lines } = await host.ask('gang.lines', { design: 'GA', from: 'ENN', at: at(12) });
      if (short > 0) {
        const before = await held('ENN');
        const refused = { commandId: id(), gang: `GA-${tag}`, design: 'GA', from: 'ENN', at: at(12) };
        expect(await host.refused('gang.build', refused)).toBe('not-enough');
        const message = await host.ask('gang.build', refused).then(
          () => 'built',
          (error: unknown) => String(error),
        );
        for (const line of lines)
          expect(message.includes(`of ${line.component} are wanted`)).toBe(line.short > 0);
        expect(await held('ENN')).toEqual(before);
        expect((await host.ask('gang.list', {})).gangs.map((each) => each.gang)).not.toContain(`GA-${tag}`);
        break;
      }
      await host.ask('gang.build', {
        commandId: id(),
        gang: `GA-${tag}`,
        design: 'GA',
        from: 'ENN',
        at: at(12),
      });
      tag += 1;
    }
    expect(tag).toBeGreaterThan(4);
  });
});

test('a gang built to an older state of its design does not fly on until someone says so', async () => {
  const detail = await host.ask('design.read', { design: 'GA' });
  const { code, name, system, revision, hand } = detail.summary;
  const { assembleH, breakDownH } = detail;
  await host.ask('design.save', {
    commandId: id(),
    isNew: false,
    design: {
      code,
      name,
      system,
      revision: `${revision}1`,
      hand,
      assembleH: assembleH + 0.5,
      breakDownH,
      geometry: detail.geometry,
    },
  });
  const { gangs } = await host.ask('gang.list', {});
  const older = gangs.find((each) => each.gang === 'GA-2');
  expect(older?.findings.map((each) => each.rule)).toEqual(['older design']);
  const stand = {
    commandId: id(),
    gang: 'GA-2',
    state: 'standing',
    at: at(12, 12),
    job,
    turn: 'P05/A1',
  } as const;
  expect(await host.refused('gang.step', stand)).toBe('older-design');
  await host.ask('gang.step', { ...stand, commandId: id(), fliesOnOlder: true });
  const { steps } = await host.ask('gang.read', { gang: 'GA-2' });
  expect(steps[0]?.remark).toContain('tester said that it flies on');
});
