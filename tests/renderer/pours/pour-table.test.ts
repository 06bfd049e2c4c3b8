import { describe, expect, test } from 'vitest';
import { footNm } from '../../../core/units/length.ts';
import { planLayout } from '../../../renderer/screens/pours/plan-layout.ts';
import { columnIds, columnText, filteredPours } from '../../../renderer/screens/pours/pour-columns.ts';
import type { PourRow } from '../../../renderer/screens/pours/pour-shapes.ts';
import { chicago, samplePour } from './sample-pour.ts';

const row: PourRow = {
  pour: {
    ...samplePour,
    gates: [
      { name: 'steel', who: 'Steel crew', before: 'close', promised: '2026-03-05', done: true },
      { name: 'inspection', who: 'Inspector', before: 'pour', promised: '2026-03-06', done: false },
    ],
  },
  dateOpen: false,
  times: {
    pour: 'P07',
    sides: [],
    finishAt: '2026-03-06T14:00:00-06:00',
    readyAt: '2026-03-07T14:00:00-06:00',
    stripFrom: '2026-03-09T07:00:00-05:00',
    stripTo: '2026-03-09T13:00:00-05:00',
    freeAt: '2026-03-09T13:00:00-05:00',
  },
  loose: [],
  areaM2: 0,
  findings: [
    { rule: 'a', severity: 'caution', message: 'm' },
    { rule: 'b', severity: 'stop', message: 'm' },
    { rule: 'c', severity: 'caution', message: 'm' },
  ],
};

const found = (words: string) => filteredPours([row], words, chicago).length;
const side = (name: 'A' | 'B', ...gangs: (readonly [string, number])[]) => ({
  side: name,
  setAt: samplePour.finishAt,
  setH: 1,
  gangs: gangs.map(([design, feet]) => ({ design, atNm: feet * footNm })),
});

describe('the table of pours', () => {
  test('every one of its 18 columns has a text, only the gangs of an empty side have none', () => {
    const empty = columnIds.filter((id) => columnText(row, id, chicago) === '');
    expect([columnIds.length, empty]).toEqual([18, ['gangsB']]);
  });
  test('the forecast, the first strip shift, open gates and findings are told', () => {
    const told = ['ready', 'strip', 'gates', 'findings'].map((id) => columnText(row, id, chicago));
    expect(told).toEqual(['Sat 7 Mar 14:00', 'Mon 9 Mar 07:00', '1 of 2', '1 stop, 2 cautions']);
  });
  test('a filter finds words in any column, all of them needed', () => {
    expect([found('w5 "9 mar"'), found('w5 mon'), found('W5 GA'), found('W6')]).toEqual([0, 1, 1, 0]);
  });
});

describe('the plan of a pour', () => {
  const designs = [
    { code: 'GA', widthNm: 12 * footNm },
    { code: 'GB', widthNm: 8 * footNm },
  ];
  test('it reaches from the first gang to the end of the last: 0 to 20 ft', () => {
    const layout = planLayout([side('A', ['GB', 12], ['GA', 0]), side('B')], designs);
    expect([layout?.fromNm, layout?.toNm]).toEqual([0, 20 * footNm]);
  });
  test('gangs end to end share a line, gangs that lie over each other do not', () => {
    const layout = planLayout([side('A', ['GA', 0], ['GA', 12]), side('B', ['GA', 0], ['GB', 6])], designs);
    expect(layout?.layers).toEqual({ A: 1, B: 2 });
  });
  test('no gangs, no plan', () => expect(planLayout([side('A'), side('B')], designs)).toBeUndefined());
});
