import { describe, expect, test } from 'vitest';
import { timeWords } from '../../../renderer/parts/time-words.ts';
import {
  isTold,
  type YardNote,
  yardNoteAddress,
  yardNoteWords,
} from '../../../renderer/parts/yard-note-words.ts';

const words = timeWords('America/New_York');
const note = (over: Partial<YardNote>): YardNote => ({
  kind: 'lost',
  component: 'LK',
  name: 'Lock',
  quantity: 4,
  since: '2026-03-12T09:00:00-04:00',
  until: null,
  paper: null,
  figure: null,
  shortfalls: [],
  ...over,
});
const ticket = { kind: 'ticket', id: 'ticket 1', number: 'S-3' } as const;
const delivery = { kind: 'note', id: 'note-1', number: 'D-101' } as const;

describe('what the yard changes, in words', () => {
  test('lost at its ticket, late of its note since its day', () => {
    expect(yardNoteWords(note({ paper: ticket }), words)).toBe('4 LK lost at S-3');
    expect(yardNoteWords(note({}), words)).toBe('4 LK lost since 12 Mar');
    const late = note({ kind: 'late', component: 'R8', quantity: 6, paper: delivery });
    expect(yardNoteWords(late, words)).toBe('6 R8 of D-101 late since 12 Mar');
    expect(yardNoteWords({ ...late, since: null }, words)).toBe('6 R8 of D-101 on order without a day');
    expect(yardNoteWords({ ...late, kind: 'promised' }, words)).toBe(
      '6 R8 of D-101 promised for Thu 12 Mar 09:00',
    );
  });

  test('dirty beyond their time, or until they are due back; not inspected, or out of date from a day on', () => {
    expect(yardNoteWords(note({ kind: 'dirty' }), words)).toBe('4 LK dirty beyond their time since 12 Mar');
    const until = '2026-03-13T15:30:00-04:00';
    expect(yardNoteWords(note({ kind: 'dirty', until }), words)).toBe('4 LK dirty until Fri 13 Mar 15:30');
    expect(yardNoteWords(note({ kind: 'gear', component: 'LH', quantity: 1 }), words)).toBe(
      '1 LH out of date from 12 Mar',
    );
    expect(yardNoteWords(note({ kind: 'gear', since: null }), words)).toBe('4 LK not inspected');
  });

  test('a weak figure by how it was got, its date, and that it is old', () => {
    const figure = { basis: 'taken-from-list', date: '2026-02-20', old: true } as const;
    expect(yardNoteWords(note({ kind: 'figure', quantity: 0, figure }), words)).toBe(
      'LK from a list 20 Feb, which is old',
    );
  });

  test('over the days stands what is taken away, and not what is promised, kept back or weak', () => {
    const kinds = ['lost', 'late', 'dirty', 'gear', 'promised', 'due-out', 'figure', 'spares'] as const;
    expect(kinds.filter((kind) => isTold(note({ kind })))).toEqual(['lost', 'late', 'dirty', 'gear']);
  });

  test('each leads to its paper, or to where something can be done', () => {
    expect(yardNoteAddress(note({ paper: ticket }))).toBe('/yard/strip/ticket%201');
    expect(yardNoteAddress(note({ kind: 'late', paper: delivery }))).toBe('/yard/papers/note-1');
    expect(yardNoteAddress(note({ kind: 'dirty' }))).toBe('/yard/condition');
    expect(yardNoteAddress(note({ kind: 'figure' }))).toBe('/yard?component=LK');
  });
});
