import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { newFolder, root, run } from './run-cli.ts';

const folder = newFolder();
const regang = (...args: string[]) => run(args, '', folder);
let job: string;

beforeAll(async () => {
  const made = await regang('demo', '--book', 'B.regang');
  expect(made).toMatchObject({ code: 0, stderr: '' });
  job = String(made.document()['job']);
});

describe('demo', () => {
  test('makes a book where the person stands and names its job', () => {
    expect(existsSync(path.join(folder, 'B.regang'))).toBe(true);
    expect(job).not.toBe('');
  });

  test('refuses an existing file with exit 2 and leaves it byte for byte', async () => {
    const before = readFileSync(path.join(folder, 'B.regang'));
    const ran = await regang('demo', '--book', 'B.regang');
    expect(ran.code).toBe(2);
    expect(ran.document()).toMatchObject({ error: { code: 'file-exists', field: 'book' } });
    expect(readFileSync(path.join(folder, 'B.regang')).equals(before)).toBe(true);
  });
});

describe('plan', () => {
  test('prints runs, steps, at least two shortfalls with what holds them, cost, bound and gap', async () => {
    const ran = await regang('plan', '--book', 'B.regang', '--job', job);
    expect(ran.code).toBe(0);
    const plan = ran.document() as {
      runs: { turns: string[] }[];
      steps: unknown[];
      shortfalls: { component: string; turns: unknown[]; loose: unknown[] }[];
      cost: Record<string, number>;
      bound: number;
      gapPercent: number;
    };
    expect(plan.runs.length).toBeGreaterThan(0);
    expect(plan.steps.length).toBeGreaterThan(0);
    expect(plan.shortfalls.length).toBeGreaterThanOrEqual(2);
    for (const shortfall of plan.shortfalls)
      expect(shortfall.turns.length + shortfall.loose.length).toBeGreaterThan(0);
    const { labour = 0, hire = 0, total = 0, unmet = -1 } = plan.cost;
    expect(total).toBe(labour + hire);
    expect(unmet).toBeGreaterThanOrEqual(0);
    expect(plan.bound).toBeLessThanOrEqual(total + 1);
    expect(plan.gapPercent).toBeGreaterThanOrEqual(0);
  });

  test('given seconds to improve, says on standard error how far it is and prints a plan that is no dearer', async () => {
    // A book of its own: what was found stays in it.
    await regang('demo', '--book', 'better.regang');
    const atOnce = (await regang('plan', '--book', 'better.regang', '--job', job)).document() as {
      cost: { total: number };
    };
    const ran = await regang('plan', '--book', 'better.regang', '--job', job, '--improve', '8');
    expect(ran.code).toBe(0);
    const better = ran.document() as { cost: { total: number }; bound: number; proven: boolean };
    expect(better.cost.total).toBeLessThanOrEqual(atOnce.cost.total);
    const lines = ran.stderr.trim().split('\n');
    expect(lines.at(-1)).toContain(`total ${better.cost.total}`);
    for (const line of lines)
      expect(line).toMatch(
        /^regang: [\d.]+ s: total \d+(, \d+ piece-days that cannot be hired)?, (no plan costs less|at most)/u,
      );
    expect(lines.at(-1)).toContain(
      better.proven ? 'no plan costs less' : `at most ${better.cost.total - better.bound} still to be saved`,
    );
  }, 30_000);

  test('of a job that is not there is refused by its name', async () => {
    const ran = await regang('plan', '--book', 'B.regang', '--job', 'NONE');
    expect(ran.code).toBe(2);
    expect(ran.document()).toMatchObject({ error: { message: expect.stringContaining('NONE') } });
  });

  test('of seconds that are no number is refused', async () => {
    const ran = await regang('plan', '--book', 'B.regang', '--job', job, '--improve', 'long');
    expect(ran.document()).toMatchObject({ error: { code: 'bad-input', field: 'improve' } });
  });
});

describe('whatif', () => {
  test('prints what a moved pour would change and stores nothing', async () => {
    const before = (await regang('plan', '--book', 'B.regang', '--job', job)).document() as {
      turns: { pour: string }[];
      cost: unknown;
    };
    const pour = before.turns[0]!.pour;
    const ran = await regang('whatif', '--book', 'B.regang', '--job', job, '--move', `${pour}=+2d`);
    expect(ran.code).toBe(0);
    expect(ran.document()).toMatchObject({ moves: [{ pour, workingDays: 2 }] });
    const after = (await regang('plan', '--book', 'B.regang', '--job', job)).document();
    expect(after['cost']).toEqual(before.cost);
  });

  for (const move of ['P1', 'P1=2d', 'P1=+2', '=+2d', 'P1=+2w'])
    test(`--move ${move} is refused with the way to write it`, async () => {
      const ran = await regang('whatif', '--book', 'B.regang', '--job', job, '--move', move);
      expect(ran.code).toBe(2);
      expect(ran.document()).toMatchObject({
        error: { field: 'move[0]', message: expect.stringContaining('P14=+2d') },
      });
    });
});

describe('stock', () => {
  test('prints rows by component, owner, location and condition, and fewer for one location', async () => {
    const all = (await regang('stock', '--book', 'B.regang')).document() as {
      rows: { location: string; quantity: number; weightKg: number }[];
    };
    for (const row of all.rows) expect(row.weightKg).toBeGreaterThan(0);
    expect(all.rows.length).toBeGreaterThan(20);
    const { location } = all.rows[0]!;
    const some = (
      await regang('stock', '--book', 'B.regang', '--location', location)
    ).document() as typeof all;
    expect(some.rows.length).toBeGreaterThan(0);
    expect(some.rows).toEqual(all.rows.filter((row) => row.location === location));
  });

  test('on a date before anything was entered there is nothing; a date is its whole day by the job’s clock', async () => {
    const ran = await regang('stock', '--book', 'B.regang', '--at', '2001-01-01');
    expect(ran.document()).toMatchObject({
      rows: [],
      at: expect.stringMatching(/^2001-01-01T23:59:59\.999[+-]/u),
    });
  });

  test('a date that is none is refused', async () => {
    const ran = await regang('stock', '--book', 'B.regang', '--at', '2026-02-30');
    expect(ran).toMatchObject({ code: 2 });
    expect(ran.document()).toMatchObject({ error: { field: 'at' } });
  });
});

describe('check', () => {
  test('of a whole book finds nothing, exit 0', async () => {
    const ran = await regang('check', '--book', 'B.regang');
    expect(ran.code).toBe(0);
    expect(ran.document()).toMatchObject({ problems: [] });
  });

  test('of a file that is no book, or is not there, is a refusal with exit 2', async () => {
    writeFileSync(path.join(folder, 'text.regang'), 'not a book at all, but long enough to be looked at');
    for (const book of ['text.regang', 'nowhere.regang']) {
      const ran = await regang('check', '--book', book);
      expect(ran.code).toBe(2);
      expect(ran.document()).toMatchObject({
        error: { field: 'book', message: expect.stringContaining(book) },
      });
    }
  });

  test('of a book with damaged pages is exit 2, found or refused', async () => {
    const bytes = readFileSync(path.join(folder, 'B.regang'));
    // Everything past the first pages, where the tables' contents lie.
    bytes.fill(0x5a, Math.floor(bytes.length / 2), bytes.length - 4096);
    writeFileSync(path.join(folder, 'damaged.regang'), bytes);
    const ran = await regang('check', '--book', 'damaged.regang');
    expect(ran.code).toBe(2);
  });
});

describe('import', () => {
  const kinds = ['components', 'rules', 'places', 'jobs', 'stock', 'designs', 'pours', 'notes'];

  test('of the demo’s own files into a new book, in order, gives the plan of the demo', async () => {
    for (const kind of kinds) {
      const ran = await regang(
        'import',
        kind,
        '--book',
        'C.regang',
        path.join(root, 'seed-demo', `${kind}.csv`),
      );
      expect(ran.document()).toMatchObject({ kind, stored: true, bad: [] });
      expect(ran.code).toBe(0);
    }
    const [one, other] = await Promise.all(
      ['B.regang', 'C.regang'].map((book) => regang('plan', '--book', book, '--job', job)),
    );
    const { runs, shortfalls, cost, bound } = one!.document();
    expect(other!.document()).toMatchObject({ runs, shortfalls, cost, bound });
  });

  test('a bad row is named by line and column, exit 2, and the book is as it was', async () => {
    writeFileSync(
      path.join(folder, 'bad.csv'),
      'what,code,name,kind\nlocation,NEW,New yard,yard\nlocation,X,Y,shed\n',
    );
    const before = readFileSync(path.join(folder, 'B.regang'));
    const ran = await regang('import', 'places', '--book', 'B.regang', 'bad.csv');
    expect(ran.code).toBe(2);
    expect(ran.document()).toMatchObject({
      error: { code: 'bad-rows', message: expect.stringContaining('line 3') },
      stored: false,
      bad: [{ line: 3, column: 'kind', read: 'shed' }],
    });
    expect(readFileSync(path.join(folder, 'B.regang')).equals(before)).toBe(true);
  });

  test('a refused file into a book that is not there leaves none behind, nor does a trial', async () => {
    expect((await regang('import', 'places', '--book', 'D.regang', 'bad.csv')).code).toBe(2);
    expect((await regang('import', 'places', '--book', 'D.regang', 'bad.csv', '--dry-run')).code).toBe(2);
    expect(existsSync(path.join(folder, 'D.regang'))).toBe(false);
  });

  test('--dry-run says what would come and stores nothing', async () => {
    writeFileSync(path.join(folder, 'good.csv'), 'what,code,name,kind\nlocation,NEW,New yard,yard\n');
    const before = readFileSync(path.join(folder, 'C.regang'));
    const ran = await regang('import', 'places', '--book', 'C.regang', 'good.csv', '--dry-run');
    expect(ran.document()).toMatchObject({ rows: 1, added: 1, stored: false });
    expect(readFileSync(path.join(folder, 'C.regang')).equals(before)).toBe(true);
    expect((await regang('import', 'places', '--book', 'C.regang', 'good.csv')).document()).toMatchObject({
      added: 1,
      stored: true,
    });
  });

  test('--map names the columns of a file that calls them otherwise', async () => {
    writeFileSync(path.join(folder, 'other.csv'), 'Type,No.,Text,kind\nlocation,NEW2,New yard 2,yard\n');
    writeFileSync(
      path.join(folder, 'map.json'),
      JSON.stringify({ Type: 'what', 'No.': 'code', Text: 'name' }),
    );
    const ran = await regang('import', 'places', '--book', 'C.regang', 'other.csv', '--map', 'map.json');
    expect(ran.document()).toMatchObject({ added: 1, stored: true });
  });

  test('an unknown kind, a missing file and a file that is no text are refused', async () => {
    writeFileSync(path.join(folder, 'bytes.csv'), Buffer.from([0xff, 0xfe, 0x80, 0x81]));
    expect((await regang('import', 'things', '--book', 'C.regang', 'good.csv')).document()).toMatchObject({
      error: { field: 'kind' },
    });
    expect((await regang('import', 'places', '--book', 'C.regang', 'none.csv')).document()).toMatchObject({
      error: { field: 'input' },
    });
    expect((await regang('import', 'places', '--book', 'C.regang', 'bytes.csv')).document()).toMatchObject({
      error: { message: expect.stringContaining('UTF-8') },
    });
    expect((await regang('import', 'places', '--book', 'C.regang')).document()).toMatchObject({
      error: { field: 'input' },
    });
  });
});
