// What is typed in the grid of a strip ticket, and where a scanned code leads.
import { describe, expect, test } from 'vitest';
import {
  columns,
  keyOf,
  missingWords,
  readEntry,
  restAsNone,
  withCell,
  type Column,
  type CountDraft,
} from '../../../renderer/screens/yard/strip/count-draft.ts';
import { scanTarget } from '../../../renderer/screens/yard/strip/scan-target.ts';

const none = { ready: 0, 'ready-hidden': 0, 'to-clean': 0, 'to-repair': 0, quarantine: 0, scrapped: 0 };
const line = (component: string, quantity: number, counted: Partial<typeof none> = {}) => {
  const all = { ...none, ...counted };
  const there = columns.reduce((sum, column) => sum + all[column], 0);
  return {
    component,
    name: component,
    kind: 'lock',
    quantity,
    sought: 0,
    unbooked: 0,
    from: 'G-1',
    lookAlike: null,
    isCounted: there > 0,
    counted: all,
    missing: quantity - there,
  };
};
const parts = [
  { part: 'P01/A1', gang: 'GA-1', expected: [line('P836', 4), line('LK', 26, { ready: 20 })] },
  { part: 'P01/A2', gang: null, expected: [line('LK', 26)] },
];

function typed(
  ...cells: readonly (readonly [component: string, column: Column, text: string])[]
): CountDraft {
  return cells.reduce<CountDraft>(
    (draft, [component, column, text]) => withCell(draft, keyOf('P01/A1', component), column, text),
    {},
  );
}

describe('what is typed', () => {
  test.each([
    [[['LK', 'to-clean', '3']], ['LK to-clean 3']],
    [[['LK', 'to-clean', '=']], ['LK to-clean 6']],
    [[['LK', 'ready', '=24']], ['LK ready 4']],
    [[['LK', 'ready', '=18']], ['LK ready -2']],
    [[['LK', 'ready', '-2']], ['LK ready -2']],
    [[['P836', 'ready', '0']], ['P836 ready 0']],
    // What two are to be repaired is not missing any more, in whatever order the cells are typed.
    [
      [
        ['P836', 'ready', '='],
        ['P836', 'to-repair', '1'],
      ],
      ['P836 to-repair 1', 'P836 ready 3'],
    ],
    [[['P836', 'ready', ' ']], []],
  ] as [[string, Column, string][], string[]][])('%j becomes %j', (cells, words) => {
    const { lines, errors } = readEntry(parts, typed(...cells), null);
    expect(errors).toEqual([]);
    expect(lines.map((each) => `${each.component} ${each.condition} ${each.quantity}`)).toEqual(words);
    expect(lines.every((each) => each.part === 'P01/A1' && each.owner === undefined)).toBe(true);
  });

  test.each(['x', '2.5', '1,000', '==', '3 4', '99999999999'])('%s cannot be read', (text) => {
    const { lines, errors } = readEntry(parts, typed(['LK', 'ready', text]), null);
    expect(lines).toEqual([]);
    expect(errors).toMatchObject([{ line: keyOf('P01/A1', 'LK'), column: 'ready' }]);
  });

  test('a mark that was looked at goes with every line', () => {
    const { lines } = readEntry(parts, typed(['LK', 'ready', '1']), 'TFH');
    expect(lines).toEqual([
      { part: 'P01/A1', component: 'LK', condition: 'ready', quantity: 1, owner: 'TFH' },
    ]);
  });

  test('the rest as none touches only what nobody counted', () => {
    expect(restAsNone(parts).map(({ part, component, quantity }) => [part, component, quantity])).toEqual([
      ['P01/A1', 'P836', 0],
      ['P01/A2', 'LK', 0],
    ]);
  });

  test('missing in words', () => {
    const words = parts.flatMap((part) => part.expected.map((each) => missingWords(each, true)));
    expect(words).toEqual(['not counted', '6 missing', 'not counted']);
    expect(missingWords(line('LK', 2, { ready: 2 }), true)).toBe('all there');
  });
});

describe('what is scanned', () => {
  const ticket = { name: 'S-7', job: 'TB26', parts };
  const target = (text: string, near: string | null = null) => {
    const found = scanTarget(text, ticket, near);
    return found.ok ? [found.value.part, found.value.component] : found.error.code;
  };

  test.each([
    ['RG:K::LK', null, ['P01/A1', 'LK']],
    ['RG:K::LK', 'P01/A2', ['P01/A2', 'LK']],
    ['lk', null, ['P01/A1', 'LK']],
    ['RG:G:TB26:GA-1', null, ['P01/A1', null]],
    ['ga-1', null, ['P01/A1', null]],
    ['RG:S:TB26:S-7', null, ['P01/A1', null]],
    ['RG:S:TB26:S-8', null, 'other-ticket'],
    ['RG:S:OTHER:S-7', null, 'other-job'],
    ['RG:G:TB26:GB-4', null, 'not-on-ticket'],
    ['RG:L::ENN', null, 'not-on-ticket'],
    ['P830', null, 'not-on-ticket'],
    ['RG:K::', null, 'not-a-scan-code'],
  ])('%s near %s leads to %j', (text, near, wanted) => {
    expect(target(text, near)).toEqual(wanted);
  });

  test('a ticket of another job is refused with both jobs named', () => {
    const found = scanTarget('RG:S:OTHER:S-7', ticket, null);
    expect(found.ok ? '' : found.error.message).toMatch(/OTHER.*TB26/u);
  });
});
