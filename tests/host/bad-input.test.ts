import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { badInput, fieldName } from '../../core/host/bad-input.ts';

const shape = z.strictObject({
  name: z.string().min(2).max(5).optional(),
  turns: z
    .array(z.strictObject({ from: z.iso.datetime({ offset: true }), hours: z.number().min(0).max(24) }))
    .optional(),
  count: z.int().min(1).optional(),
  side: z.enum(['A', 'B']).optional(),
  stock: z.union([z.int(), z.array(z.strictObject({ quantity: z.int() }))]).optional(),
  pieces: z.record(z.string().max(3), z.int()).optional(),
  text: z
    .string()
    .refine((text) => text !== 'no', 'no is not a name here')
    .optional(),
});

const cases: readonly (readonly [input: unknown, message: string, field: string | undefined])[] = [
  [{ count: 'x' }, 'count: read "x", wanted a number.', 'count'],
  [{ count: 1.5 }, 'count: read 1.5, wanted a whole number.', 'count'],
  [{ count: 0 }, 'count: read 0, wanted at least 1.', 'count'],
  [{ side: 'C' }, 'side: read "C", wanted "A" or "B".', 'side'],
  [{ name: 'x' }, 'name: read "x", wanted a length of at least 2.', 'name'],
  [{ name: 'abcdefg' }, 'name: read "abcdefg", wanted a length of at most 5.', 'name'],
  [
    { turns: [{ from: '2026-03-02', hours: 1 }] },
    'turns[0].from: read "2026-03-02", wanted an instant with offset as 2026-03-02T07:00:00-05:00.',
    'turns[0].from',
  ],
  [
    { turns: [{ from: '2026-03-02T07:00:00Z', hours: 25 }] },
    'turns[0].hours: read 25, wanted at most 24.',
    'turns[0].hours',
  ],
  [
    { turns: [{ from: '2026-03-02T07:00:00Z' }] },
    'turns[0].hours: it is missing, wanted a number.',
    'turns[0].hours',
  ],
  [{ turns: 5 }, 'turns: read 5, wanted a list.', 'turns'],
  [{ other: 5 }, 'The input: the key "other" is unknown.', undefined],
  [{ stock: 'x' }, 'stock: read "x", wanted a number or a list.', 'stock'],
  [
    { stock: [{ quantity: 1 }, { quantity: 'y' }] },
    'stock[1].quantity: read "y", wanted a number.',
    'stock[1].quantity',
  ],
  [{ pieces: { LK: 'z' } }, 'pieces.LK: read "z", wanted a number.', 'pieces.LK'],
  [{ text: 'no' }, 'text: no is not a name here.', 'text'],
  [[], 'The input: read a list of 0, wanted an object.', undefined],
  [null, 'The input: read null, wanted an object.', undefined],
  [{ count: 'x', side: 'C' }, 'count: read "x", wanted a number, and 1 more.', 'count'],
];

describe('a wrong input is named by its first wrong place', () => {
  for (const [input, message, field] of cases)
    test(`${JSON.stringify(input)}: ${message}`, () => {
      const parsed = shape.safeParse(input);
      if (parsed.success) throw new Error('It was taken.');
      const refusal = badInput(parsed.error, input);
      expect(refusal).toEqual({
        ok: false,
        error: { code: 'bad-input', message, ...(field === undefined ? {} : { field }) },
      });
    });

  test('a long text that was read is cut short in the message', () => {
    const parsed = shape.safeParse({ count: 'x'.repeat(5000) });
    if (parsed.success) throw new Error('It was taken.');
    const refusal = badInput(parsed.error, { count: 'x'.repeat(5000) });
    expect(refusal.ok ? 0 : refusal.error.message.length).toBeLessThan(140);
  });

  test('a path of keys and numbers is written with dots and brackets', () => {
    expect(fieldName(['pours', 2, 'sides', 0, 'setAt'])).toBe('pours[2].sides[0].setAt');
  });
});
