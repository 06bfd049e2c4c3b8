import { describe, expect, test } from 'vitest';
import { footNm, inchNm } from '../../../core/units/length.ts';
import { exampleJoints, exampleLines } from '../../../renderer/screens/rules/example-changes.ts';
import { madeExample } from '../../../renderer/screens/rules/made-example.ts';
import { ruleDifferences } from '../../../renderer/screens/rules/rule-differences.ts';
import { draftOf, fullRules } from './sample-rules.ts';

const line = (component: string, quantity: number) => ({
  component,
  name: component,
  kind: 'lock',
  quantity,
  weightGrams: 1,
  because: [],
});

describe('two versions', () => {
  test('that are the same differ in nothing', () => {
    expect(ruleDifferences(fullRules, structuredClone(fullRules), 'us')).toEqual([]);
  });

  test('are held against each other number by number, rows by their limit', () => {
    const [first, second, third] = fullRules.locks!.bands;
    const bands = [first!, { upToNm: 36 * inchNm, count: 2 }, { ...second!, count: 3 }, third!];
    const { closures: _, ...others } = fullRules;
    const after = { ...others, locks: { ...fullRules.locks!, bands }, sources: {} };
    const differences = ruleDifferences({ ...fullRules, sources: {} }, after, 'us');
    expect(differences).toEqual([
      { where: `Locks: Joint up to 4'-2"`, before: '2', after: '3' },
      { where: 'Made-up closures: Backing', before: 'PK', after: '' },
      { where: 'Made-up closures: Backing at most apart', before: `2'-0"`, after: '' },
      { where: 'Made-up closures: Hours of work on a square metre', before: '2', after: '' },
      { where: `Locks: Joint up to 3'-0"`, before: '', after: '2' },
    ]);
  });

  test('also by where a number comes from', () => {
    const sources = { ...fullRules.sources, 'locks.bands[1]': 'sheet 12', brackets: 'sheet 9' };
    expect(ruleDifferences(fullRules, { ...fullRules, sources }, 'metric')).toEqual([
      { where: 'Source of Walkway brackets', before: 'sheet 8 (invented)', after: 'sheet 9' },
      { where: 'Source of Locks: Joint up to 1270 mm', before: '', after: 'sheet 12' },
    ]);
  });
});

describe('the example', () => {
  const joint = { kind: 'vertical' as const, xNm: 36, yNm: 0, lengthNm: 96, locks: 4 };
  const before = {
    joints: [joint, { ...joint, xNm: 72 }],
    lines: [line('P36', 3), line('LK', 8), line('WB', 2)],
  };
  const after = { joints: [joint, { ...joint, xNm: 72, locks: 5 }], lines: [line('P36', 3), line('LK', 9)] };

  test('tells which joints have another number of locks than in the book', () => {
    expect(exampleJoints(after, before).map((each) => each.before)).toEqual([null, 4]);
    expect(exampleJoints(after, undefined).map((each) => each.before)).toEqual([null, null]);
  });

  test('lists the pieces that the tables add, and those that they no longer add', () => {
    expect(exampleLines(after, before, new Set(['P36']))).toEqual([
      { component: 'LK', name: 'LK', before: 8, after: 9 },
      { component: 'WB', name: 'WB', before: 2, after: 0 },
    ]);
  });

  test('of a system without designs is a row of its tallest panels, widest first', () => {
    expect(madeExample(draftOf({}))?.panels).toEqual([
      { panel: 'P36', xNm: 0, yNm: 0, onSide: false },
      { panel: 'P24', xNm: 3 * footNm, yNm: 0, onSide: false },
    ]);
    const draft = draftOf({});
    const one = { ...draft, catalogue: draft.catalogue.filter((row) => row.before?.code !== 'P24') };
    expect(madeExample(one)?.panels.map(({ xNm }) => xNm)).toEqual([0, 3 * footNm]);
    expect(madeExample({ ...draft, catalogue: [] })).toBeNull();
  });
});
