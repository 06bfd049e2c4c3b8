import { describe, expect, test } from 'vitest';
import { noteSheet, type NoteSheetFacts } from '../../core/sheets/note-sheet.ts';
import { rowsOf, withClass, wordsOf } from './read-tree.ts';

const line = {
  component: 'LK',
  name: 'Lock',
  owner: 'Tessary Form Hire',
  condition: 'ready',
  sent: 40,
  counted: 36,
  countedThere: null,
  container: 'C-4',
  remark: 'one bucket',
  weightGrams: 2268,
} as const;
const facts: NoteSheetFacts = {
  kind: 'Delivery note',
  number: 'D-7',
  state: 'booked',
  isComing: true,
  from: 'TFH Depot',
  to: 'ENN Yard',
  job: 'TB26 Tarrowmere Basin',
  expectedAt: '2026-03-12T09:00:00-05:00',
  arrivedAt: '2026-03-12T09:20:00-05:00',
  leftAt: '2026-03-12T10:05:00-05:00',
  vehicle: 'Flatbed 12',
  signedHere: 'Yard clerk',
  signedThere: null,
  protest: 'Four locks fewer',
  remark: null,
  lines: [
    line,
    {
      ...line,
      component: 'R8',
      name: 'Stiffening rail 8 ft',
      sent: 6,
      counted: null,
      container: null,
      condition: 'to-clean',
      weightGrams: 18144,
      remark: null,
    },
  ],
  claims: ['LK (TFH): 40 on the paper, 36 counted here.'],
  units: 'us',
};
const cells = (of: NoteSheetFacts): string =>
  withClass(noteSheet(of).tree, 'sheet-cell').map(wordsOf).join(' | ');

describe('A note on paper', () => {
  const { tree, title, foot } = noteSheet(facts);

  test('is named by its kind and number, with both ends at its foot', () => {
    expect([title, foot]).toEqual(['Delivery note D-7', 'Delivery note D-7 · TFH Depot to ENN Yard']);
  });

  test('says from, to, vehicle and the truck’s times', () => {
    const head = cells(facts);
    for (const words of [
      'TFH Depot',
      'ENN Yard',
      'Flatbed 12',
      'Arrived 2026-03-12 09:20',
      'Left 2026-03-12 10:05',
    ])
      expect(head).toContain(words);
  });

  test('has sent beside received, condition, container, weight and remark; a box where nobody counted', () => {
    const [heads, locks, rails] = rowsOf(tree, 'note-lines');
    expect(heads?.slice(0, 3)).toEqual(['sent', 'received', 'component']);
    // 36 locks of 2,268 g are 81.6 kg: 180 lb by 453.59237 g a pound (NIST Handbook 44, appendix C).
    expect(locks).toEqual([
      '40',
      '36',
      'LK',
      'Lock',
      'Tessary Form Hire',
      'ready',
      'C-4',
      '180 lb',
      'one bucket',
    ]);
    // What is not counted is weighed as the paper has it: 6 rails of 40 lb.
    expect(rails?.slice(0, 2)).toEqual(['6', '']);
    expect(rails?.slice(5)).toEqual(['to clean', '', '240 lb', '']);
    expect(withClass(tree, 'write-box')).toHaveLength(1);
    expect(wordsOf(tree)).toContain('42 pieces, 420 lb');
  });

  test('carries the claim, the protest, both signatures and the cautions', () => {
    const words = wordsOf(tree);
    for (const part of [
      'LK (TFH): 40 on the paper, 36 counted here.',
      'Under protest: Four locks fewer',
      'for us: Yard clerk',
      'driver or depot: name, signature',
      'under protest because',
      'Both sides count before they sign.',
      'Planning aid only',
    ])
      expect(words).toContain(part);
  });

  test('a return speaks of what is loaded, and shows the depot’s count once it is told', () => {
    const back: NoteSheetFacts = {
      ...facts,
      kind: 'Return note',
      isComing: false,
      units: 'metric',
      lines: [{ ...line, countedThere: 34 }],
    };
    const [heads, locks] = rowsOf(noteSheet(back).tree, 'note-lines');
    expect(heads?.slice(0, 3)).toEqual(['to go', 'loaded', 'depot counted']);
    expect(locks?.slice(0, 3)).toEqual(['40', '36', '34']);
    expect(wordsOf(noteSheet(back).tree)).toContain('81.6 kg');
  });

  test('a draft without a truck leaves room for its times, and says that nothing is booked', () => {
    const draft = {
      ...facts,
      state: 'draft: nothing of it is booked',
      arrivedAt: null,
      leftAt: null,
      vehicle: null,
      claims: [],
      protest: null,
    };
    expect(cells(draft)).toMatch(/Vehicle …+ .*Arrived …+ .*Left …+/u);
    expect(withClass(noteSheet(draft).tree, 'claims')).toEqual([]);
    expect(wordsOf(noteSheet(draft).tree)).toContain('nothing of it is booked');
  });
});
