// Notes and figures asked of the demo's own book: what moves, what is refused, and that nothing of a
// refused paper is left behind.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { rowsOf, wordsOf } from '../sheets/read-tree.ts';
import { demoHost, type DemoHost } from './demo-host.ts';

let host: DemoHost;

beforeAll(async () => {
  host = await demoHost();
});

afterAll(() => host.close());

let ids = 0;
const id = (): string => `paper-test-${(ids += 1)}`;

const text = {
  from: 'TFH',
  to: 'ENN',
  job: null,
  arrivedAt: null,
  leftAt: null,
  vehicle: 'Flatbed 12',
  signedHere: null,
  signedThere: null,
  protest: null,
  remark: null,
};

const line = (component: string, sent: number, counted: number | null) => ({
  component,
  owner: 'TFH',
  condition: 'ready' as const,
  sent,
  counted,
  container: null,
  remark: null,
});

async function saved(lines: ReturnType<typeof line>[], more: object = {}): Promise<string> {
  const note = id();
  const kind = 'delivery' as const;
  await host.ask('note.save', {
    commandId: id(),
    note: { id: note, kind, number: note, expectedAt: null, version: 0, ...text, lines, ...more },
  });
  return note;
}

const held = async (component: string): Promise<number> =>
  (await host.ask('yard.quantities', {})).rows
    .filter((row) => row.component === component && row.owner === 'TFH')
    .reduce((sum, row) => sum + row.quantity, 0);

describe('A delivery note', () => {
  test('is a draft, then booked as counted with a claim of 4, then reversed as a whole', async () => {
    const before = await held('LK');
    const note = await saved([line('LK', 40, 36), line('WB', 2, 2)], { signedThere: 'The driver' });
    expect(await held('LK')).toBe(before);
    expect(await host.ask('note.book', { commandId: id(), note })).toMatchObject({
      booked: 2,
      claims: [{ component: 'LK', theirs: 40, ours: 36, disputed: 4 }],
    });
    expect(await held('LK')).toBe(before + 36);
    const read = await host.ask('note.read', { note });
    expect(read.note.state).toBe('booked');
    expect(read.movements.map(({ component, quantity }) => [component, quantity])).toEqual([
      ['WB', 2],
      ['LK', 36],
    ]);
    const owed = await host.ask('yard.owed', {});
    expect(owed.claims.filter((claim) => claim.note === note)).toMatchObject([{ disputed: 4 }]);
    expect(owed.rows.find((row) => row.component === 'LK')).toMatchObject({ owed: before + 36, lost: 0 });
    expect(await host.refused('note.book', { commandId: id(), note })).toBe('note-booked');
    expect(await host.ask('note.reverse', { commandId: id(), note, remark: 'Of another job' })).toEqual({
      reversed: 2,
    });
    expect(await held('LK')).toBe(before);
    expect(await host.refused('note.reverse', { commandId: id(), note, remark: 'again' })).toBe(
      'note-reversed',
    );
    // Only those of the demo's own papers are left.
    expect((await host.ask('yard.owed', {})).claims).toHaveLength(2);
  });

  test('prints with what was sent and received, the claim, the protest, weights and cautions', async () => {
    const note = await saved([line('R8', 6, 4), line('WB', 2, null)], {
      protest: 'Two rails not on the truck',
    });
    const draft = await host.ask('sheet.delivery', { id: note, units: 'us' });
    expect(wordsOf(draft.tree)).toContain('draft: nothing of it is booked');
    const written = await host.ask('note.read', { note });
    const { state: _, countedThere: __, ...text_ } = written.note;
    await host.ask('note.save', {
      commandId: id(),
      note: { ...text_, lines: [line('R8', 6, 4), line('WB', 2, 2)] },
    });
    await host.ask('note.book', { commandId: id(), note });
    const { tree, title } = await host.ask('sheet.delivery', { id: note, units: 'us' });
    expect(title).toBe(`Delivery note ${note}`);
    const [, rails] = rowsOf(tree, 'note-lines');
    expect(rails?.slice(0, 4)).toEqual(['6', '4', 'R8', 'Stiffening rail 8 ft']);
    const words = wordsOf(tree);
    // 4 rails of 40 lb and 2 brackets of 35 lb.
    for (const part of [
      'R8 (TFH): 6 on the paper, 4 counted here.',
      'Two rails not on the truck',
      '6 pieces, 230 lb',
      'Planning aid only',
    ])
      expect(words).toContain(part);
    expect(await host.refused('sheet.return', { id: note })).toBe('another-kind');
    // By its number too, as people name it; times by the clock of the job.
    const named = await host.ask('sheet.delivery', { id: 'D-099' });
    expect(named.title).toBe('Delivery note D-099');
    expect(wordsOf(named.tree)).toContain('Arrived 2026-02-20 14:10');
    await host.ask('note.reverse', { commandId: id(), note, remark: 'Tried' });
  });

  test('edited by two: the second is refused with both versions and nothing is lost', async () => {
    const note = await saved([line('LK', 5, null)]);
    const { note: read } = await host.ask('note.read', { note });
    const { state: _, countedThere: __, ...edited } = read;
    const again = { ...edited, remark: 'a first hand' };
    expect(await host.ask('note.save', { commandId: id(), note: again })).toEqual({ version: 2 });
    const second = { ...edited, remark: 'a second hand' };
    expect(await host.refused('note.save', { commandId: id(), note: second })).toBe('changed-meanwhile');
    expect((await host.ask('note.read', { note })).note.remark).toBe('a first hand');
    // Whoever looked at the first version does not book the second unseen.
    expect(await host.refused('note.book', { commandId: id(), note, version: 1 })).toBe('changed-meanwhile');
    expect(await host.refused('note.book', { commandId: id(), note })).toBe('not-counted');
    expect(await host.ask('note.drop', { commandId: id(), note })).toEqual({ number: note });
    expect(await host.refused('note.drop', { commandId: id(), note })).toBe('note-dropped');
  });

  test.each([
    [{ from: 'NOWHERE' }, 'unknown-location'],
    [{ lines: [line('NONE', 1, 1)] }, 'unknown-component'],
    [{ lines: [{ ...line('LK', 1, 1), owner: 'NOBODY' }] }, 'unknown-owner'],
    [{ lines: [{ ...line('LK', 1, 1), container: 'NOWHERE' }] }, 'unknown-location'],
  ])('with %j is not written', async (more, code) => {
    const note = { id: id(), kind: 'delivery' as const, number: id(), expectedAt: null, version: 0 };
    const input = { commandId: id(), note: { ...note, ...text, lines: [line('LK', 1, 1)], ...more } };
    expect(await host.refused('note.save', input)).toBe(code);
  });

  test('a number is used once for a kind', async () => {
    const note = await saved([line('LK', 1, 1)]);
    const twin = { id: id(), kind: 'delivery' as const, number: note, expectedAt: null, version: 0 };
    const input = { commandId: id(), note: { ...twin, ...text, lines: [] } };
    expect(await host.refused('note.save', input)).toBe('number-used');
  });

  test('whose day has passed is late', async () => {
    const note = await saved([line('R6', 2, null)], { expectedAt: '2026-03-12T09:00:00-05:00' });
    const lateAt = async (now: string): Promise<boolean | undefined> =>
      (await host.ask('note.list', { now })).notes.find((row) => row.id === note)?.late;
    expect(await lateAt('2026-03-12T09:00:00-05:00')).toBe(false);
    expect(await lateAt('2026-03-12T09:00:01-05:00')).toBe(true);
  });
});

describe('A return', () => {
  const back = { kind: 'return' as const, from: 'ENN', to: 'TFH' };

  test('of more than there is is refused and leaves the draft as it was', async () => {
    const note = await saved([line('WB', 13, 13)], back);
    expect(await host.refused('note.book', { commandId: id(), note })).toBe('not-enough');
    expect((await host.ask('note.read', { note })).note.state).toBe('draft');
  });

  test('of pieces that are not the supplier’s is refused', async () => {
    const note = await saved([{ ...line('WB', 1, 1), owner: 'OURS' }], back);
    expect(await host.refused('note.book', { commandId: id(), note })).toBe('not-theirs');
  });

  test('counted 2 fewer at the depot is a claim, told once', async () => {
    const note = await saved([line('WB', 6, 6)], back);
    expect(await host.refused('note.told', { commandId: id(), note, countedThere: [4] })).toBe('note-draft');
    await host.ask('note.book', { commandId: id(), note });
    expect(await host.refused('note.told', { commandId: id(), note, countedThere: [4, 1] })).toBe(
      'lines-differ',
    );
    expect(await host.ask('note.told', { commandId: id(), note, countedThere: [4] })).toMatchObject({
      claims: [{ component: 'WB', where: 'depot', theirs: 4, ours: 6, disputed: 2 }],
    });
    const { tree } = await host.ask('sheet.return', { id: note, units: 'metric' });
    expect(wordsOf(tree)).toContain('WB (TFH): 6 counted at loading, 4 at the depot.');
    expect(await host.refused('note.told', { commandId: id(), note, countedThere: [6] })).toBe(
      'told-already',
    );
  });
});

test('like pieces of two owners change places, and each keeps its owner', async () => {
  const at = async (owner: string, location: string): Promise<number> =>
    (await host.ask('yard.quantities', { outside: true })).rows.find(
      (row) =>
        row.component === 'R12' &&
        row.owner === owner &&
        row.location === location &&
        row.condition === 'ready',
    )?.quantity ?? 0;
  const before = [await at('OURS', 'ENN'), await at('TFH', 'TFH')];
  // Two of ours went back to the supplier in place of two of theirs.
  const one = { owner: 'OURS', location: 'ENN', condition: 'ready' as const };
  const other = { owner: 'TFH', location: 'TFH', condition: 'ready' as const };
  const swap = { component: 'R12', quantity: 2, one, other, remark: 'Taken for ours at loading' };
  expect(await host.ask('yard.swap', { commandId: id(), ...swap })).toEqual({ booked: 2 });
  expect([await at('OURS', 'ENN'), await at('TFH', 'TFH')]).toEqual([
    (before[0] ?? 0) - 2,
    (before[1] ?? 0) - 2,
  ]);
  expect([await at('OURS', 'TFH'), await at('TFH', 'ENN')]).toEqual([2, 18]);
  const same = { ...swap, other: { ...other, owner: 'OURS' } };
  expect(await host.refused('yard.swap', { commandId: id(), ...same })).toBe('one-owner');
});

test('pieces that are not ours, and ours at another job without a note, are lines of their own', async () => {
  await host.ask('yard.placeSave', {
    commandId: id(),
    place: { what: 'location', code: 'J9', name: 'Culvert job', kind: 'other-job' },
  });
  await host.ask('yard.placeSave', {
    commandId: id(),
    place: { what: 'owner', code: 'UNKNOWN', name: 'Not known', kind: 'others', agreement: null },
  });
  const move = { component: 'BR', quantity: 1, condition: 'ready' as const, at: '2026-02-23T08:00:00-05:00' };
  await host.ask('yard.move', {
    commandId: id(),
    movements: [
      { ...move, id: id(), owner: 'OURS', from: 'ENN', to: 'J9', reason: 'transfer' },
      { ...move, id: id(), owner: 'UNKNOWN', from: 'LOST', to: 'ENN', reason: 'found', remark: 'Red paint' },
    ],
  });
  const { rows } = await host.ask('yard.foreign', {});
  expect(rows).toMatchObject([
    { what: 'elsewhere', component: 'BR', owner: 'OURS', location: 'J9', quantity: 1, noteNumber: null },
    { what: 'not-ours', component: 'BR', owner: 'UNKNOWN', location: 'ENN', remark: 'Red paint' },
  ]);
  const kind = { what: 'location' as const, code: 'J9', name: 'Culvert job', kind: 'yard' as const };
  expect(await host.refused('yard.placeSave', { commandId: id(), place: kind })).toBe('kind-stays');
});

test('signed figures only grow, and stand side by side', async () => {
  const figure = {
    owner: 'TFH',
    component: 'LK',
    asOf: '2026-03-01',
    signedBy: 'Both',
    paper: null,
    remark: null,
  };
  const add = (whose: 'owner' | 'ours' | 'agreed', quantity: number) =>
    host.ask('figure.add', { commandId: id(), figure: { ...figure, whose, quantity } });
  await add('owner', 214);
  expect(await add('ours', 210)).toEqual({ owner: 'TFH', component: 'LK' });
  const { rows, all } = await host.ask('figure.list', {});
  expect(rows).toMatchObject([{ theirs: { quantity: 214 }, ours: { quantity: 210 }, agreed: null, open: 4 }]);
  expect(all.map(({ quantity }) => quantity)).toEqual([210, 214]);
  // Of that day, not of now: 174 locks of theirs by the opening figure and 36 by the delivery after it, none lost.
  expect(all.map((each) => [each.held, each.gone])).toEqual([
    [210, 0],
    [210, 0],
  ]);
  const unknown = { ...figure, whose: 'ours' as const, quantity: 1, component: 'NONE' };
  expect(await host.refused('figure.add', { commandId: id(), figure: unknown })).toBe('unknown-component');
});
