// Designs typed, drafted, kept, compared and taken out, on the demo's book (invented data). What must not happen:
// a gang of one hand that flies on to where its mirror image stands.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { footNm, inchNm } from '../../core/units/length.ts';
import type { z } from 'zod';
import type { savedDesign } from '../../core/procedures/save-design.ts';
import { demoHost, job, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let commands = 0;
const commandId = (): string => `command-design-${(commands += 1)}`;

beforeAll(async () => {
  host = await demoHost();
});
afterAll(() => host.close());

type Entered = z.input<typeof savedDesign>;

/** A design of the system OMB from a typed row, 12 ft high. */
async function typed(code: string, widths: string, more: Partial<Entered> = {}): Promise<Entered> {
  const { geometry } = await host.ask('design.row', { system: 'OMB', text: `${widths} | 8+4`, units: 'us' });
  const edges = { left: 'next-gang', right: 'next-gang' } as const;
  const hours = { assembleH: 1.25, breakDownH: 0.75 };
  const facts = { code, name: `Wall gang ${widths}`, system: 'OMB', revision: 'A', hand: 'left' } as const;
  return { ...facts, ...hours, geometry: { ...geometry, edges }, ...more };
}

const save = (design: Entered, isNew = true) =>
  host.ask('design.save', { commandId: commandId(), design, isNew });
const refusedSave = (design: Entered, isNew = true) =>
  host.refused('design.save', { commandId: commandId(), design, isNew });

describe('A row that is typed', () => {
  test('is drafted as what the read design of the same gang is made of, and stores nothing', async () => {
    const { geometry } = await typed('X', '36 24 36');
    const draft = await host.ask('design.draft', { system: 'OMB', geometry });
    const { lines, widthNm, weightGrams, joints, revisions, rowText } = await host.ask('design.read', {
      design: 'GB',
    });
    expect({ lines: draft.lines, widthNm: draft.widthNm, weightGrams: draft.weightGrams }).toEqual({
      lines,
      widthNm,
      weightGrams,
    });
    expect(draft.joints).toEqual(joints);
    expect(draft.sameAs).toEqual([{ design: 'GB', how: 'same' }]);
    expect(draft.symmetrical).toBe(true);
    expect(revisions).toBe(1);
    expect(rowText).toEqual({ us: '36 24 36 | 8+4', metric: '914.4mm 609.6mm 914.4mm | 2438.4mm+1219.2mm' });
    const held = await host.ask('design.draft', { system: 'OMB', geometry, design: 'GB' });
    expect(held.sameAs).toEqual([]);
  });

  test('with a width that the system does not have is refused at its place', async () => {
    const refused = await host.refused('design.row', { system: 'OMB', text: '36 37 | 8', units: 'us' });
    expect(refused).toBe('row-no-such-panel');
  });

  test('by changed rule tables and a changed panel is drafted by those', async () => {
    const { rules, components } = await host.ask('rules.read', { system: 'OMB' });
    const { geometry } = await typed('X', '36 24 36');
    const before = await host.ask('design.draft', { system: 'OMB', geometry });
    const locks = rules.locks!;
    const more = {
      ...rules,
      locks: { ...locks, bands: locks.bands.map((b) => ({ ...b, count: b.count + 1 })) },
    };
    const locksOf = (draft: typeof before) =>
      draft.lines.find((line) => line.component === 'LK')?.quantity ?? 0;
    const drafted = await host.ask('design.draft', { system: 'OMB', geometry, rules: more });
    expect(locksOf(drafted)).toBe(locksOf(before) + before.joints.length);
    const panel = components.find((each) => each.code === 'P836')!;
    const heavier = { ...panel, weightGrams: panel.weightGrams + 1000 };
    const heavy = await host.ask('design.draft', { system: 'OMB', geometry, components: [heavier] });
    expect(heavy.weightGrams).toBe(before.weightGrams + 2000);
  });

  test('of a panel with uneven tie holes says which holes its mirror image would not have', async () => {
    const { components } = await host.ask('rules.read', { system: 'OMB' });
    const panel = components.find((each) => each.code === 'P824')!;
    const uneven = { ...panel, tieHolesNm: [[4 * inchNm, 24 * inchNm] as [number, number]] };
    const { geometry } = await typed('X', '36 24');
    const even = await host.ask('design.draft', { system: 'OMB', geometry });
    expect(even.mirrorFindings).toEqual([]);
    const moved = geometry.panels.map((each) => ({ ...each, xNm: each.xNm + footNm }));
    const asked = { system: 'OMB', geometry: { ...geometry, panels: moved }, components: [uneven] };
    const { mirrorFindings } = await host.ask('design.draft', asked);
    expect(mirrorFindings.map((each) => each.where)).toEqual([{ xNm: 36 * inchNm, yNm: 0 }]);
  });

  test('off the origin is answered from its corner, which is said', async () => {
    const { geometry } = await typed('X', '36 24');
    const panels = geometry.panels.map((panel) => ({
      ...panel,
      xNm: panel.xNm - footNm,
      yNm: panel.yNm + inchNm,
    }));
    const draft = await host.ask('design.draft', { system: 'OMB', geometry: { ...geometry, panels } });
    expect(draft.origin).toEqual({ xNm: -footNm, yNm: inchNm });
    expect(draft.panels.map((panel) => [panel.xNm, panel.yNm])).toEqual(
      geometry.panels.map((panel) => [panel.xNm, panel.yNm]),
    );
  });
});

describe('A design that is kept', () => {
  test('is read again, from its corner; kept once more unchanged it has no new state', async () => {
    const design = await typed('N1', '18 36 12');
    expect(await save(design)).toEqual({ number: 1, sameAs: [] });
    const read = await host.ask('design.read', { design: 'N1' });
    expect(read.geometry).toEqual(design.geometry);
    expect(read.rowText.us).toBe('18 36 12 | 8+4');
    expect(await save(design, false)).toMatchObject({ number: 1 });
    expect(await refusedSave(design)).toBe('design-exists');
    expect(await refusedSave({ ...design, code: 'N9' }, false)).toBe('unknown-design');
    expect(await refusedSave({ ...design, code: 'N9', system: 'NONE' })).toBe('unknown-system');
  });

  test('as the mirror image of another of the same hand is refused, and as its other hand is told of it', async () => {
    const mirrored = await typed('N2', '12 36 18', { hand: 'left' });
    expect(await refusedSave(mirrored)).toBe('hand-taken-for-its-twin');
    expect(await save({ ...mirrored, hand: 'right' })).toEqual({
      number: 1,
      sameAs: [{ design: 'N1', how: 'mirrored' }],
    });
    const again = await typed('N3', '18 36 12', { hand: 'right' });
    expect(await refusedSave(again)).toBe('hand-taken-for-its-twin');
    expect((await save({ ...again, hand: 'left' })).sameAs).toEqual([
      { design: 'N1', how: 'same' },
      { design: 'N2', how: 'mirrored' },
    ]);
  });

  test('is called symmetrical where it is its own mirror image, and only there', async () => {
    expect(await refusedSave(await typed('N4', '36 24', { hand: 'symmetrical' }))).toBe(
      'hand-not-symmetrical',
    );
    const even = await typed('N4', '30 12 30', { hand: 'left' });
    expect(await refusedSave(even)).toBe('hand-symmetrical');
    // Edges are part of it: the mirror image has its corner at the other end.
    const edges = { left: 'inside-corner', right: 'next-gang' } as const;
    const corner = { ...even, geometry: { ...even.geometry, edges } };
    expect(await refusedSave({ ...corner, hand: 'symmetrical' })).toBe('hand-not-symmetrical');
    expect((await save({ ...corner, hand: 'left' })).number).toBe(1);
  });

  test('and stands at a pour may not change under its revision; raised, both states are compared', async () => {
    const { summary, geometry, assembleH, breakDownH } = await host.ask('design.read', { design: 'GB' });
    const { code, name, system, revision, hand } = summary;
    const facts = { code, name, system, revision, hand, assembleH, breakDownH };
    const changed = {
      ...facts,
      geometry: (await typed('GB', '30 36 30')).geometry,
    };
    expect(summary.turns).toBeGreaterThan(0);
    expect(await refusedSave(changed, false)).toBe('revision-not-raised');
    // Its name and hours are no pieces.
    expect(await save({ ...changed, geometry, name: 'Wall gang' }, false)).toMatchObject({ number: 2 });
    expect(await save({ ...changed, revision: 'B' }, false)).toMatchObject({ number: 3 });
    const { revisions } = await host.ask('design.revisions', { design: 'GB' });
    expect(revisions.map((each) => [each.number, each.revision, each.name])).toEqual([
      [1, 'A', name],
      [2, 'A', 'Wall gang'],
      [3, 'B', name],
    ]);
    expect(revisions[2]).toMatchObject({ who: 'tester', ruleVersion: 1 });
    const compared = await host.ask('design.compare', { design: 'GB', before: 1, after: 3 });
    const panels = compared.lines.filter((line) => line.component.startsWith('P'));
    expect(panels.map((line) => [line.component, line.before, line.after])).toEqual([
      ['P430', 0, 2],
      ['P424', 1, 0],
      ['P436', 2, 1],
      ['P830', 0, 2],
      ['P824', 1, 0],
      ['P836', 2, 1],
    ]);
    expect(compared.before.revision).toBe('A');
    expect(compared.after.widthNm).toBe(96 * inchNm);
    // None stands where one of its kind stood.
    expect(compared.panelsOnlyBefore).toHaveLength(6);
    expect(compared.panelsOnlyAfter).toHaveLength(6);
    expect(await host.refused('design.compare', { design: 'GB', before: 1, after: 9 })).toBe(
      'unknown-revision',
    );
    // The plan follows the new one without being told.
    const board = await host.ask('board.read', { job });
    expect(board.turns.some((turn) => turn.design === 'GB')).toBe(true);
  });

  test('is taken out where no pour needs it, its states stay, and put back it goes on counting', async () => {
    expect(await host.refused('design.remove', { commandId: commandId(), design: 'GA' })).toBe(
      'design-needed',
    );
    const { removed, pick } = await host.ask('design.remove', { commandId: commandId(), design: 'N1' });
    expect(pick).toBeNull();
    expect(await host.refused('design.read', { design: 'N1' })).toBe('unknown-design');
    expect((await host.ask('design.revisions', { design: 'N1' })).revisions).toHaveLength(1);
    expect(await save({ ...removed, revision: 'B' })).toMatchObject({ number: 2 });
    expect(await host.refused('design.remove', { commandId: commandId(), design: 'X' })).toBe(
      'unknown-design',
    );
  });
});

test('The two hands of a gang are made of the same pieces, rails and bolts too', async () => {
  for (const [left, right] of [
    ['GBL', 'GBR'],
    ['GNL', 'GNR'],
  ] as const) {
    const [one, other] = [
      await host.ask('design.read', { design: left }),
      await host.ask('design.read', { design: right }),
    ];
    const pieces = (read: typeof one) => read.lines.map((line) => [line.component, line.quantity]);
    expect(pieces(one)).toEqual(pieces(other));
    expect(one.sameAs).toEqual([{ design: right, how: 'mirrored' }]);
  }
});

test('A gang flies on to where it stands again, and its mirror image at the same place and time does not', async () => {
  await save(await typed('ML', '18 36 24'));
  await save(await typed('MR', '24 36 18', { hand: 'right' }));
  const { pours } = await host.ask('pour.list', { job });
  const { turns } = await host.ask('board.read', { job });
  const later = turns.find((turn) => turn.before.how === 'fly-on');
  const earlier = turns.find((turn) => later?.before.how === 'fly-on' && turn.id === later.before.turn);
  if (later === undefined || earlier === undefined) throw new Error('No gang flies on in the demo.');

  const put = async (turn: typeof later, design: string): Promise<void> => {
    const pour = pours.find((each) => each.pour.code === turn.pour)!.pour;
    const sides = pour.sides.map((side) => ({
      ...side,
      // An id names the side and the place of the gang on it: P08/A2.
      gangs: side.gangs.map((gang, index) =>
        turn.id === `${turn.pour}/${side.side}${index + 1}` ? { ...gang, design } : gang,
      ),
    })) as typeof pour.sides;
    await host.ask('pour.save', { commandId: commandId(), job, pour: { ...pour, sides } });
  };
  const before = async () => (await host.ask('board.read', { job })).turns.find(({ id }) => id === later.id);

  await put(earlier, 'ML');
  await put(later, 'ML');
  expect(await before()).toMatchObject({ design: 'ML', before: { how: 'fly-on', turn: earlier.id } });
  await put(later, 'MR');
  const mirrored = await before();
  expect(mirrored?.design).toBe('MR');
  expect(['assemble', 'regang']).toContain(mirrored?.before.how);
});
