import { describe, expect, test } from 'vitest';
import {
  emptyGeometry,
  fieldOf,
  isChanged,
  newStart,
  otherHand,
  readDraft,
  startOf,
  textsOf,
} from '../../../../renderer/screens/designs/edit/design-draft.ts';
import { readTypedLength } from '../../../../renderer/screens/designs/edit/typed-length.ts';
import { firstFree, otherHandCode } from '../../../../renderer/screens/designs/edit/other-hand-code.ts';
import { footNm, inchNm, millimetreNm } from '../../../../core/units/length.ts';

const geometry = { ...emptyGeometry, panels: [{ panel: 'P', xNm: 0, yNm: 0, onSide: false }] };
const texts = { ...newStart('S').texts, code: ' GZ ', name: 'Odd gang', hand: 'left' as const };
const fieldsOf = (read: ReturnType<typeof readDraft>) =>
  'problems' in read ? read.problems.map(({ field }) => field) : [];

describe('what is typed in the editor', () => {
  test('is sent without the blanks around it, hours as numbers', () => {
    expect(readDraft({ ...texts, assemble: '1 h 30 min' }, geometry, false)).toMatchObject({
      design: { code: 'GZ', hand: 'left', assembleH: 1.5, breakDownH: 0.75, revision: 'A' },
    });
  });
  test('every field that is missing or cannot be read is named, not the first alone', () => {
    const draft = readDraft(
      { ...texts, code: '', name: ' ', assemble: 'long', hand: '' },
      emptyGeometry,
      false,
    );
    expect(fieldsOf(draft)).toEqual(['code', 'name', 'assemble', 'row', 'hand']);
  });
  test('a gang that is its own mirror image has no hand, whatever was chosen before', () => {
    expect(readDraft(texts, geometry, true)).toMatchObject({ design: { hand: 'symmetrical' } });
  });
  test('a refusal of the core is shown at its field', () => {
    expect(
      ['code', 'design.hand', 'text', 'design.panels[3].panel', 'assembleH', undefined].map(fieldOf),
    ).toEqual(['code', 'hand', 'row', 'row', 'assemble', '']);
  });
  test('nothing is changed until a text or a piece is another one; the same again is no change', () => {
    const start = { ...newStart('S'), geometry };
    expect(isChanged(start, start.texts, { ...geometry })).toBe(false);
    expect(isChanged(start, { ...start.texts, name: 'x' }, geometry)).toBe(true);
    expect(isChanged(start, start.texts, emptyGeometry)).toBe(true);
  });
  test('what was saved opens as it was', () => {
    const draft = readDraft(texts, geometry, false);
    if ('problems' in draft) throw new Error('It could not be read.');
    expect(startOf(draft.design)).toMatchObject({
      geometry,
      texts: { ...textsOf(draft.design), code: 'GZ' },
    });
  });
});

describe('the code of the other hand', () => {
  const none = new Set<string>();
  test('L and R change places at the end', () => {
    expect([otherHandCode('GBL', 'left', none), otherHandCode('GBR', 'right', none)]).toEqual(['GBR', 'GBL']);
  });
  test('one without gets the letter of its hand', () => {
    expect([otherHandCode('GZ', 'left', none), otherHandCode('GZ', 'right', none)]).toEqual(['GZR', 'GZL']);
  });
  test('a code that is taken is counted on', () => {
    expect(otherHandCode('GBL', 'left', new Set(['GBR', 'GBR2']))).toBe('GBR3');
    expect(firstFree('GA', none)).toBe('GA');
  });
  test('the other hand of left is right; of none, none', () => {
    expect([otherHand('left'), otherHand('right'), otherHand('')]).toEqual(['right', 'left', '']);
  });
});

const read = (text: string, system: 'us' | 'metric') => {
  const length = readTypedLength(text, system);
  return length.ok ? length.value : length.error.code;
};

describe('a place that is typed', () => {
  test('a bare number is inches or millimetres', () => {
    expect([read('36', 'us'), read('36', 'metric')]).toEqual([36 * inchNm, 36 * millimetreNm]);
    expect(read('6 1/2', 'us')).toBe(6.5 * inchNm);
    expect(read('-3', 'us')).toBe(-3 * inchNm);
  });
  test('a unit that is written holds, whatever the reader uses', () => {
    expect(read(`2'-0"`, 'metric')).toBe(2 * footNm);
  });
  test('words are no length', () => expect(read('far', 'us')).toBe('length-unreadable'));
});
