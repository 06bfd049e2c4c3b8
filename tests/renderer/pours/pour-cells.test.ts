import { describe, expect, test } from 'vitest';
import { footNm } from '../../../core/units/length.ts';
import { gangsCount, gangsText, readGangs } from '../../../renderer/screens/pours/gangs-text.ts';
import { cellOfField, cells, isCellId } from '../../../renderer/screens/pours/pour-cells.ts';
import { movedCell } from '../../../renderer/screens/pours/cell-moves.ts';
import { withSpokenInstants } from '../../../renderer/parts/spoken-instants.ts';
import { nextCode, stripReasons } from '../../../renderer/screens/pours/pour-words.ts';
import { chicago, samplePour } from './sample-pour.ts';

const ids = Object.keys(cells).filter(isCellId);

describe('cells of a pour', () => {
  test('what stands in a cell reads back as the same pour, in all 11 of them', () => {
    const same = ids.map((id) => {
      const written = cells[id].write(samplePour, cells[id].text(samplePour, chicago), chicago);
      return written.ok && JSON.stringify(written.value) === JSON.stringify(samplePour);
    });
    expect(same).toEqual(Array.from({ length: 11 }, () => true));
  });
  test('the close moves and nothing else does', () => {
    const written = cells.setB.write(samplePour, '9 Mar 07:00', chicago);
    expect(written).toEqual({
      ok: true,
      value: {
        ...samplePour,
        sides: [samplePour.sides[0], { ...samplePour.sides[1], setAt: '2026-03-09T07:00:00-05:00' }],
      },
    });
  });
  test('steel is steel first; a word that is no order is refused', () => {
    expect(cells.order.write(samplePour, 'steel', chicago)).toMatchObject({
      value: { order: 'steel-first' },
    });
    expect(cells.order.write(samplePour, 'both', chicago).ok).toBe(false);
  });
  test('predecessors are parted by commas or spaces, each once', () => {
    expect(cells.after.write(samplePour, 'P05, P06 P05', chicago)).toMatchObject({
      value: { after: ['P05', 'P06'] },
    });
  });
  test('a refusal for side B’s set date goes to its cell, an unknown field to none', () => {
    expect(
      ['sides.B.setAt', 'finishAt', 'pour.stripH', 'after', 'pour.sides[0].setH', 'gates', undefined].map(
        cellOfField,
      ),
    ).toEqual(['setB', 'finish', 'stripH', 'after', 'setAH', undefined, undefined]);
  });
});

describe('gangs of a side in a line', () => {
  const gangs = [
    { design: 'GA', atNm: 0 },
    { design: 'GA', atNm: 12 * footNm },
    { design: 'GB', atNm: 24 * footNm },
  ];
  test('two GA and one GB are counted so', () => expect(gangsCount(gangs)).toBe('2 GA, GB'));
  test.each(['us', 'metric'] as const)('read back as written, %s', (system) => {
    expect(readGangs(gangsText(gangs, system), gangs, system)).toEqual({ ok: true, value: gangs });
  });
  test('a place that print had to round keeps its exact length', () => {
    const odd = [{ design: 'GA', atNm: 1_000_001 }];
    expect(readGangs(gangsText(odd, 'us'), odd, 'us')).toEqual({ ok: true, value: odd });
  });
  test('a gang without a place is refused', () => expect(readGangs('GA', [], 'us').ok).toBe(false));
  test('no gangs are no gangs', () => expect(readGangs(' ', gangs, 'us')).toEqual({ ok: true, value: [] }));
});

describe('keys in the table', () => {
  const size = { rows: 3, columns: 4 };
  const plain = { control: false, page: 2 };
  test('arrows stop at the edges', () => {
    expect(movedCell({ row: 0, column: 0 }, 'ArrowUp', size, plain)).toEqual({ row: 0, column: 0 });
    expect(movedCell({ row: 1, column: 3 }, 'ArrowRight', size, plain)).toEqual({ row: 1, column: 3 });
  });
  test('End goes to the end of the row, with Control to the last cell', () => {
    expect(movedCell({ row: 0, column: 1 }, 'End', size, plain)).toEqual({ row: 0, column: 3 });
    expect(movedCell({ row: 0, column: 1 }, 'End', size, { control: true, page: 2 })).toEqual({
      row: 2,
      column: 3,
    });
  });
  test('a letter does not move', () =>
    expect(movedCell({ row: 0, column: 0 }, 'a', size, plain)).toBeUndefined());
});

describe('words of a pour', () => {
  test('a copy of P07 is P08, or P09 where P08 is taken; a code without a number gets one', () => {
    expect(nextCode('P07', new Set(['P07']))).toBe('P08');
    expect(nextCode('P07', new Set(['P07', 'P08']))).toBe('P09');
    expect(nextCode('Wall', new Set(['Wall']))).toBe('Wall 2');
  });
  test('strength met at night waits for the next shift, and the words say both', () => {
    const times = {
      pour: 'P07',
      sides: [],
      finishAt: '2026-03-06T14:00:00-06:00',
      readyAt: '2026-03-07T14:00:00-06:00',
      stripFrom: '2026-03-09T07:00:00-05:00',
      stripTo: '2026-03-09T13:00:00-05:00',
      freeAt: '2026-03-09T13:00:00-05:00',
    };
    const row = { pour: samplePour, dateOpen: false, times, loose: [], areaM2: 0, findings: [] };
    expect(stripReasons(row, 'America/Chicago')[0]).toBe(
      'Finish Fri 6 Mar 14:00 + 24 h by the clock = Sat 7 Mar 14:00.',
    );
    expect(stripReasons(row, 'America/Chicago')[1]).toContain('Mon 9 Mar 07:00');
  });
  test('an instant in a sentence of the core is told by the clock of the job', () => {
    const text = 'closes at 2026-03-03T13:00:00Z, before 2026-03-06T07:00:00-06:00.';
    expect(withSpokenInstants(text, 'America/Chicago')).toBe(
      'closes at Tue 3 Mar 07:00, before Fri 6 Mar 07:00.',
    );
  });
});
