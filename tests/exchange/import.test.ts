// Files taken into a real book: whole or not at all, every bad row named with its line and column.
import { afterEach, describe, expect, test } from 'vitest';
import { footNm, inchNm } from '../../core/units/length.ts';
import { context, aBook, filledBook, files, type TestBook } from './a-book.ts';

let open: TestBook[] = [];
const keep = async (book: Promise<TestBook>): Promise<TestBook> => {
  const made = await book;
  open.push(made);
  return made;
};
afterEach(async () => {
  for (const book of open) await book.end();
  open = [];
});

type Kind = keyof typeof files;
/** Text to replace in the good file, and the bad cell that comes of it; a part of `wanted` is enough. */
type BadCase = readonly [
  what: string,
  from: string,
  to: string,
  line: number,
  column: string,
  wanted: string,
];

const bad: Readonly<Record<Kind, readonly BadCase[]>> = {
  components: [
    ['a wrong unit', '200 lb', '200 ft', 2, 'weight', 'a weight with its unit'],
    ['an unknown kind', 'Lock,lock', 'Lock,lokc', 4, 'kind', 'Maybe lock is meant'],
    ['a panel without a width', '140 lb,24 in', '140 lb,', 3, 'width', 'the width of the panel'],
    ['a length without a unit', '36 in,8 ft', '36,8 ft', 2, 'width', 'a length with its unit'],
    [
      'a tie hole outside its panel',
      '12 in x 24 in',
      '25 in x 24 in',
      3,
      'tie holes',
      'within width and height',
    ],
    ['a tie hole that is no place', '12 in x 24 in', '12 in', 3, 'tie holes', 'across x up'],
    [
      'a code twice with other facts',
      'BR,Brace,brace',
      'LK,Brace,brace',
      5,
      'code',
      'line 4 says something else',
    ],
    ['a code like another', 'P824,Panel 24', 'P 836,Panel 24', 3, 'code', 'Maybe P836 is meant'],
    ['a rail without a length', 'Brace,brace', 'Rail,rail', 5, 'length', 'the length of the stiffening rail'],
    ['a negative price', '0.04', '-0.04', 4, 'hire per day', 'an amount'],
  ],
  rules: [
    ['an unknown table', 'S,,ties', 'S,,tiles', 5, 'table', 'Maybe ties is meant'],
    ['an unknown setting', 'locks,count,2 ft', 'locks,counts,2 ft', 3, 'setting', 'Maybe count is meant'],
    ['bands that fall', 'up to 8 ft', 'up to 1 ft', 4, 'value', 'must rise'],
    [
      'an unknown component',
      'component,,LK',
      'component,,LX',
      2,
      'value',
      'LX, which is not in the catalogue',
    ],
    ['a component of another kind', 'component,,LK', 'component,,BR', 2, 'value', 'BR, which is a brace'],
    [
      'a number without a source',
      '2 ft,1,default',
      '2 ft,1,',
      3,
      'source',
      'where the number comes from, or default',
    ],
    ['a band without its length', 'count,2 ft', 'count,', 3, 'condition', 'up to a length'],
  ],
  places: [
    ['an unknown kind', 'The yard,yard', 'The yard,yrad', 2, 'kind', 'Maybe yard is meant'],
    ['an agreement of our own', 'Our own,ours,', 'Our own,ours,A-2', 4, 'agreement', 'nothing'],
    ['neither place nor owner', 'owner,HIRE', 'ower,HIRE', 5, 'what', 'Maybe owner is meant'],
  ],
  jobs: [
    ['an unknown zone', 'America/New_York', 'America/NewYork', 2, 'time zone', 'a known time zone'],
    [
      'a shift that ends before it starts',
      '7:00,15:30',
      '7:00,5:30',
      2,
      'end',
      'does not end after it begins',
    ],
    ['no working day', 'Mon-Fri', 'Someday', 2, 'days', 'working days'],
    ['a date of another order', '2026-03-02', '3/2/2026', 2, 'plan from', 'YYYY-MM-DD'],
  ],
  stock: [
    ['a negative quantity', 'P836,40', 'P836,-40', 2, 'quantity', 'a whole number of pieces'],
    [
      'a note in the quantity',
      'P836,40',
      'P836,40 (2 bent)',
      2,
      'quantity',
      'the note apart, in the column remark',
    ],
    ['an unknown code', 'LK,300', 'LX,300', 4, 'component', 'Maybe LK is meant'],
    ['a code like a known one', 'P836,2,', 'P 836,2,', 3, 'component', 'Maybe P836 is meant'],
    ['an unknown owner', 'ready,HIRE,YARD,taken', 'ready,HIER,YARD,taken', 4, 'owner', 'Maybe HIRE is meant'],
    [
      'an opening figure at a depot',
      'HIRE,YARD,taken',
      'HIRE,DEPOT,taken',
      4,
      'location',
      'a known yard, rack, site',
    ],
    [
      'a figure without its basis',
      'YARD,counted,2026-02-20,,,\n',
      'YARD,,2026-02-20,,,\n',
      2,
      'basis',
      'how the figure was got',
    ],
    ['a delivery from nowhere', 'delivery,DEPOT', 'delivery,', 5, 'from', 'the supplier as a location'],
    [
      'a second row for the same pieces',
      'P836,2,to clean',
      'P836,2,ready',
      3,
      'component',
      'line 2 has it already',
    ],
    [
      'a time that the clock passes over',
      '2026-03-12 09:00',
      '2026-03-08 02:30',
      5,
      'date',
      'passes over 02:30',
    ],
  ],
  designs: [
    ['an unknown panel', 'P836,36,0', 'P863,36,0', 3, 'item', 'Maybe P836 is meant'],
    ['a component that is no panel', 'P836,36,0', 'LK,36,0', 3, 'item', 'a panel of its system, or filler'],
    ['overlapping panels', 'P836,36,0', 'P836,35,0', 3, 'x (in)', `overlaps P836 at 0", 0" of line 2`],
    [
      'a filler in the place of a panel',
      'filler,36,0,4',
      'filler,36,0,5',
      6,
      'x (in)',
      'it overlaps the filler',
    ],
    [
      'a filler without a width',
      'filler,36,0,4,96',
      'filler,36,0,,96',
      5,
      'width (in)',
      'of a filler: its width',
    ],
    [
      'a head that contradicts itself',
      'G1,,,,,',
      'G1,,,B,,',
      3,
      'revision',
      'what line 2 says of the design: "A"',
    ],
    ['an unknown system', '8 ft,S,A,symm', '8 ft,T,A,symm', 2, 'system', 'a known panel system'],
    ['a size turned into a date', 'P836,36,0', 'P836,12/6,0', 3, 'x (in)', 'turned a size into a date'],
    ['a code like another', 'G2,"Gang', 'G 1,"Gang', 4, 'design', 'Maybe G1 is meant'],
  ],
  pours: [
    ['a close before its set', '2026-03-04 07:00', '2026-03-01 07:00', 2, 'set B', 'before side A is set'],
    [
      'a finish before its set',
      '2026-03-05 13:00',
      '2026-03-01 13:00',
      2,
      'finish',
      'a finish after both sides are set',
    ],
    [
      'a pour after itself by way of another',
      '24,2,,G1 @ 0; G2 @ 6 ft',
      '24,2,2,G1 @ 0; G2 @ 6 ft',
      2,
      'after',
      'circle',
    ],
    ['an unknown predecessor', '24,2,1,', '24,2,7,', 3, 'after', 'a known pour of the job'],
    [
      'an unknown design',
      'G1 @ 0,G1 @ 0',
      'G9 @ 0,G1 @ 0',
      3,
      'gangs A',
      'a known design. Maybe G1 is meant',
    ],
    ['a gang without a place', 'G1 @ 0,G1 @ 0', 'G1,G1 @ 0', 3, 'gangs A', 'Maybe G1 @ 0 is meant'],
    ['an unknown loose piece', 'A BR 4', 'A BX 4', 2, 'loose', 'a known component. Maybe BR is meant'],
    ['a loose piece without a purpose', 'A BR 4 braces', 'A BR 4', 2, 'loose', 'what for'],
    [
      'a gate without a date',
      'steel crew, 2026-03-03',
      'steel crew',
      2,
      'gates',
      'gates as step: what, who, date',
    ],
    ['an unknown tie', ',TR\n', ',TX\n', 2, 'tie', 'Maybe TR is meant'],
    ['an unknown job', 'J1,2,Wall', 'J2,2,Wall', 3, 'job', 'a known job. Maybe J1 is meant'],
  ],
};

describe.each(Object.keys(bad) as Kind[])('A file of %s', (kind) => {
  test('is taken whole, and taken again it changes what it added', async () => {
    const book = await keep(filledBook(kind));
    const first = await book.take(kind, files[kind]);
    expect(first).toMatchObject({ stored: true, bad: [], changed: 0 });
    expect(first.added).toBeGreaterThan(0);
    const again = await book.take(kind, files[kind]);
    if (kind === 'stock') expect(again.bad.map((one) => one.wanted)[0]).toContain('no second opening figure');
    else expect(again).toMatchObject({ stored: true, added: 0, changed: first.added });
  });

  test.each(bad[kind])('with %s is refused at its line and column, the book unchanged', async (...one) => {
    const [, from, to, line, column, wanted] = one;
    const text = files[kind].replace(from, () => to);
    expect(text).not.toBe(files[kind]);
    const book = await keep(filledBook(kind));
    const before = await book.content();
    const done = await book.take(kind, text);
    expect(done).toMatchObject({ stored: false, added: 0, changed: 0 });
    const found = done.bad.filter((cell) => cell.line === line && cell.column === column);
    expect(found, JSON.stringify(done.bad)).toHaveLength(1);
    expect(found[0]?.wanted).toContain(wanted);
    expect(await book.content()).toEqual(before);
  });

  test('that is only tried says what it would do and stores nothing', async () => {
    const book = await keep(filledBook(kind));
    const before = await book.content();
    const done = await book.take(kind, files[kind], { dryRun: true });
    expect(done).toMatchObject({ stored: false, bad: [] });
    expect(done.added).toBeGreaterThan(0);
    expect(await book.content()).toEqual(before);
  });
});

describe('What a file says', () => {
  test('is in the book as it was meant', async () => {
    const { book } = await keep(filledBook());
    const [components, rules, designs, pours, movements] = await book.read((reader) =>
      Promise.all([
        reader.components(),
        reader.ruleVersions(),
        reader.designs(),
        reader.pours('J1'),
        reader.movements({ limit: 100 }),
      ]),
    );
    expect(components.find((one) => one.code === 'P836')).toEqual({
      code: 'P836',
      name: 'Panel 36 in x 8 ft',
      kind: 'panel',
      system: 'S',
      weightGrams: 90_718,
      widthNm: 36 * inchNm,
      heightNm: 8 * footNm,
      tieHolesNm: [[18 * inchNm, 24 * inchNm]],
      hirePerDayCents: 80,
      regangPerPieceH: 0,
      remark: null,
    });
    const bands = [
      { upToNm: 2 * footNm, count: 1 },
      { upToNm: 8 * footNm, count: 3 },
    ];
    expect(rules).toEqual([
      {
        system: 'S',
        systemName: 'Small system',
        version: 1,
        rules: {
          locks: { component: 'LK', bands },
          ties: { holes: true },
          sources: { 'locks.bands[1]': 'sheet 2' },
        },
      },
    ]);
    expect(designs.find((one) => one.code === 'G2')?.geometry).toEqual({
      panels: [
        { panel: 'P836', xNm: 0, yNm: 0, onSide: false },
        { panel: 'P824', xNm: 40 * inchNm, yNm: 0, onSide: false },
      ],
      fillers: [{ xNm: 36 * inchNm, yNm: 0, widthNm: 4 * inchNm, heightNm: 96 * inchNm }],
      edges: { left: 'next-gang', right: 'stop-end' },
      equalised: false,
    });
    expect(pours.map((pour) => [pour.code, pour.after])).toEqual([
      ['1', []],
      ['2', ['1']],
    ]);
    expect(pours[0]).toMatchObject({
      order: 'face-first',
      sides: [
        { side: 'A', setAt: '2026-03-02T07:00:00-05:00', setH: 3 },
        {
          side: 'B',
          gangs: [
            { design: 'G1', atNm: 0 },
            { design: 'G2', atNm: 6 * footNm },
          ],
        },
      ],
      loose: [
        { side: 'both', component: 'LK', quantity: 10, purpose: 'locks between gangs' },
        { side: 'A', component: 'BR', quantity: 4, purpose: 'braces' },
      ],
      gates: [
        { before: 'close', name: 'steel', who: 'steel crew', promised: '2026-03-03', done: false },
        { before: 'pour', name: 'inspection', who: 'inspector', promised: '2026-03-05', done: true },
      ],
      tieComponent: 'TR',
    });
    expect(pours[1]?.sides[0].setAt).toBe('2026-03-09T07:00:00-04:00');
    expect(
      movements.map(({ component, quantity, from, to, reason, basis, at }) => [
        component,
        quantity,
        from,
        to,
        reason,
        basis,
        at,
      ]),
    ).toEqual([
      ['LK', 20, 'DEPOT', 'YARD', 'delivery', null, '2026-03-12T09:00:00-04:00'],
      ['LK', 300, 'OPENING', 'YARD', 'opening', 'taken-from-list', '2026-02-20T00:00:00-05:00'],
      ['P836', 2, 'OPENING', 'YARD', 'opening', 'counted', '2026-02-20T00:00:00-05:00'],
      ['P836', 40, 'OPENING', 'YARD', 'opening', 'counted', '2026-02-20T00:00:00-05:00'],
    ]);
    expect(await book.read((reader) => reader.check())).toEqual([]);
  });

  test('every bad row is named, not only the first: 3 of 4 rows', async () => {
    const { take } = await keep(filledBook('stock'));
    const text = files.stock
      .replace('P836,40', 'P836,~40')
      .replace('P836,2,', 'P999,2,')
      .replace('LK,300', 'LK,300 ea');
    const done = await take('stock', text);
    expect(done.bad.map((one) => [one.line, one.column, one.read])).toEqual([
      [2, 'quantity', '~40'],
      [3, 'component', 'P999'],
      [4, 'quantity', '300 ea'],
    ]);
  });

  test('a command sent twice is one import; an opening figure is booked once', async () => {
    const book = await keep(filledBook('stock'));
    const one = await book.take('stock', files.stock, { commandId: 'the-same-command' });
    const other = await book.take('stock', files.stock, { commandId: 'the-same-command' });
    expect(other).toEqual(one);
    expect(await book.book.read((reader) => reader.movements({ limit: 100 }))).toHaveLength(4);
  });

  test('stock without any job needs times with an offset', async () => {
    const book = await keep(aBook());
    for (const kind of ['components', 'places'] as const) await book.take(kind, files[kind]);
    expect((await book.take('stock', files.stock)).bad[0]).toMatchObject({ line: 2, column: 'date' });
    const text = files.stock
      .replaceAll('2026-02-20,', '2026-02-20T06:00-05:00,')
      .replace('2026-03-12 09:00', '2026-03-12T09:00-04:00');
    expect(await book.take('stock', text)).toMatchObject({ stored: true, added: 4 });
  });

  test('a job is named beside a file of pours without that column, and must be known', async () => {
    const book = await keep(filledBook('pours'));
    const text = files.pours.replaceAll('J1,', '').replace('job,', '');
    expect((await book.take('pours', text)).bad.map((one) => one.column)).toEqual(['job', 'job']);
    await expect(book.take('pours', text, { job: 'J7' })).rejects.toThrow('unknown-job');
    expect(await book.take('pours', text, { job: 'J1' })).toMatchObject({ stored: true, added: 2 });
  });

  test('a circle of three pours is named at each of its rows, a pour after itself at its own', async () => {
    const { take } = await keep(filledBook('pours'));
    const [heading = '', , second = ''] = files.pours.split('\n');
    const row = (code: string, after: string): string =>
      second.replace('J1,2,', `J1,${code},`).replace('24,2,1,', `24,2,${after},`);
    const text = [
      heading,
      row('a', 'b'),
      row('b', 'c'),
      row('c', 'a'),
      row('d', 'c'),
      row('e', 'e'),
      row('f', ''),
    ];
    const done = await take('pours', text.join('\n'));
    expect(done.bad.map((one) => [one.line, one.column])).toEqual([
      [2, 'after'],
      [3, 'after'],
      [4, 'after'],
      [6, 'after'],
    ]);
    expect(done.bad[0]?.wanted).toContain('a after b after c after a');
  });

  test('a changed component must not break the rule tables that name it', async () => {
    const book = await keep(filledBook());
    const before = await book.content();
    const done = await book.take('components', 'code,name,kind,weight\nLK,Lock,hook,5 lb\n');
    expect(done.bad).toMatchObject([{ line: 2, column: 'kind', read: 'hook' }]);
    expect(done.bad[0]?.wanted).toContain('LK, which is a hook');
    expect(await book.content()).toEqual(before);
  });

  test('new rules are a new version; the old one stays', async () => {
    const book = await keep(filledBook());
    await book.take('rules', files.rules.replace('2 ft,1', '2 ft,2'));
    const versions = await book.book.read((reader) => reader.ruleVersions());
    expect(versions.map((one) => [one.version, one.rules.locks?.bands[0]?.count])).toEqual([
      [1, 1],
      [2, 2],
    ]);
  });

  test('a panel outside the stated face is refused with its line', async () => {
    const { take } = await keep(filledBook('designs'));
    const text = files.designs
      .replace('height (in)', 'height (in),face width,face height')
      .replace('P836,0,0,,\n', 'P836,0,0,,,5 ft,8 ft\n');
    expect((await take('designs', text)).bad).toMatchObject([
      { line: 3, column: 'x (in)', wanted: `a place within the face of 5'-0" by 8'-0"` },
    ]);
  });

  test('who and when stand in the ledger', async () => {
    const { book } = await keep(filledBook());
    const [last] = await book.read((reader) => reader.movements({ limit: 1 }));
    expect(last?.who).toBe(context.who);
    expect(Date.parse(last?.recordedAt ?? '')).toBe(Date.parse(context.at));
  });
});
