// From notes to movements and claims, and what is owed because of them. All figures are invented.
import { describe, expect, test } from 'vitest';
import { figuresBeside } from '../../core/yard/figures-beside.ts';
import { mediaTypeOf } from '../../core/yard/media-type.ts';
import { noteClaims } from '../../core/yard/note-claims.ts';
import { noteMovements } from '../../core/yard/note-movements.ts';
import type { NoteLine, YardNote } from '../../core/yard/note.ts';
import { owedTo } from '../../core/yard/owed.ts';
import type { SignedFigure } from '../../core/yard/signed-figure.ts';

const at = '2026-03-05T09:00:00-05:00';
const booking = { at, who: 'tester', idOf: (index: number) => `movement-${index}` };

function line(
  component: string,
  sent: number,
  counted: number | null,
  more: Partial<NoteLine> = {},
): NoteLine {
  return {
    component,
    owner: 'H1',
    condition: 'ready',
    sent,
    counted,
    container: null,
    remark: null,
    ...more,
  };
}

function note(lines: readonly NoteLine[], more: Partial<YardNote> = {}): YardNote {
  return {
    id: 'note-one',
    kind: 'delivery',
    number: 'D-7',
    state: 'draft',
    expectedAt: null,
    countedThere: null,
    version: 1,
    from: 'DEPOT',
    to: 'YARD',
    job: null,
    arrivedAt: null,
    leftAt: null,
    vehicle: null,
    signedHere: null,
    signedThere: null,
    protest: null,
    remark: null,
    lines: [...lines],
    ...more,
  };
}

function booked(given: YardNote): readonly string[] {
  const moved = noteMovements(given, booking);
  if (!moved.ok) throw new Error(moved.error.message);
  return moved.value.map(
    (each) => `${each.quantity} ${each.component} ${each.from}>${each.to} ${each.reason} ${each.paper}`,
  );
}

describe('A booked note', () => {
  test('moves what we counted, 36 of the 40 on the paper, and nothing for a line of 0', () => {
    expect(booked(note([line('LK', 40, 36), line('R8', 6, 0)]))).toEqual([
      '36 LK DEPOT>YARD delivery note-one',
    ]);
  });

  test('leaves pieces in the container they came in, and takes those of a return out of it', () => {
    const inBin = { container: 'BIN-1' };
    expect(booked(note([line('LK', 40, 40, inBin)]))).toEqual(['40 LK DEPOT>BIN-1 delivery note-one']);
    const back = note([line('LK', 40, 40, inBin)], { kind: 'return', from: 'YARD', to: 'DEPOT' });
    expect(booked(back)).toEqual(['40 LK BIN-1>DEPOT return note-one']);
  });

  test.each([
    [note([]), 'empty-note'],
    [note([line('LK', 4, null)]), 'not-counted'],
    [note([line('LK', 4, 4)], { to: 'DEPOT' }), 'same-place'],
    [note([line('LK', 4, 4)], { state: 'booked' }), 'note-booked'],
    [note([line('LK', 4, 4)], { state: 'dropped' }), 'note-dropped'],
    [note([line('LK', 4, 4)], { state: 'reversed' }), 'note-reversed'],
  ])('is refused: %#', (given, code) => {
    expect(noteMovements(given, booking)).toMatchObject({ ok: false, error: { code } });
  });

  test('names every line that nobody counted', () => {
    const refused = noteMovements(
      note([line('LK', 4, null), line('R8', 2, 2), line('P1', 1, null)]),
      booking,
    );
    expect(refused).toMatchObject({
      error: { message: 'Delivery note D-7: nobody has counted LK (H1), P1 (H1).' },
    });
  });
});

describe('Claims', () => {
  test('a delivery short of 4 disputes 4; a return counted 2 fewer at the depot disputes 2', () => {
    const short = note([line('LK', 40, 36), line('R8', 6, 6)], { state: 'booked' });
    expect(noteClaims(short)).toMatchObject([
      { component: 'LK', where: 'arrival', theirs: 40, ours: 36, disputed: 4 },
    ]);
    const back = note([line('LK', 50, 50), line('R8', 6, 6)], {
      kind: 'return',
      state: 'booked',
      countedThere: [48, 6],
    });
    expect(noteClaims(back)).toMatchObject([
      { component: 'LK', where: 'depot', theirs: 48, ours: 50, disputed: 2 },
    ]);
  });

  test('one component too many and another too few are two claims, never one of nothing', () => {
    const both = note([line('P36', 10, 11), line('P30', 10, 9)], { state: 'booked' });
    expect(noteClaims(both).map(({ disputed }) => disputed)).toEqual([-1, 1]);
  });

  test('a draft claims nothing, nor does a return of which the depot has said nothing', () => {
    expect(noteClaims(note([line('LK', 40, 36)]))).toEqual([]);
    const back = note([line('LK', 50, 50)], { kind: 'return', state: 'booked', countedThere: [null] });
    expect(noteClaims(back)).toEqual([]);
  });
});

const of = (location: string, condition: 'ready' | 'to-clean' | 'scrapped', quantity: number) =>
  ({ component: 'LK', owner: 'H1', location, condition, quantity, basis: null, basisDate: null }) as const;

test('what is owed is what came less what went back, wherever it is: 100 - 30 = 50 + 5 + 6 + 2 + 7', () => {
  const places = { YARD: 'yard', SHOP: 'repair', LOST: 'lost', DEPOT: 'supplier' } as const;
  const locations = Object.entries(places).map(([code, kind]) => ({ code, name: code, kind }));
  const owners = [
    { code: 'H1', name: 'Hired', kind: 'supplier', agreement: null },
    { code: 'OURS', name: 'Ours', kind: 'ours', agreement: null },
  ] as const;
  const stock = [
    of('YARD', 'ready', 50),
    of('YARD', 'to-clean', 5),
    of('SHOP', 'ready', 6),
    of('YARD', 'scrapped', 2),
    of('LOST', 'ready', 7),
    of('DEPOT', 'ready', -70),
  ];
  const flows = [
    { component: 'LK', owner: 'H1', received: 100, returned: 30 },
    { component: 'LK', owner: 'OURS', received: 9, returned: 0 },
  ];
  expect(owedTo(owners, locations, flows, stock)).toEqual([
    {
      owner: 'H1',
      component: 'LK',
      received: 100,
      returned: 30,
      owed: 70,
      ready: 50,
      notReady: 5,
      away: 6,
      scrapped: 2,
      lost: 7,
    },
  ]);
});

const figure = (number: number, whose: SignedFigure['whose'], quantity: number): SignedFigure => ({
  number,
  owner: 'H1',
  component: 'LK',
  asOf: '2026-03-01',
  whose,
  quantity,
  signedBy: 'somebody',
  paper: null,
  remark: null,
  at,
});

describe('Figures side by side', () => {
  test('the newest of each kind stands, and the owner’s less ours is open: 210 - 206 = 4', () => {
    const [row] = figuresBeside([figure(1, 'owner', 200), figure(2, 'ours', 206), figure(3, 'owner', 210)]);
    expect(row).toMatchObject({ theirs: { quantity: 210 }, ours: { quantity: 206 }, agreed: null, open: 4 });
  });

  test('an agreed figure closes it, until one of the two says something new', () => {
    const settled = [figure(1, 'owner', 210), figure(2, 'ours', 206), figure(3, 'agreed', 208)];
    expect(figuresBeside(settled)).toMatchObject([{ agreed: { quantity: 208 }, open: null }]);
    expect(figuresBeside([...settled, figure(4, 'owner', 209)])).toMatchObject([{ open: 3 }]);
  });
});

const bytes = (text: string): Uint8Array => Uint8Array.from(text, (sign) => sign.charCodeAt(0));

test('a file is what its first bytes say: the marks of JPEG, PNG, WebP and PDF (their published formats, from memory)', () => {
  expect(mediaTypeOf(Uint8Array.of(0xff, 0xd8, 0xff, 0xe0))).toBe('image/jpeg');
  expect(mediaTypeOf(bytes('\u0089PNG\r\n\u001a\n....'))).toBe('image/png');
  expect(mediaTypeOf(bytes('RIFF1234WEBPVP8 '))).toBe('image/webp');
  expect(mediaTypeOf(bytes('%PDF-1.7'))).toBe('application/pdf');
  expect(mediaTypeOf(bytes('<svg xmlns="x"><script/></svg>'))).toBe(null);
  expect(mediaTypeOf(new Uint8Array())).toBe(null);
});
