// Strips from the command line: what is expected, counts booked whole or refused whole, and a sheet of the ticket. GA is
// four panels of 8 ft, four of 4 ft, 26 locks, 4 rails with 16 bolts and 2 brackets by the demo's rule tables.
import { copyFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { newFolder, run } from './run-cli.ts';

const folder = newFolder();
const regang = (...args: string[]) => run(args, '', folder);
const strip = (...args: string[]) => regang('strip', '--book', 'B.regang', ...args);

interface StockRow {
  readonly component: string;
  readonly location: string;
  readonly condition: string;
  readonly quantity: number;
}

const pieces = { P436: 4, P836: 4, LK: 26, R12: 4, RB: 16, WB: 2 };

beforeAll(async () => {
  expect(await regang('demo', '--book', 'A.regang')).toMatchObject({ code: 0 });
});

const renew = (): void => copyFileSync(path.join(folder, 'A.regang'), path.join(folder, 'B.regang'));

async function quantities(): Promise<Record<string, number>> {
  const { rows } = (await regang('stock', '--book', 'B.regang')).document() as { rows: StockRow[] };
  const sums: Record<string, number> = {};
  for (const { component, location, condition, quantity } of rows) {
    const key = `${component} ${location} ${condition}`;
    sums[key] = (sums[key] ?? 0) + quantity;
  }
  return sums;
}

function counted(lines: readonly object[], more: object = {}): readonly string[] {
  writeFileSync(path.join(folder, 'C.json'), JSON.stringify({ lines, ...more }));
  return ['--counted', 'C.json'];
}

const all = Object.entries(pieces).map(([component, ready]) => ({ component, ready }));

describe('a strip', () => {
  beforeEach(renew);

  test('without counts prints what is expected and where the gang goes, and changes nothing', async () => {
    const before = await quantities();
    const ran = await strip('--turn', 'P01/A1');
    expect(ran).toMatchObject({ code: 0, stderr: '' });
    const document = ran.document() as { expected: { component: string; quantity: number }[] };
    expect(document).toMatchObject({
      job: 'TB26',
      turn: 'P01/A1',
      pour: 'P01',
      design: 'GA',
      next: { how: 'fly-on', turn: 'P04/A1', pour: 'P04' },
      booked: false,
    });
    expect(Object.fromEntries(document.expected.map((line) => [line.component, line.quantity]))).toEqual(
      pieces,
    );
    expect(await quantities()).toEqual(before);
  });

  test('with counts books it in one command: 3 locks missing against us, 1 panel to repair, 2 dirty', async () => {
    const before = await quantities();
    const lines = [
      ...all.filter(({ component }) => component !== 'LK' && component !== 'P836'),
      { component: 'LK', ready: 23 },
      { component: 'P836', ready: 1, toClean: 2, toRepair: 1 },
    ];
    const ran = await strip('--turn', 'P01/A1', ...counted(lines));
    expect(ran).toMatchObject({ code: 0, stderr: '' });
    expect(ran.document()).toMatchObject({
      booked: true,
      name: 'S-1',
      // Minor units: a lock is $17.50 in the demo's catalogue.
      missing: [{ component: 'LK', owner: 'OURS', quantity: 3, value: 5250 }],
    });
    const after = await quantities();
    const by = (key: string) => (after[key] ?? 0) - (before[key] ?? 0);
    expect(by('LK ENN ready')).toBe(-3);
    expect(by('P836 ENN ready')).toBe(-3);
    expect(by('P836 ENN to-clean')).toBe(2);
    expect(by('P836 ENN to-repair')).toBe(1);
    expect(by('R12 ENN ready')).toBe(0);
    expect((await regang('check', '--book', 'B.regang')).code).toBe(0);
  });

  test('booked again it is refused by whom and when, and nothing moves twice', async () => {
    expect((await strip('--turn', 'P01/A1', ...counted(all))).code).toBe(0);
    const before = await quantities();
    for (const args of [[], counted(all)]) {
      const ran = await strip('--turn', 'P01/A1', ...args);
      expect(ran.code).toBe(2);
      expect(ran.document()).toMatchObject({ error: { code: 'ticket-booked', field: 'turn' } });
      expect(ran.stdout).toContain('booked by tester');
    }
    expect(await quantities()).toEqual(before);
  });

  test('loose pieces of a pour are stripped by its name, and the ticket is a sheet', async () => {
    const ran = await strip('--turn', 'P01/loose');
    const { expected } = ran.document() as { expected: { component: string; quantity: number }[] };
    // Ties of the demo's wall W1: once per pair of opposite holes.
    expect(expected.find(({ component }) => component === 'TR12')?.quantity).toBe(24);
    const lines = expected.map(({ component, quantity }) => ({ component, toClean: quantity }));
    expect((await strip('--turn', 'P01/loose', ...counted(lines))).code).toBe(0);
    const sheet = ['sheet', 'strip', '--book', 'B.regang', '--id', 'S-1', '--out', 'S-1.html'];
    expect((await regang(...sheet)).document()).toMatchObject({ sheet: 'strip', id: 'S-1' });
  });
});

describe('what is refused, and leaves the book as it was', () => {
  const cases: readonly (readonly [
    why: string,
    args: () => readonly string[],
    code: string,
    words: string,
  ])[] = [
    ['a component not counted', () => counted(all.slice(1)), 'not-counted', 'not P436'],
    ['nothing counted', () => counted([]), 'not-counted', 'P01/A1: nothing of it'],
    [
      'more than can be',
      () => counted([...all.slice(1), { component: 'P436', ready: 5 }]),
      'more-than-expected',
      '5 of P436',
    ],
    [
      'a component of no gang',
      () => counted([...all, { component: 'P830', ready: 1 }]),
      'not-on-ticket',
      'P836, which it is taken for',
    ],
    [
      'an unknown component',
      () => counted([...all, { component: 'P999', ready: 1 }]),
      'unknown-component',
      'P999',
    ],
    ['a component twice', () => counted([...all, { component: 'LK', ready: 0 }]), 'component-twice', 'LK'],
    ['an unknown key', () => counted([{ component: 'LK', dirty: 1 }]), 'bad-input', 'dirty'],
    ['an unknown key of the file', () => counted(all, { who: 'me' }), 'bad-input', 'who'],
    ['a figure below zero', () => counted([{ component: 'LK', ready: -1 }]), 'bad-input', 'lines[0].ready'],
    ['half a piece', () => counted([{ component: 'LK', ready: 0.5 }]), 'bad-input', 'lines[0].ready'],
    ['a file that is not there', () => ['--counted', 'none.json'], 'counted-not-read', 'none.json'],
  ];

  let before: Record<string, number> = {};
  beforeAll(async () => {
    renew();
    before = await quantities();
  });

  test.each(cases)('%s', async (_, args, code, words) => {
    const ran = await strip('--turn', 'P01/A1', ...args());
    expect(ran.code).toBe(2);
    expect(ran.document()).toMatchObject({ error: { code } });
    expect(ran.stdout).toContain(words);
  });

  test.each([
    [['--turn', 'P01/Z9'], 'unknown-turn', 'turn'],
    [['--turn', 'P99/A1'], 'unknown-turn', 'turn'],
    [['--turn', 'P99/loose'], 'unknown-pour', 'pour'],
    [['--turn', 'P01/A1', '--job', 'NONE'], 'unknown-job', 'job'],
    [['--turn', 'P01/A1', '--location', 'LOST'], 'not-loose', 'place'],
    [[], 'bad-input', 'turn'],
  ])('%j: %s', async (args, code, field) => {
    const ran = await strip(...args);
    expect(ran.code).toBe(2);
    expect(ran.document()).toMatchObject({ error: { code, field } });
  });

  test('after all of them nothing is half done: nothing moved, and the turn is still free', async () => {
    expect(await quantities()).toEqual(before);
    expect((await strip('--turn', 'P01/A1')).code).toBe(0);
  });
});

test('the shapes of strip are printed', async () => {
  const { input, output } = (await regang('schema', 'strip')).document() as {
    input: { required: string[] };
    output: object;
  };
  expect(input.required).toEqual(['book', 'turn']);
  expect(JSON.stringify(output)).toContain('nextWords');
});
