// The strip ticket on paper: where each gang goes in the largest type, boxes to count in, and no release by a forecast.
// 29 CFR 1926.703(e)(1): forms are not removed until the employer determines that the concrete has gained strength
// enough, by a condition of the plans or a test (read in the published text of the Code of Federal Regulations).
import { describe, expect, test } from 'vitest';
import { readFileSync } from 'node:fs';
import { type StripSheetFacts, stripSheet } from '../../core/sheets/strip-sheet.ts';
import { rowsOf, withClass, wordsOf } from './read-tree.ts';

const line = (component: string, expected: number, more: object = {}) => ({
  component,
  name: `Component ${component}`,
  expected,
  sought: 0,
  unbooked: 0,
  lookAlike: null,
  counted: null,
  missing: null,
  ...more,
});

const facts: StripSheetFacts = {
  name: 'S-7',
  job: { code: 'J1', name: 'Pier' },
  pour: { code: 'P01', name: 'Wall W1' },
  state: 'open',
  plannedAt: '2026-03-05T15:00:00-05:00',
  place: 'YARD',
  cleared: null,
  booked: null,
  follows: null,
  remark: 'Rain',
  parts: [
    {
      title: 'Gang GA-1 (GA) at P01 side A, nr 1',
      isLoose: false,
      next: 'Fly on to P04 side A, nr 1',
      lines: [
        line('P836', 4, { lookAlike: 'P830: 2\'-6" wide, this 3\'-0"' }),
        line('LK', 26, { unbooked: 3 }),
      ],
    },
    { title: 'Loose pieces of P01', isLoose: true, next: 'Lay down at YARD', lines: [line('TR12', 24)] },
  ],
  scanCode: 'RG:S:J1:S-7',
  units: 'us',
};

describe('the ticket to be counted on', () => {
  const { tree, title, foot } = stripSheet(facts);

  test('says what it is, and nothing on it is a release', () => {
    expect(title).toBe('Strip ticket S-7 P01');
    expect(foot).toBe('Strip ticket S-7 · pour P01 · J1 Pier');
    const words = wordsOf(tree);
    expect(words).toContain('Cleared to strip: nobody is entered');
    expect(words).toContain('2026-03-05 15:00 (a forecast)');
    expect(words).toContain('a forecast is never a release');
    expect(words).toContain('29 CFR 1926.703(e)(1)');
    expect(words).not.toMatch(/\bsafe\b/iu);
  });

  test('every part has where it goes next, in the largest type of the sheet', () => {
    expect(withClass(tree, 'strip-next').map(wordsOf)).toEqual([
      'Fly on to P04 side A, nr 1',
      'Lay down at YARD',
    ]);
    const css = ['sheet', 'lists', 'drawing']
      .map((name) => readFileSync(new URL(`../../core/sheets/${name}.css`, import.meta.url), 'utf8'))
      .join('\n');
    const sizes = [...css.matchAll(/font(?:-size)?:\s*([\d.]+)pt/gu)].map(([, points]) => Number(points));
    const next = /\.sh-strip-next \{[^}]*font-size: ([\d.]+)pt/u.exec(css)?.[1];
    expect(sizes.length).toBeGreaterThan(20);
    expect(Number(next)).toBe(Math.max(...sizes));
  });

  test('lines in their order with an empty box a condition, the look-alike and what the book has nowhere', () => {
    const [, panel, lock] = rowsOf(tree, 'strip-lines');
    expect(panel?.slice(0, 3)).toEqual([
      'P836',
      'Component P836 · look-alike P830: 2\'-6" wide, this 3\'-0"',
      '4',
    ]);
    expect(panel?.slice(3)).toEqual(['', '', '', '', '', '', '']);
    expect(lock?.[1]).toContain('3 more by the design, not in the book');
    // Six conditions and what is missing, of three lines.
    expect(withClass(tree, 'strip-box')).toHaveLength(21);
  });

  test('a QR code of the ticket stands in its head', () => {
    const [qr] = withClass(tree, 'qr');
    expect(qr?.attributes['aria-label']).toBe('QR code RG:S:J1:S-7');
  });
});

test('a cleared and booked ticket bears who cleared it, when it was booked, and what was counted', () => {
  const { tree } = stripSheet({
    ...facts,
    state: 'booked',
    cleared: { by: 'The engineer', at: '2026-03-05T13:10:00-05:00', clause: '7.3', evidence: 'cubes 4, 5' },
    booked: { at: '2026-03-05T16:00:00-05:00', who: 'yard' },
    parts: [
      {
        title: 'Gang',
        isLoose: false,
        next: 'Break down at YARD',
        lines: [line('LK', 26, { counted: [0, 0, 22, 1, 0, 1], missing: 2 })],
      },
    ],
  });
  const words = wordsOf(tree);
  expect(words).toContain('The engineer , 2026-03-05 13:10 · clause: 7.3 · evidence: cubes 4, 5');
  expect(words).toContain('booked 2026-03-05 16:00 by yard');
  expect(rowsOf(tree, 'strip-lines')[1]?.slice(2)).toEqual(['26', '0', '0', '22', '1', '0', '1', '2']);
  expect(withClass(tree, 'strip-box')).toHaveLength(0);
});

test('a ticket of late finds names the first, and what was missing instead of what is expected', () => {
  const { tree } = stripSheet({
    ...facts,
    follows: 'S-5',
    parts: [
      { title: 'Gang', isLoose: false, next: 'Lay down at YARD', lines: [line('LK', 0, { sought: 3 })] },
    ],
  });
  expect(wordsOf(tree)).toContain('Late finds of S-5');
  expect(rowsOf(tree, 'strip-lines')[0]?.[2]).toBe('was missing');
  expect(rowsOf(tree, 'strip-lines')[1]?.[2]).toBe('3');
  expect(wordsOf(tree)).not.toContain('Cleared to strip');
});
