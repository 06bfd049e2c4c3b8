import { describe, expect, test } from 'vitest';
import { answer, refuse } from '../../../core/answer.ts';
import { newMovement } from '../../../core/procedures/yard-move.ts';
import {
  type BookingDraft,
  emptyLine,
  errorOfRefusal,
  movementsOf,
  readQuantity,
} from '../../../renderer/screens/yard/booking-draft.ts';
import { firstPlace, placesFirst } from '../../../renderer/screens/yard/booking-hints.ts';

const at = answer('2026-03-10T16:00:00-05:00');
const known = new Set(['LK', 'RC']);
const line = (id: string, component: string, quantity: string) => ({
  ...emptyLine(`line-id-${id}`),
  component,
  quantity,
});
const slip: BookingDraft = {
  reason: 'strip',
  owner: 'OURS',
  from: 'SITE',
  to: 'YARD',
  at: '',
  noteNumber: ' T-7 ',
  remark: '',
  basis: 'counted',
  lines: [line('1', 'LK', '12'), emptyLine('line-id-2'), line('3', 'RC', '4')],
};

describe('a slip becomes movements', () => {
  const { movements, errors } = movementsOf(slip, at, known);
  test('two filled lines are two movements, the empty one between them is left out', () => {
    expect(errors).toEqual([]);
    expect(movements.map(({ component, quantity }) => [component, quantity])).toEqual([
      ['LK', 12],
      ['RC', 4],
    ]);
  });
  test('each is what the core’s door takes, an empty remark is not sent', () => {
    expect(movements.map((movement) => newMovement.safeParse(movement).success)).toEqual([true, true]);
    expect(movements[0]).toMatchObject({ noteNumber: 'T-7', id: 'line-id-1' });
    expect(movements[0]).not.toHaveProperty('remark');
  });
  test('an opening figure says how it was got and of which date', () => {
    const opening = movementsOf({ ...slip, reason: 'opening' }, at, known).movements[0];
    expect(opening).toMatchObject({ basis: 'counted', basisDate: '2026-03-10' });
  });
  test('everything that is wrong is told at once, each at its field', () => {
    const wrong = { ...slip, from: '', lines: [line('1', 'XX', '-3'), line('2', '', '5')] };
    const found = movementsOf(wrong, refuse('when-unreadable', 'no time'), known).errors;
    expect(found.map((error) => [error.line, error.field])).toEqual([
      [null, 'from'],
      [null, 'at'],
      [0, 'component'],
      [0, 'quantity'],
      [1, 'component'],
    ]);
  });
  test('a slip of empty lines is not sent', () => {
    expect(movementsOf({ ...slip, lines: [emptyLine('line-id-9')] }, at, known).errors).toHaveLength(1);
  });
});

describe('refusals of the core', () => {
  test('movements[1].quantity is the third line, as the second was empty', () => {
    const refusal = { message: 'only 3 there', field: 'movements[1].quantity' };
    expect(errorOfRefusal(refusal, slip.lines)).toMatchObject({ line: 2, field: 'quantity' });
  });
  test('movements[0].to is a field of the slip', () => {
    expect(errorOfRefusal({ message: 'm', field: 'movements[0].to' }, slip.lines)).toMatchObject({
      line: null,
      field: 'to',
    });
  });
  test('one without a field belongs to the whole slip', () => {
    expect(errorOfRefusal({ message: 'm' }, slip.lines)).toBeUndefined();
  });
});

describe('quantities', () => {
  test('24 is 24', () => expect(readQuantity(' 24 ')).toEqual({ ok: true, value: 24 }));
  test.each(['', '0', '-1', '1.5', '1,000', 'ten'])('"%s" is refused', (text) =>
    expect(readQuantity(text).ok).toBe(false),
  );
});

describe('what a form begins with', () => {
  const places = [
    { code: 'LOST', kind: 'lost' as const },
    { code: 'YARD', kind: 'yard' as const },
    { code: 'SITE', kind: 'site' as const },
  ];
  test('fitting kinds come first and no place is left out', () => {
    expect(placesFirst(places, ['site', 'yard']).map(({ code }) => code)).toEqual(['SITE', 'YARD', 'LOST']);
  });
  test('nothing fitting is nothing chosen', () => expect(firstPlace(places, ['scrap'])).toBe(''));
});
