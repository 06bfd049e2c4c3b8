import { assert, pre, property, subarray } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readRuleTables, ruleTables, type RuleTables } from '../../../core/catalogue/rules.ts';
import { inchNm } from '../../../core/units/length.ts';
import { tableForms } from '../../../renderer/screens/rules/all-forms.ts';
import {
  addRow,
  pasteRows,
  removeRow,
  removeTable,
  writeField,
  writeRow,
  writeRowSource,
  writeSource,
} from '../../../renderer/screens/rules/draft-edits.ts';
import { cellText, rulesOfDraft, type RulesDraft } from '../../../renderer/screens/rules/rules-draft.ts';
import { draftOf, fullRules } from './sample-rules.ts';

const fieldAt = (place: string) =>
  tableForms.flatMap(({ fields }) => fields).find((each) => each.place === place)!;
const rowsAt = (place: string) =>
  tableForms.flatMap(({ rows }) => rows).find((each) => each.place === place)!;
const typed = (draft: RulesDraft, place: string, text: string | null) =>
  writeField(draft, fieldAt(place), text, 'us');
const placesOf = (draft: RulesDraft) => rulesOfDraft(draft).problems.map(({ place }) => place);
const bands = rowsAt('locks.bands');
const inRow = (draft: RulesDraft, row: number, column: number, text: string) =>
  writeRow(draft, bands, draft.rows['locks.bands']![row]!.id, bands.columns[column]!, text, 'us');

describe('rules on screen', () => {
  test('are the same rules when nothing was written', () => {
    expect(rulesOfDraft(draftOf(fullRules))).toEqual({ rules: fullRules, problems: [] });
    expect(rulesOfDraft(draftOf({}))).toEqual({ rules: {}, problems: [] });
  });

  test('have a cell for every key that rule tables can have', () => {
    const shown = new Set([
      ...tableForms.flatMap(({ fields }) => fields.map(({ path }) => path.join('.'))),
      ...tableForms.flatMap(({ rows }) =>
        rows.flatMap(({ path, columns }) => columns.map(({ key }) => [...path, '[]', key].join('.'))),
      ),
    ]);
    const keys = leaves(fullRules).filter((path) => !path.startsWith('sources.'));
    expect(keys.length).toBeGreaterThan(50);
    expect(keys.filter((path) => !shown.has(path))).toEqual([]);
    // The sample has every table there is, and its optional keys are all given.
    expect(Object.keys(fullRules).sort()).toEqual(Object.keys(ruleTables.shape).sort());
    for (const [name, table] of Object.entries(ruleTables.shape)) {
      const shape = (table as { unwrap?: () => { shape?: object } }).unwrap?.().shape;
      if (shape !== undefined)
        expect(Object.keys(fullRules[name as keyof RuleTables]!), name).toEqual(
          expect.arrayContaining(
            Object.keys(shape).filter((key) => name !== 'placingRails' || key !== 'neededFor'),
          ),
        );
    }
  });

  test('with any of their tables and optional keys left out, come back as they were', () => {
    const optional = leaves(fullRules).filter((path) => !path.includes('[]'));
    assert(
      property(subarray(optional), subarray(Object.keys(fullRules)), (paths, tables) => {
        const fewer = structuredClone(fullRules) as Record<string, unknown>;
        for (const path of paths) takeOut(fewer, path.split('.'));
        for (const table of tables) delete fewer[table];
        delete fewer['sources'];
        const read = readRuleTables(fewer);
        // Without a key that a table cannot do without it is no rule table.
        pre(read.ok);
        expect(rulesOfDraft(draftOf(read.value))).toEqual({ rules: read.value, problems: [] });
      }),
      { numRuns: 300 },
    );
  });
});

describe('a cell', () => {
  test('keeps what was typed and is read into the rules', () => {
    const draft = typed(draftOf(fullRules), 'rails.maximumAverageSpacing', '5 ft 6 in');
    expect(cellText(draft.cells['rails.maximumAverageSpacing'], { as: 'length' }, 'metric')).toBe(
      '5 ft 6 in',
    );
    expect(rulesOfDraft(draft)).toEqual({ rules: fullRules, problems: [] });
    expect(rulesOfDraft(typed(draft, 'rails.maximumAverageSpacing', '60')).rules.rails).toMatchObject({
      maximumAverageSpacingNm: 60 * inchNm,
    });
  });

  test('that cannot be read is a problem at its place, loses nothing, and can be given up', () => {
    const broken = typed(draftOf(fullRules), 'rails.maximumAverageSpacing', '5 feets');
    expect(placesOf(broken)).toEqual(['rails.maximumAverageSpacing']);
    expect(broken.cells['rails.maximumAverageSpacing']?.typed).toBe('5 feets');
    expect(rulesOfDraft(typed(broken, 'rails.maximumAverageSpacing', null)).rules).toEqual(fullRules);
  });

  test('whose print was rounded keeps its exact length when the print is left as it is', () => {
    const odd = { ...fullRules, onSide: { narrowerThanNm: 750_000_001, onlyAt: ['top' as const] } };
    const draft = draftOf(odd);
    const print = cellText(draft.cells['onSide.narrowerThan'], { as: 'length' }, 'us');
    expect(print).toMatch(/^~/u);
    expect(rulesOfDraft(typed(draft, 'onSide.narrowerThan', print)).rules).toEqual(odd);
  });

  test('that a table cannot do without is missed by its words; any other may be empty', () => {
    const [without, never] = [typed(draftOf(fullRules), 'hooks.minimum', ''), draftOf(fullRules)];
    expect(rulesOfDraft(without).problems).toEqual([
      { place: 'hooks.minimum', message: expect.stringContaining('"At least" is empty') },
    ]);
    const { hooks } = rulesOfDraft(typed(never, 'hooks.maximumHeight', '')).rules;
    expect(hooks).not.toHaveProperty('maximumHeightNm');
  });

  test('of a platform is missed only where something of the platform is given', () => {
    const half = typed(draftOf(fullRules), 'brackets.platform.planksWide', '');
    expect(placesOf(half)).toEqual(['brackets.platform.planksWide']);
    const none = ['post', 'postsPerBracket', 'guardrailRows'].reduce(
      (draft, key) => typed(draft, `brackets.platform.${key}`, ''),
      half,
    );
    expect(placesOf(none)).toEqual([]);
    expect(rulesOfDraft(none).rules.brackets).not.toHaveProperty('platform');
  });
});

describe('rows', () => {
  test('are added, written and taken out; an empty one is no row', () => {
    const four = addRow(draftOf(fullRules), bands);
    expect(rulesOfDraft(four)).toEqual({ rules: fullRules, problems: [] });
    const written = inRow(inRow(four, 3, 0, `8'-4"`), 3, 1, '4');
    expect(rulesOfDraft(written).rules.locks?.bands.at(-1)).toEqual({ upToNm: 100 * inchNm, count: 4 });
    const three = removeRow(written, bands, written.rows['locks.bands']![0]!.id);
    expect(rulesOfDraft(three).rules.locks?.bands.map(({ count }) => count)).toEqual([2, 3, 4]);
  });

  test('half written are a problem at the empty cell', () => {
    const draft = inRow(addRow(draftOf(fullRules), bands), 3, 0, '100');
    expect(placesOf(draft)).toEqual(['locks.bands[3].count']);
  });

  test('take their sources with them, and have one together where all are from one place', () => {
    const draft = draftOf(fullRules);
    const [first, second] = draft.rows['locks.bands']!;
    const { sources } = rulesOfDraft(removeRow(draft, bands, first!.id)).rules;
    expect(sources).toMatchObject({ 'locks.bands[1]': 'sheet 3 (invented)' });
    expect(sources).not.toHaveProperty('locks.bands[0]');
    const all = draft.rows['locks.bands']!.reduce(
      (so, { id }) => writeRowSource(so, bands, id, ' sheet 9 '),
      draft,
    );
    expect(rulesOfDraft(all).rules.sources).toMatchObject({
      'locks.bands': 'sheet 9',
      'locks.bands[1]': 'sheet 9',
    });
    expect(rulesOfDraft(writeRowSource(all, bands, second!.id, '')).rules.sources).not.toHaveProperty(
      'locks.bands',
    );
  });

  test('pasted from a spreadsheet are laid over those there and go on below them, source and all', () => {
    const grid = [
      ['50', '2', 'sheet 5'],
      ['80 in', '3', ''],
      ['100', '4', 'sheet 5'],
    ];
    const { rules, problems } = rulesOfDraft(
      pasteRows(draftOf(fullRules), bands, { row: 1, column: 0 }, grid, 'us'),
    );
    expect(problems).toEqual([]);
    expect(rules.locks?.bands.map(({ upToNm, count }) => [upToNm / inchNm, count])).toEqual([
      [20, 1],
      [50, 2],
      [80, 3],
      [100, 4],
    ]);
    expect(rules.sources).toMatchObject({ 'locks.bands[1]': 'sheet 5', 'locks.bands[3]': 'sheet 5' });
  });
});

test('a table taken out goes with its sources and comes back as it was', () => {
  const draft = draftOf(fullRules);
  const without = rulesOfDraft(removeTable(draft, 'hooks')).rules;
  expect([without.hooks, without.sources?.['hooks.capacityKg']]).toEqual([undefined, undefined]);
  expect(rulesOfDraft({ ...removeTable(draft, 'hooks'), tables: draft.tables }).rules).toEqual(fullRules);
});

test('a source goes with its number', () => {
  const told = writeSource(draftOf(fullRules), 'onSide.narrowerThan', ' sheet 5 ');
  expect(rulesOfDraft(told).rules.sources).toMatchObject({ 'onSide.narrowerThan': 'sheet 5' });
  const emptied = rulesOfDraft(typed(draftOf(fullRules), 'locks.extra.stop-end', '')).rules;
  expect(emptied.sources).not.toHaveProperty('locks.extra.stop-end');
  expect(emptied.locks?.extra).toEqual({ 'inside-corner': 1 });
});

/** Every value by its keys, rows as '[]'; a list of plain values is one. */
function leaves(value: unknown, path: readonly string[] = []): string[] {
  if (Array.isArray(value) && value.some((each) => typeof each === 'object'))
    return [...new Set(value.flatMap((each) => leaves(each, [...path, '[]'])))];
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return [path.join('.')];
  return Object.entries(value).flatMap(([key, each]) => leaves(each, [...path, key]));
}

function takeOut(value: Record<string, unknown>, [key = '', ...rest]: readonly string[]): void {
  const inner = value[key];
  if (rest.length === 0) delete value[key];
  else if (typeof inner === 'object' && inner !== null) {
    takeOut(inner as Record<string, unknown>, rest);
    if (Object.keys(inner).length === 0) delete value[key];
  }
}
