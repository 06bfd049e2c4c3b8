// Pick lists, trucks and loads on the demo job: what is taken from where, what flies on and is not picked, what is
// refused, and what the sheets say.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { wrongWith } from '../yard/loads-by-hand.ts';
import { rowsOf, withClass, wordsOf } from '../sheets/read-tree.ts';
import { demoHost, type DemoHost, job } from './demo-host.ts';
import { flatbed } from './demo-loading.ts';

let host: DemoHost;
let commands = 0;
const id = (): string => `loading-test-${(commands += 1)}`;
const at = '2026-03-02T07:00:00-05:00';

beforeAll(async () => {
  host = await demoHost();
  await host.ask('truck.save', { commandId: id(), truck: flatbed });
});
afterAll(() => host.close());

describe('a pick list', () => {
  test('of a design is its take-off, taken from our own before hired pieces, hooks apart', async () => {
    const { lines } = await host.ask('design.read', { design: 'GA' });
    const list = await host.ask('picklist.read', { design: 'GA' });
    const sums = new Map<string, number>();
    for (const line of list.places.flatMap((place) => place.lines)) {
      expect(line.owner).toBe('OURS');
      sums.set(line.component, (sums.get(line.component) ?? 0) + line.quantity);
    }
    const pieces = lines.filter(({ kind }) => kind !== 'hook');
    expect(Object.fromEntries(sums)).toEqual(
      Object.fromEntries(pieces.map(({ component, quantity }) => [component, quantity])),
    );
    expect(list.hooks).toEqual([{ component: 'LH', name: 'Lifting hook', quantity: 2 }]);
    expect(list.short).toEqual([]);
    const grams = pieces.reduce((sum, { weightGrams }) => sum + weightGrams, 0);
    expect(list.weightGrams).toBe(grams);
    const each = list.places[0]!.lines.map((line) => line.weightGrams / line.quantity);
    expect(each.toSorted((a, b) => b - a)).toEqual(each);
  });

  test('of the first pour is four gangs and its loose pieces; its sides make up the whole', async () => {
    const whole = await host.ask('picklist.read', { job, pour: 'P01' });
    expect(whole.coming.map(({ turn, how }) => [turn, how])).toEqual([
      ['P01/A1', 'new'],
      ['P01/A2', 'new'],
      ['P01/B1', 'new'],
      ['P01/B2', 'new'],
    ]);
    const { pours } = await host.ask('pour.list', { job });
    const ties = pours.find(({ pour }) => pour.code === 'P01')!.loose.find((line) => line.counted)!;
    const of = (list: typeof whole, component: string): number =>
      list.places
        .flatMap((place) => place.lines)
        .filter((line) => line.component === component)
        .reduce((sum, { quantity }) => sum + quantity, 0);
    // A GA has 4 panels of 8 ft; 4 braces with side A; 12 locks between gangs beside those in them.
    const { lines } = await host.ask('design.read', { design: 'GA' });
    const locks = lines.find(({ component }) => component === 'LK')!.quantity;
    expect([of(whole, 'P836'), of(whole, 'LK'), of(whole, 'TR12')]).toEqual([
      16,
      4 * locks + 12,
      ties.quantity,
    ]);
    const [a, b] = [
      await host.ask('picklist.read', { job, pour: 'P01', side: 'A' }),
      await host.ask('picklist.read', { job, pour: 'P01', side: 'B' }),
    ];
    for (const component of ['P836', 'LK', 'BR', 'SH', 'TR12'])
      expect(of(a, component) + of(b, component), component).toBe(of(whole, component));
    expect([of(a, 'BR'), of(b, 'BR'), of(a, 'TR12')]).toEqual([4, 0, 0]);
    expect(a.id).toBe('pour:TB26:P01:A');
  });

  test('what flies on by the plan is not picked, what is re-ganged only by what is put in', async () => {
    const board = await host.ask('board.read', { job });
    let flown = 0;
    for (const { pour } of board.pours.slice(0, 12)) {
      const list = await host.ask('picklist.read', { job, pour: pour.code });
      for (const gang of list.coming) {
        const { before } = board.turns.find((turn) => turn.id === gang.turn)!;
        const how = before.how === 'assemble' || before.how === 'built' ? 'new' : before.how;
        expect([gang.turn, gang.how]).toEqual([gang.turn, how]);
        flown += Number(how === 'fly-on');
      }
    }
    expect(flown).toBeGreaterThan(5);
  });

  test('loose pieces that were issued to the pour are not picked again; a gang that is built is not', async () => {
    await host.ask('pour.issue', { commandId: id(), job, pour: 'P03', from: 'ENN', at });
    await host.ask('gang.build', {
      commandId: id(),
      gang: 'CB-1',
      design: 'CB',
      from: 'ENN',
      at,
      turn: 'P03/A1',
      job,
    });
    // What is booked of a day to come is not there yet.
    const early = await host.ask('picklist.read', { job, pour: 'P03', now: '2026-03-01T07:00:00-05:00' });
    expect(early.places.flatMap((place) => place.lines).map(({ component }) => component)).toContain('OC8');
    const list = await host.ask('picklist.read', { job, pour: 'P03', now: at });
    expect(list.coming).toMatchObject([
      { turn: 'P03/A1', how: 'is-built', from: 'CB-1' },
      { turn: 'P03/A2', how: 'new' },
    ]);
    const picked = list.places.flatMap((place) => place.lines).map(({ component }) => component);
    expect(picked).not.toContain('OC8');
    expect(picked).toContain('P824');
  });

  test('from one place alone the rest is short, and says where it lies', async () => {
    const { short, from } = await host.ask('picklist.read', { design: 'GB', from: 'TB' });
    expect(from).toBe('TB');
    const rails = short.find(({ component }) => component === 'R8')!;
    expect(rails).toMatchObject({ kind: 'stiffening-rail', there: 0 });
    expect(rails.elsewhere).toContainEqual({
      location: 'ENN',
      owner: 'OURS',
      condition: 'ready',
      quantity: 12,
    });
    const { tree } = await host.ask('sheet.picklist', { id: 'design:GB' });
    expect(wordsOf(tree)).toContain('All of it is there and ready, by the book.');
  });

  test('a rail of another length becomes a draft issue note with its remark, and a stop for the designer', async () => {
    const given = await host.ask('picklist.given', {
      commandId: id(),
      pick: 'design:GB',
      id: 'note-given-instead',
      number: 'I-7',
      from: 'ENN',
      to: 'TB',
      lines: [
        { component: 'P836', owner: 'OURS', condition: 'ready', quantity: 2, insteadOf: null },
        { component: 'R10', owner: 'OURS', condition: 'ready', quantity: 3, insteadOf: 'R8' },
      ],
    });
    expect(given.findings).toMatchObject([
      { severity: 'stop', where: 'GB', message: expect.stringContaining('a rail of another length') },
    ]);
    // Four of R8 were asked for, three R10 came in their place.
    expect(given.missing).toContainEqual({ component: 'R8', quantity: 1 });
    expect(given.missing).toContainEqual({ component: 'P824', quantity: 1 });
    const before = (await host.ask('yard.quantities', { location: 'TB' })).rows;
    expect(before.filter(({ component }) => component === 'R10')).toEqual([]);
    const list = await host.ask('picklist.read', { note: 'note-given-instead' });
    expect([list.code, list.from, list.to, list.pieces]).toEqual(['I-7', 'ENN', 'TB', 5]);
    const { note } = await host.ask('note.read', { note: 'note-given-instead' });
    expect([note.kind, note.state]).toEqual(['issue', 'draft']);
    expect(note.lines.map(({ component, remark }) => [component, remark])).toEqual([
      ['P836', null],
      ['R10', 'Given in place of R8: ask the designer'],
    ]);
  });

  test('bad questions are refused by name', async () => {
    expect(await host.refused('picklist.read', {})).toBe('one-of-three');
    expect(await host.refused('picklist.read', { design: 'GA', note: 'some-note' })).toBe('one-of-three');
    expect(await host.refused('picklist.read', { pour: 'P01' })).toBe('job-needed');
    expect(await host.refused('picklist.read', { design: 'X' })).toBe('unknown-design');
    expect(await host.refused('picklist.read', { job, pour: 'X' })).toBe('unknown-pour');
    expect(await host.refused('picklist.read', { note: 'no-such-note' })).toBe('unknown-note');
    expect(await host.refused('picklist.read', { design: 'GA', from: 'TFH' })).toBe('not-loose');
    expect(await host.refused('sheet.picklist', { id: 'gang:GA' })).toBe('not-a-pick-list');
    const line = { owner: 'OURS', condition: 'ready' as const, quantity: 1 };
    const given = { pick: 'design:GB', id: 'note-of-nothing', number: 'I-9', from: 'ENN', to: 'TB' };
    const lines = [{ ...line, component: 'R10', insteadOf: 'NOPE' }];
    expect(await host.refused('picklist.given', { commandId: id(), ...given, lines })).toBe(
      'unknown-component',
    );
    const strange = [{ ...line, component: 'NOPE', insteadOf: 'R8' }];
    expect(await host.refused('picklist.given', { commandId: id(), ...given, lines: strange })).toBe(
      'unknown-component',
    );
  });
});

describe('loads', () => {
  const lines = [
    { component: 'P836', quantity: 36, stop: 2 },
    { component: 'P436', quantity: 36, stop: 2 },
    { component: 'LK', quantity: 300, stop: 1 },
    { component: 'R12', quantity: 16, stop: 1 },
    { component: 'BR', quantity: 8, stop: 1 },
  ];

  test('carry every piece once, within payload, deck and height, and come off stop by stop', async () => {
    const { loads, notFitting, atLeast, sizes } = await host.ask('load.propose', { lines, trucks: ['T1'] });
    expect(notFitting).toEqual([]);
    const carried = new Map<string, number>();
    for (const { stacks, truck, weightGrams, unloading } of loads) {
      expect(wrongWith(stacks, truck)).toEqual([]);
      expect(weightGrams).toBeLessThanOrEqual(truck.payloadGrams);
      const stops = unloading.map(({ stop }) => stop);
      expect(stops.toSorted((a, b) => a - b)).toEqual(stops);
      for (const { what } of stacks.flatMap((stack) => stack.layers))
        if ('component' in what)
          carried.set(what.component, (carried.get(what.component) ?? 0) + what.quantity);
    }
    expect(Object.fromEntries(carried)).toEqual(
      Object.fromEntries(lines.map(({ component, quantity }) => [component, quantity])),
    );
    // 36 × 200 + 36 × 108 + 300 × 5 + 16 × 60 + 8 × 75 = 14,148 lb on 14,000 lb: two by weight.
    expect(atLeast.byWeight).toBe(2);
    expect(loads).toHaveLength(2);
    expect(sizes.find(({ component }) => component === 'P836')).toMatchObject({
      how: 'bundle',
      pieces: 10,
      defaults: ['thickness laid flat', 'pieces in a bundle'],
    });
  });

  test('a gang laid down goes as one; one that is wider than the deck is named', async () => {
    await host.ask('gang.build', { commandId: id(), gang: 'GB-1', design: 'GB', from: 'ENN', at });
    await host.ask('gang.build', { commandId: id(), gang: 'GA-1', design: 'GA', from: 'ENN', at });
    const sent = [
      { gang: 'GB-1', stop: 1 },
      { gang: 'GA-1', stop: 1 },
    ];
    const { loads, notFitting, names } = await host.ask('load.propose', { lines: sent, trucks: ['T1'] });
    expect(loads.map(({ stacks }) => stacks[0]?.layers[0]?.what)).toEqual([{ gang: 'GB-1' }]);
    // 12 ft by 12 ft on a deck 8 ft wide.
    expect(notFitting.map(({ layer, passes }) => [layer.what, passes])).toEqual([
      [{ gang: 'GA-1' }, ['width']],
    ]);
    expect(names['GB-1']).toMatch(/^GB /u);
    const { gang } = await host.ask('gang.read', { gang: 'GB-1' });
    expect(loads[0]?.weightGrams).toBe(gang.weightGrams);
  });

  test('of a note is kept with who tied it down, is edited by one at a time, and carries no more than the note', async () => {
    const note = 'note-given-instead';
    const { loads } = await host.ask('load.propose', { note, trucks: ['T1'] });
    expect(loads).toHaveLength(1);
    const { stacks } = loads[0]!;
    const load = {
      id: 'load-of-note',
      paper: note,
      version: 0,
      truck: 'T1',
      stacks,
      leavesAt: at,
      tiedDownBy: null,
      remark: null,
    };
    const save = (changes: object) => ({ commandId: id(), load: { ...load, ...changes } });
    expect(await host.ask('load.save', save({}))).toEqual({ load: 'load-of-note', version: 1 });
    expect(await host.refused('load.save', save({}))).toBe('changed-meanwhile');
    await host.ask('load.save', save({ version: 1, tiedDownBy: 'A. Driver' }));
    expect(await host.refused('load.save', save({ id: 'load-of-note-2' }))).toBe('loaded-twice');
    const row = (await host.ask('load.list', {})).loads.find((each) => each.load === 'load-of-note');
    expect(row).toMatchObject({ number: 'I-7', tiedDownBy: 'A. Driver', stacks: stacks.length });
    const { tree, foot } = await host.ask('sheet.loading', { id: 'load-of-note' });
    expect(foot).toBe('Loading list T1 · note I-7');
    expect(wordsOf(tree)).toContain('Tied down by A. Driver');
    const rows = rowsOf(tree, 'load-order').slice(1);
    expect(new Set(rows.map((cells) => cells[3]))).toEqual(new Set(['2 P836', '3 R10']));
    // Loaded the other way round than it comes off.
    expect(rows.map((cells) => Number(cells[7]))).toEqual([2, 1]);
    expect(withClass(tree, 'load-box').length).toBeGreaterThan(2);
  });

  test('that passes a limit is not kept; one whose truck was made smaller says so', async () => {
    const { loads } = await host.ask('load.propose', {
      lines: [{ component: 'P836', quantity: 30, stop: 1 }],
      trucks: ['T1'],
    });
    const { stacks } = loads[0]!;
    const text = { paper: null, version: 0, leavesAt: null, tiedDownBy: null, remark: null };
    const small = { ...flatbed, code: 'T2', name: 'Small', payloadGrams: 2_000_000 };
    await host.ask('truck.save', { commandId: id(), truck: small });
    const load = { ...text, id: 'load-too-heavy', truck: 'T2', stacks };
    expect(await host.refused('load.save', { commandId: id(), load })).toBe('load-payload');
    const shifted = stacks.map((stack) => ({ ...stack, fromCabNm: stack.fromCabNm + 6e9 }));
    const out = { ...text, id: 'load-out-of-deck', truck: 'T1', stacks: shifted };
    expect(await host.refused('load.save', { commandId: id(), load: out })).toBe('load-deck-length');
    await host.ask('load.save', { commandId: id(), load: { ...load, id: 'load-kept-1', truck: 'T1' } });
    const weaker = { ...flatbed, payloadGrams: 1_000_000 };
    await host.ask('truck.save', { commandId: id(), truck: weaker });
    expect((await host.ask('load.read', { load: 'load-kept-1' })).passes).toEqual(['payload']);
    const { tree } = await host.ask('sheet.loading', { id: 'load-kept-1' });
    expect(wordsOf(tree)).toContain('Not to leave so');
    await host.ask('truck.save', { commandId: id(), truck: flatbed });
  });

  test('a truck that is there already is not entered a second time by its code', async () => {
    const entered = { commandId: id(), truck: flatbed, isNew: true };
    expect(await host.refused('truck.save', entered)).toBe('truck-exists');
    const { trucks } = await host.ask('truck.list', {});
    expect(trucks.map(({ code }) => code)).toEqual(['FB24', 'T1', 'T2', 'TR40']);
  });

  test('bad questions are refused by name', async () => {
    expect(await host.refused('load.propose', { trucks: ['T1'] })).toBe('one-of-two');
    expect(await host.refused('load.propose', { lines: [], trucks: ['T9'] })).toBe('unknown-truck');
    const strange = [{ component: 'NOPE', quantity: 1, stop: 1 }];
    expect(await host.refused('load.propose', { lines: strange, trucks: ['T1'] })).toBe('unknown-component');
    const many = [{ component: 'P836', quantity: 100_000, stop: 1 }];
    expect(await host.refused('load.propose', { lines: many, trucks: ['T1'] })).toBe('too-many-things');
    const box = [{ container: 'NOPE', stop: 1 }];
    expect(await host.refused('load.propose', { lines: box, trucks: ['T1'] })).toBe('unknown-container');
    const gang = [{ gang: 'NOPE', stop: 1 }];
    expect(await host.refused('load.propose', { lines: gang, trucks: ['T1'] })).toBe('unknown-gang');
    expect(await host.refused('load.read', { load: 'no-such-load' })).toBe('unknown-load');
    expect(await host.refused('sheet.loading', { id: 'no-such-load' })).toBe('unknown-load');
    const empty = { paper: null, version: 0, stacks: [], leavesAt: null, tiedDownBy: null, remark: null };
    const load = { ...empty, id: 'load-on-nothing', truck: 'T9' };
    expect(await host.refused('load.save', { commandId: id(), load })).toBe('unknown-truck');
  });
});
