// A wall as it is typed, read into what is asked: in the reader's units, every refusal at its field.
import { describe, expect, test } from 'vitest';
import { askedBy, type FillTexts, firstTexts, planBy } from '../../../renderer/screens/fill/fill-texts.ts';
import { readLegs } from '../../../renderer/screens/fill/legs-text.ts';
import { hoursOf } from '../../../renderer/screens/fill/named-gangs.ts';
import { planFaces } from '../../../renderer/screens/fill/plan-places.ts';
import { parseLength } from '../../../core/units/length.ts';

const foot = 304_800_000;
const inch = 25_400_000;
const at = (date: string): string => `${date}T00:00:00Z`;
const first = firstTexts('S', '2026-03-02', 'us');
const ask = (more: Partial<FillTexts>) => askedBy({ ...first, ...more }, 'us', at);

describe('legs in one line', () => {
  test('are lengths with turns between them, by words or their first letters', () => {
    expect(readLegs(`24' left 12'-6" r 8 ft`, parseLength)).toEqual({
      ok: true,
      value: { lengthsNm: [24 * foot, 12.5 * foot, 8 * foot], turns: ['left', 'right'] },
    });
    expect(readLegs(`24' left 12' left 24' left 12' left`, parseLength)).toMatchObject({
      ok: true,
      value: { turns: ['left', 'left', 'left', 'left'] },
    });
  });

  test.each([`left 12'`, `24' left right 8'`, '24', `24' left 0'`, ''])('%s is refused', (text) => {
    expect(readLegs(text, parseLength)).toMatchObject({ ok: false, error: { code: 'legs-unreadable' } });
  });
});

describe('what is asked', () => {
  test('takes bare heights as feet and bare thicknesses as inches, and what is open is left out', () => {
    const { asked, problems } = ask({ legs: '24 left 12', thickness: '10', height: '12', startBy: '3' });
    expect(problems).toEqual({});
    expect(asked?.wall).toMatchObject({
      legs: [{ lengthNm: 24 * foot }, { lengthNm: 12 * foot }],
      turns: ['left'],
      thicknessNm: 10 * inch,
      heightNm: 12 * foot,
      start: { kind: 'free', overhangNm: 3 * inch },
      end: { kind: 'free', overhangNm: 0 },
    });
    expect(asked).not.toHaveProperty('maximumFillerNm');
    expect(asked?.limits).toEqual({ lengthNm: 20 * foot });
  });

  test('names every field that cannot be read, and then nothing is asked', () => {
    const { asked, problems } = ask({ thickness: 'thick', height: '0', filler: '-2 in', rows: '8+x' });
    expect(asked).toBeNull();
    expect(Object.keys(problems).sort()).toEqual(['filler', 'height', 'rows', 'thickness']);
  });

  test('of a column has its two widths and no wall', () => {
    const { asked } = ask({ what: 'column', widthA: '24', widthB: '30' });
    expect(asked?.column).toMatchObject({ widthANm: 24 * inch, widthBNm: 30 * inch, heightNm: 12 * foot });
    expect(asked).not.toHaveProperty('wall');
  });

  test('counts stock only where it lies, on a date', () => {
    expect(ask({ useStock: true }).problems).toHaveProperty('locations');
    const { asked } = ask({ useStock: true, locations: ['YD'] });
    expect(asked?.useStock).toEqual({ locations: ['YD'], at: '2026-03-02T00:00:00Z' });
    expect(ask({ useStock: true, locations: ['YD'], date: '2 March' }).problems).toHaveProperty('date');
  });
});

test('A closed wall has no ends, and comes back to where it began, or its legs say what is left', () => {
  const shut = { closed: true, startBy: 'not read', legs: `12' left 16' left 12' left 16' left` };
  expect(ask(shut).asked?.wall).toMatchObject({ closed: true, start: { kind: 'next-pour' } });
  expect(ask({ ...shut, legs: `12' left 16' left 12' left 15' left` }).problems.legs).toContain(
    'do not come back to where they began',
  );
  expect(ask({ ...shut, legs: `12' left 16'` }).problems.legs).toContain('have 2 turns');
  expect(ask({ legs: `12' left 16' left` }).problems.legs).toContain('have 1 turns');
});

test('Corner legs are asked for only where the wall turns', () => {
  expect(ask({ insideLeg: '8' }).asked?.wall).not.toHaveProperty('insideCornerLegNm');
  expect(ask({ insideLeg: '8', legs: '24 left 12' }).asked?.wall).toMatchObject({
    insideCornerLegNm: 8 * inch,
  });
});

test('A plan needs no more than legs and thickness, or the two widths of a column', () => {
  expect(planBy({ ...first, legs: '24 left 12', height: 'high' }, 'us')).toEqual({
    kind: 'wall',
    lengthsNm: [24 * foot, 12 * foot],
    turns: ['left'],
    thicknessNm: 12 * inch,
  });
  expect(planBy({ ...first, legs: '24 le' }, 'us')).toBeNull();
  expect(planBy({ ...first, what: 'column', widthB: '' }, 'us')).toBeNull();
});

test('A wall that turns left has its inner face on side B, shorter by the thickness at the corner', () => {
  const { a, b } = planFaces([10, 10], ['left'], 2);
  expect(a).toEqual([
    { xNm: 0, yNm: 0 },
    { xNm: 10, yNm: 0 },
    { xNm: 10, yNm: 10 },
  ]);
  expect(b).toEqual([
    { xNm: 0, yNm: 2 },
    { xNm: 8, yNm: 2 },
    { xNm: 8, yNm: 10 },
  ]);
});

test('Hours are a number from 0 to 10 000, and an empty field is none', () => {
  expect(['1.5', '2,25', '', 'soon', '10001'].map(hoursOf)).toEqual([1.5, 2.25, null, null, null]);
});
