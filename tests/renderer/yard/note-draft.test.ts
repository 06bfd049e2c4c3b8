import { describe, expect, test } from 'vitest';
import { noteShape } from '../../../core/procedures/note-shapes.ts';
import type { Places } from '../../../renderer/screens/yard/yard-words.ts';
import { newNote, usualOwner } from '../../../renderer/screens/yard/papers/new-note.ts';
import {
  draftOf,
  emptyNoteLine,
  type NoteDraft,
  readNote,
  readPieces,
  refusedField,
} from '../../../renderer/screens/yard/papers/note-draft.ts';
import {
  claimWords,
  inLookingOrder,
  type Note,
  type NoteRow,
  standingWord,
} from '../../../renderer/screens/yard/papers/note-words.ts';
import { willMove, willMoveWords } from '../../../renderer/screens/yard/papers/will-move.ts';

const clock = { timeZone: 'America/Chicago', planFrom: '2026-02-23T06:00:00.000Z' };
const known = new Set(['LK', 'R8']);
const line = (component: string, sent: string, counted: string) => ({
  ...emptyNoteLine(`key-${component}-${sent}`, 'H1'),
  component,
  sent,
  counted,
});
const draft: NoteDraft = {
  id: 'note-1234',
  version: 2,
  kind: 'delivery',
  number: ' D-7 ',
  from: 'H1',
  to: 'YARD',
  job: null,
  expectedAt: '',
  arrivedAt: '12 Mar 09:20',
  leftAt: '',
  vehicle: '',
  signedHere: '',
  signedThere: 'The driver',
  protest: ' ',
  remark: '',
  lines: [line('LK', '40', '36'), emptyNoteLine('empty', 'H1'), line('R8', '', '6')],
};

const refusedAt = (field: string) => refusedField({ message: 'no', field }, [0, 2]);

describe('A note as it is typed', () => {
  test('becomes one that the core takes: empty lines left out, empty words null, times by the job’s clock', () => {
    const { note, errors, lineOf } = readNote(draft, null, clock, known);
    expect(errors).toEqual([]);
    expect(noteShape.omit({ state: true, countedThere: true }).safeParse(note).success).toBe(true);
    expect(note).toMatchObject({
      number: 'D-7',
      arrivedAt: '2026-03-12T09:20:00-05:00',
      expectedAt: null,
      protest: null,
      signedThere: 'The driver',
    });
    // Where the paper says nothing of its own, it says what was counted.
    expect(note.lines.map(({ sent, counted }) => [sent, counted])).toEqual([
      [40, 36],
      [6, 6],
    ]);
    expect(lineOf).toEqual([0, 2]);
  });

  test('tells everything that cannot be read, each at its field, and keeps the rest', () => {
    const wrong = {
      ...draft,
      number: '',
      expectedAt: '3/4',
      lines: [line('XX', '1', ''), line('LK', 'many', '~6'), { ...line('LK', '', ''), remark: 'which?' }],
    };
    const { note, errors } = readNote(wrong, null, clock, known);
    expect(errors.map((error) => [error.line, error.field])).toEqual([
      [null, 'number'],
      [0, 'component'],
      [1, 'counted'],
      [1, 'sent'],
      [2, 'sent'],
      [null, 'expectedAt'],
    ]);
    expect(note.arrivedAt).toBe('2026-03-12T09:20:00-05:00');
  });

  test('a time that was not touched stays what it was, to the second', () => {
    const before: Note = {
      ...readNote(draft, null, clock, known).note,
      arrivedAt: '2026-03-12T09:20:41-05:00',
      state: 'draft',
      countedThere: null,
    };
    const shown = draftOf(before, clock);
    expect(shown.arrivedAt).toBe('Thu 12 Mar 09:20');
    expect(readNote(shown, before, clock, known).note).toEqual({
      ...before,
      state: undefined,
      countedThere: undefined,
    });
    const later = { ...shown, arrivedAt: '13 Mar' };
    expect(readNote(later, before, clock, known).note.arrivedAt).toBe('2026-03-13T09:20:41-05:00');
  });

  test('pieces are read as people count: 40 + 6 is 46, 12 x 20 is 240, ~20 and 2.5 are no counts', () => {
    expect(readPieces('40 + 6', 'LK')).toEqual({ ok: true, value: 46 });
    expect(readPieces('12 x 20', 'LK')).toEqual({ ok: true, value: 240 });
    expect(readPieces('0', 'LK')).toEqual({ ok: true, value: 0 });
    expect(readPieces('~20', 'LK')).toMatchObject({ ok: false, error: { code: 'not-counted' } });
    expect(readPieces('2.5', 'LK')).toMatchObject({ ok: false, error: { code: 'count-unreadable' } });
    expect(readPieces('2 bdl', 'LK')).toMatchObject({ ok: false, error: { code: 'bundle-size-unknown' } });
  });

  test('a refusal of the core stands at the line it is about, counted without the empty ones', () => {
    expect(refusedAt('note.lines.1.component')).toMatchObject({ line: 2, field: 'component' });
    expect(refusedAt('note.number')).toMatchObject({ line: null, field: 'number' });
    expect(refusedAt('note.version')).toBe(undefined);
    expect(refusedAt('somewhere')).toBe(undefined);
  });
});

describe('What booking would do', () => {
  test('36 of 40 locks and 6 rails: 42 pieces as of the truck, and a claim of 4', () => {
    const moving = willMove(readNote(draft, null, clock, known).note);
    expect(moving).toMatchObject({
      can: true,
      lines: 2,
      pieces: 42,
      claims: [{ component: 'LK', disputed: 4 }],
    });
    if (moving.can) {
      expect(willMoveWords(moving, (moment) => moment)).toBe(
        'Books 42 pieces on 2 lines, H1 to YARD, as of 2026-03-12T09:20:00-05:00.',
      );
      expect(moving.claims.map(claimWords)).toEqual(['40 on the paper, 36 counted here: 4 short']);
      expect(willMoveWords({ ...moving, at: null }, (moment) => moment)).toContain('as of now');
    }
  });

  test('a line that nobody counted holds it up, by name', () => {
    const open = { ...draft, lines: [line('LK', '40', '')] };
    expect(willMove(readNote(open, null, clock, known).note)).toMatchObject({
      can: false,
      why: 'Delivery note D-7: nobody has counted LK (H1).',
    });
  });
});

const places: Places = {
  locations: [
    { code: 'YARD', name: 'Yard', kind: 'yard', inHand: true },
    { code: 'H1', name: 'Depot', kind: 'supplier', inHand: false },
    { code: 'SITE', name: 'Site', kind: 'site', inHand: true },
  ],
  owners: [
    { code: 'OURS', name: 'Ours', kind: 'ours', agreement: null },
    { code: 'H1', name: 'Hirer', kind: 'supplier', agreement: 'A-1' },
  ],
};

const ids = (): string => 'id';

describe('A new note', () => {
  test('a delivery begins from the depot to the yard with its owner’s pieces, a transfer between two places with ours', () => {
    expect(newNote('delivery', 'D-1', places, ids)).toMatchObject({
      from: 'H1',
      to: 'YARD',
      lines: [{ owner: 'H1' }],
    });
    expect(newNote('return', 'R-1', places, ids)).toMatchObject({
      from: 'YARD',
      to: 'H1',
      lines: [{ owner: 'H1' }],
    });
    const transfer = newNote('transfer', 'T-1', places, ids);
    expect(transfer.from).not.toBe(transfer.to);
    expect(transfer.lines).toMatchObject([{ owner: 'OURS' }]);
    expect(usualOwner({ from: 'SITE', to: 'YARD' }, places)).toBe('OURS');
  });
});

const row = (number: string, more: Partial<NoteRow>): NoteRow => ({
  id: number,
  kind: 'delivery',
  number,
  state: 'draft',
  from: 'H1',
  to: 'YARD',
  expectedAt: null,
  late: false,
  lines: 1,
  sent: 1,
  counted: 0,
  weightGrams: 0,
  claims: 0,
  attachments: 0,
  ...more,
});

test('the list begins with what is late, then what is due by its day, drafts, booked, and what holds no more', () => {
  const rows = inLookingOrder([
    row('D-9', { state: 'reversed' }),
    row('D-10', { state: 'booked' }),
    row('D-2', { state: 'booked' }),
    row('D-3', {}),
    row('D-4', { expectedAt: '2026-03-20T09:00:00-05:00' }),
    row('D-5', { kind: 'return', expectedAt: '2026-03-19T23:00:00-05:00' }),
    row('D-6', { late: true, expectedAt: '2026-03-01T09:00:00-06:00' }),
  ]);
  expect(rows.map((each) => [each.number, standingWord(each)])).toEqual([
    ['D-6', 'late'],
    ['D-5', 'due out'],
    ['D-4', 'due in'],
    ['D-3', 'draft'],
    ['D-2', 'booked'],
    ['D-10', 'booked'],
    ['D-9', 'reversed'],
  ]);
});
