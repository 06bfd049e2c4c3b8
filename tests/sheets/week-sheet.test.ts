// The week plan on the wall and the sheet of a day: what stands on them, what is marked as changed, and how large it is.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type PrintedBefore, printState } from '../../core/sheets/changes.ts';
import { dayLinesOf, type DaySheetFacts, daySheet } from '../../core/sheets/day-sheet.ts';
import { type WeekPour, weekLines, type WeekSheetFacts } from '../../core/sheets/week-lines.ts';
import { weekSheet } from '../../core/sheets/week-sheet.ts';
import { rowsOf, withClass, wordsOf } from './read-tree.ts';

const pour = (code: string, changes: Partial<WeekPour> = {}): WeekPour => ({
  code,
  name: `Wall of ${code}`,
  steel: { date: '2026-03-05', done: false },
  set: '2026-03-06T07:00:00-05:00',
  close: '2026-03-09T07:00:00-04:00',
  pour: '2026-03-10T13:00:00-04:00',
  strip: '2026-03-11T13:00:00-04:00',
  gates: [],
  held: null,
  isShown: true,
  ...changes,
});

const facts = (changes: Partial<WeekSheetFacts> = {}): WeekSheetFacts => ({
  job: { code: 'J1', name: 'Pier' },
  from: '2026-03-02',
  to: '2026-03-15',
  pours: [pour('P01'), pour('P02')],
  days: [
    {
      date: '2026-03-02',
      crewHours: 44,
      crewHoursThere: 51,
      crane: { minutes: 96, minutesThere: 120 },
      short: [],
    },
    {
      date: '2026-03-03',
      crewHours: 60,
      crewHoursThere: 51,
      crane: null,
      short: [{ component: 'R8', name: 'Rail 8 ft', quantity: 3 }],
    },
  ],
  print: { revision: 1, before: null, given: [] },
  given: [],
  changeNumber: 217,
  phones: [{ who: 'Steel crew', phone: '555 0101' }],
  units: 'us',
  ...changes,
});

const printedAs = (of: WeekSheetFacts, revision: number, given: readonly string[] = []): PrintedBefore => ({
  revision,
  at: '2026-02-26T10:00:00-05:00',
  given,
  lines: weekLines(of),
});

/** The sheet held against one printed before with other pours or days. */
function sheetAfter(before: Partial<WeekSheetFacts>, now: Partial<WeekSheetFacts>) {
  const then = facts(now);
  const print = printState(weekLines(then), [printedAs(facts(before), 4)]);
  return { print, tree: weekSheet({ ...then, print }).tree };
}

describe('the week plan', () => {
  const { tree, title, foot } = weekSheet(facts());
  const words = wordsOf(tree);

  test('says what it is, of which revision, when it is superseded, and never that anything is safe', () => {
    expect(title).toBe('Week plan J1 2026-03-02 revision 1');
    expect(foot).toBe('Week plan Mon 2 Mar to Sun 15 Mar · revision 1 · J1 Pier');
    expect(words).toContain(
      'Superseded once revision 2 exists. First printing of the plan: nothing is marked.',
    );
    expect(words).toContain('Strip times are forecasts, never a release.');
    expect(words).toContain('Plan of entry 217');
    expect(words).toContain('Steel crew 555 0101');
    expect(words).not.toMatch(/\bsafe\b/iu);
    expect(withClass(tree, 'caution').length).toBeGreaterThan(5);
  });

  test('a row a pour: steel in, set, close, pour, first strip shift', () => {
    const [heads, first] = rowsOf(tree, 'week-pours');
    expect(heads).toEqual(['pour', 'steel in', 'set', 'close', 'pour', 'first strip shift']);
    expect(first).toEqual([
      'P01 Wall of P01',
      'Thu 5 Mar promised',
      'Fri 6 Mar 07:00',
      'Mon 9 Mar 07:00',
      'Tue 10 Mar 13:00',
      'Wed 11 Mar 13:00',
    ]);
  });

  test('days: crew of those there are, crane of those bookable, short by name and number', () => {
    expect(rowsOf(tree, 'week-days').slice(1)).toEqual([
      ['Mon 2 Mar', '44 of 51 h', '96 of 120 min', 'none'],
      ['Tue 3 Mar', '60 of 51 h, too much', '–', '3 R8 Rail 8 ft'],
    ]);
  });

  test('without hours of a crane its column is one line', () => {
    const days = facts().days.map((day) => ({ ...day, crane: null }));
    const without = weekSheet(facts({ days }));
    expect(rowsOf(without.tree, 'week-days')[0]).toEqual(['day', 'crew hours', 'pieces short']);
    expect(wordsOf(without.tree)).toContain('no hours of a crane are entered');
  });

  test('an open gate is said in words with its date, and that the pour is not ready', () => {
    const gate = { name: 'inspection', who: 'Inspector', promised: '2026-03-11', late: true };
    const gated = weekSheet(facts({ pours: [pour('P01', { gates: [gate], held: 'cube failed, says AB' })] }));
    expect(withClass(gated.tree, 'not-ready').map(wordsOf)).toEqual([
      'Not ready: inspection by Inspector, Wed 11 Mar, too late; set kept standing: cube failed, says AB',
    ]);
  });

  test('what is read from ten feet is in 19 points, and on paper laid across', () => {
    // Five minutes of arc, the letter that normal sight tells (Snellen), are 4.43 mm at 10 ft; capitals of this type
    // are 1409 of 2048 of its size (the cap height that Liberation Sans states), and a point is 0.3528 mm.
    const needed = (3048 * Math.tan((5 / 60) * (Math.PI / 180))) / (1409 / 2048) / 0.352_78;
    const css = readFileSync(new URL('../../core/sheets/week.css', import.meta.url), 'utf8');
    const size = (name: string): number =>
      Number(new RegExp(`\\.${name} \\{[^}]*font-size: ([\\d.]+)pt`, 'u').exec(css)?.[1]);
    expect(needed).toBeCloseTo(18.27, 1);
    expect(size('sh-wall-lines')).toBeGreaterThanOrEqual(needed);
    expect(size('sh-wall-code')).toBeGreaterThanOrEqual(needed);
    expect(css.match(/size: (?:letter|a4) landscape/gu)).toHaveLength(2);
  });
});

describe('changes since the last printing', () => {
  const moved = pour('P02', {
    pour: '2026-03-11T13:00:00-04:00',
    strip: '2026-03-12T13:00:00-04:00',
  });

  test('exactly the cells of a moved pour are marked, by sign and word, with what was there', () => {
    const { print, tree } = sheetAfter({}, { pours: [pour('P01'), moved] });
    expect(print).toMatchObject({ revision: 5, before: { revision: 4 } });
    expect(withClass(tree, 'changed').map(wordsOf)).toEqual([
      '▲ changed: was Tue 10 Mar 13:00',
      '▲ changed: was Wed 11 Mar 13:00',
    ]);
    const [, first, second] = rowsOf(tree, 'week-pours');
    expect(first?.join(' ')).not.toContain('▲');
    expect(second?.[4]).toBe('Wed 11 Mar 13:00 ▲ changed: was Tue 10 Mar 13:00');
    expect(wordsOf(tree)).toContain('▲ changed: not as in revision 4 of Thu 26 Feb 10:00.');
  });

  test('a pour that is new says so once; one that is gone is named', () => {
    const { tree } = sheetAfter({ pours: [pour('P01'), pour('P09')] }, {});
    expect(withClass(tree, 'changed').map(wordsOf)).toEqual([
      '▲ changed: new on the plan',
      '▲ changed: no longer on the plan since revision 4: P09',
    ]);
  });

  test('a pour that comes into the weeks is not new: the printing kept it', () => {
    const { print, tree } = sheetAfter({ pours: [pour('P01', { isShown: false }), pour('P02')] }, {});
    expect(print.revision).toBe(4);
    expect(withClass(tree, 'changed')).toEqual([]);
  });

  test('a gate passed and pieces newly short are marked', () => {
    const gate = { name: 'inspection', who: 'Inspector', promised: '2026-03-11', late: false };
    const [monday, tuesday] = facts().days;
    if (monday === undefined || tuesday === undefined) throw new Error('No days.');
    const { tree } = sheetAfter(
      { pours: [pour('P01', { gates: [gate] }), pour('P02')] },
      { days: [{ ...monday, short: [{ component: 'LK', name: 'Lock', quantity: 94 }] }, tuesday] },
    );
    expect(withClass(tree, 'changed').map(wordsOf)).toEqual([
      '▲ changed: was: inspection by Inspector, Wed 11 Mar',
      '▲ changed: was none',
    ]);
  });

  test('printed once more as it was it is the same revision, and names who has it already', () => {
    const lines = weekLines(facts());
    const other = weekLines(facts({ pours: [pour('P01')] }));
    const prints: readonly PrintedBefore[] = [
      { revision: 1, at: '2026-02-19T10:00:00-05:00', given: ['Foreman'], lines: other },
      { revision: 2, at: '2026-02-26T10:00:00-05:00', given: ['Foreman', 'Crane'], lines },
    ];
    const print = printState(lines, prints);
    expect(print).toMatchObject({ revision: 2, before: { revision: 1 }, given: ['Foreman', 'Crane'] });
    const { tree } = weekSheet(facts({ print, given: ['Steel crew'] }));
    expect(wordsOf(tree)).toContain('Given to Foreman, Crane, Steel crew');
  });
});

const dayFacts = (changes: Partial<DaySheetFacts> = {}): DaySheetFacts => ({
  job: { code: 'J1', name: 'Pier' },
  date: '2026-03-06',
  shifts: [{ from: '2026-03-06T07:00:00-05:00', to: '2026-03-06T15:30:00-05:00' }],
  people: 6,
  crewHours: 38,
  crewHoursThere: 51,
  crane: null,
  steps: [
    {
      key: '2026-03-06/strip/P01',
      from: '2026-03-06T07:00:00-05:00',
      to: '2026-03-06T09:00:00-05:00',
      words: 'strip 2 GA at P01',
      gangs: ['GA-1', 'GA-2'],
      goesTo: ['GA: Fly on to P04 side A, nr 1', 'GA: Fly on to P04 side A, nr 2'],
      open: ['inspection by Inspector, Fri 6 Mar'],
      leftFrom: '2026-03-05',
    },
  ],
  picks: null,
  gates: [
    {
      name: 'wall steel',
      who: 'Steel crew',
      pour: 'P04',
      before: 'set',
      promised: '2026-03-06',
      late: true,
    },
  ],
  told: ['GA from P01 side A goes on as it stands to P04 side A'],
  short: [
    {
      component: 'R8',
      name: 'Rail 8 ft',
      quantity: 3,
      from: '2026-03-06T07:00:00-05:00',
      to: '2026-03-10T07:00:00-04:00',
    },
  ],
  print: { revision: 1, before: null, given: [] },
  given: ['Foreman'],
  phones: [{ who: 'Steel crew', phone: '555 0101' }],
  units: 'us',
  ...changes,
});

describe('the day sheet', () => {
  const { tree, title } = daySheet(dayFacts());
  const words = wordsOf(tree);

  test('steps in order with times, gangs by tag, and where each goes', () => {
    expect(title).toBe('Day sheet J1 2026-03-06 revision 1');
    const [, first] = rowsOf(tree, 'day-steps');
    expect(first).toEqual([
      '',
      '07:00 – 09:00',
      'strip 2 GA at P01 left over from Thu 5 Mar Not ready: inspection by Inspector, Fri 6 Mar',
      'GA-1, GA-2',
      'GA: Fly on to P04 side A, nr 1 GA: Fly on to P04 side A, nr 2',
    ]);
  });

  test('gates that are due with who answers for them and the number to call', () => {
    expect(rowsOf(tree, 'day-gates')[1]).toEqual([
      '',
      'wall steel',
      'set of P04',
      'Fri 6 Mar, too late',
      'Steel crew, 555 0101',
    ]);
  });

  test('what was told, what is short, the crew, the cautions, and nothing of safe', () => {
    expect(words).toContain('Told to the crew GA from P01 side A goes on as it stands to P04 side A');
    expect(words).toContain('3 R8 Rail 8 ft, from Fri 6 Mar 07:00 to Tue 10 Mar 07:00');
    expect(words).toContain('Crew 6 people, 38 of 51 h');
    expect(words).toContain('29 CFR 1926.703(e)(1)');
    expect(words).not.toMatch(/\bsafe\b/iu);
  });

  test('picks in order by crane; one that does not fit its hours says so', () => {
    const picks = [
      { crane: 'T1', at: '2026-03-06T07:00:00-05:00', words: 'strip GA at P01' },
      { crane: 'T1', at: null, words: 'set GA at P04' },
    ];
    const list = withClass(daySheet(dayFacts({ picks })).tree, 'day-list').map(wordsOf);
    expect(list[0]).toBe('Picks of T1 in order 07:00 strip GA at P01 does not fit: set GA at P04');
  });

  test('a step at another time is marked, and one that is gone is named', () => {
    const gone = {
      ...dayFacts().steps[0]!,
      key: '2026-03-06/set/P07',
      words: 'set GA at P07',
      goesTo: [],
      open: [],
    };
    const later = { ...dayFacts().steps[0]!, from: '2026-03-06T08:00:00-05:00' };
    const before = dayLinesOf({ steps: [later, gone] });
    const print = printState(dayLinesOf(dayFacts()), [
      { revision: 1, at: '2026-03-05T15:00:00-05:00', given: [], lines: before },
    ]);
    const marked = daySheet(dayFacts({ print }));
    expect(withClass(marked.tree, 'changed').map(wordsOf)).toEqual([
      '▲ changed: was 08:00 · strip 2 GA at P01 · GA: Fly on to P04 side A, nr 1 · GA: Fly on to P04 side A, nr 2 · inspection by Inspector, Fri 6 Mar',
      '▲ changed: not any more: 07:00 · set GA at P07',
    ]);
  });
});
