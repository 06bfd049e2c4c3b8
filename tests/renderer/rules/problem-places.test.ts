// What the core refuses stands at the cell that was typed, in the words of that cell.
import { describe, expect, test } from 'vitest';
import { rulesProblems } from '../../../core/catalogue/check-rules.ts';
import { tableForms } from '../../../renderer/screens/rules/all-forms.ts';
import {
  addComponent,
  addRow,
  writeComponent,
  writeField,
  writeRow,
} from '../../../renderer/screens/rules/draft-edits.ts';
import { changedComponents } from '../../../renderer/screens/rules/catalogue-draft.ts';
import { placed, placeOfField, problemsOf } from '../../../renderer/screens/rules/problem-places.ts';
import { inWords } from '../../../renderer/screens/rules/problem-words.ts';
import { rulesOfDraft, type RulesDraft } from '../../../renderer/screens/rules/rules-draft.ts';
import { components, draftOf, fullRules } from './sample-rules.ts';

const bands = tableForms.flatMap(({ rows }) => rows).find(({ place }) => place === 'locks.bands')!;

function field(draft: RulesDraft, place: string, text: string): RulesDraft {
  const form = tableForms.flatMap(({ fields }) => fields).find((each) => each.place === place)!;
  return writeField(draft, form, text, 'us');
}

function band(draft: RulesDraft, row: number, column: 0 | 1, text: string): RulesDraft {
  return writeRow(draft, bands, draft.rows['locks.bands']![row]!.id, bands.columns[column]!, text, 'us');
}

/** As the core finds them, where the screen puts them. */
function found(draft: RulesDraft) {
  const { rules, problems } = rulesOfDraft(draft);
  expect(problems).toEqual([]);
  const told = rulesProblems(rules, components).map(({ field: place, message, hint }) => ({
    place: place ?? '',
    message,
    ...(hint === undefined ? {} : { hint }),
  }));
  return placed(told, draft).map((problem) => inWords(problem, 'us'));
}

const good = draftOf(fullRules);

describe('a refusal stands at its cell', () => {
  test('nothing is refused to begin with', () => {
    expect(found(good)).toEqual([]);
  });

  test.each([
    [
      'bands that go down',
      band(good, 1, 0, '10'),
      'locks.bands[1].upTo',
      /"Joint up to" in row 2 .* 10" after 1'-8"/u,
    ],
    [
      'fewer locks on a longer joint',
      band(good, 2, 1, '1'),
      'locks.bands[2].count',
      /^"Locks" in row 3 goes down/u,
    ],
    ['a gap', band(good, 0, 1, '0'), 'locks.bands[0].count', /take no lock/u],
    ['an unknown component', field(good, 'hooks.component', 'LHX'), 'hooks.component', /^"Hook" names LHX/u],
    [
      'a lock that is a hook',
      field(good, 'locks.component', 'LH'),
      'locks.component',
      /is a hook and no lock/u,
    ],
    [
      'a rail that none is as long as',
      lastRail('30 ft'),
      'rails.lengths[1].minimum',
      /the longest is 10'-0"/u,
    ],
    [
      'a sling steeper than upright',
      field(good, 'hooks.minimumAngleDeg', '95'),
      'hooks.minimumAngleDeg',
      /at most 90/u,
    ],
  ] as const)('%s', (_what, draft, place, words) => {
    const [one, ...more] = found(draft);
    expect([one?.place, more]).toEqual([place, []]);
    expect(one?.message).toMatch(words);
    expect(one?.message).not.toMatch(/\d mm|\.\w+\[/u);
  });

  test('also below an empty row, which is none for the core', () => {
    const spaced = addRow(good, bands);
    const lines = spaced.rows['locks.bands']!;
    const moved = { ...spaced, rows: { ...spaced.rows, 'locks.bands': [lines[3]!, ...lines.slice(0, 3)] } };
    expect(found(band(moved, 2, 0, '10')).map(({ place }) => place)).toEqual(['locks.bands[2].upTo']);
  });
});

function lastRail(text: string): RulesDraft {
  const form = tableForms.flatMap(({ rows }) => rows).find(({ place }) => place === 'rails.lengths')!;
  return writeRow(good, form, good.rows['rails.lengths']![1]!.id, form.columns[1]!, text, 'us');
}

test('a door names a place by its keys, the screen without units', () => {
  expect(placeOfField('rules.locks.bands.1.upToNm')).toBe('locks.bands[1].upTo');
  expect(placeOfField('hooks.capacityGrams')).toBe('hooks.capacityKg');
});

test('a refused component is found by its code, the longest that fits, and its column', () => {
  const names = ['P36', 'P36.5'].map((code) => components.findIndex((each) => each.code === code));
  expect(names).toEqual([7, -1]);
  const added = addComponent(good);
  const id = added.catalogue.at(-1)!.id;
  const draft = writeComponent(added, id, 'code', 'P36.5', 'us');
  const told = ['components.P36.crossMembers', 'components.P36.5.weight', 'components.P36'].map((place) => ({
    place,
    message: '',
  }));
  expect(placed(told, draft).map(({ place }) => place)).toEqual([
    'components#7.crossMembers',
    `components#${id}.weight`,
    'components#7.code',
  ]);
});

test('each table counts its own', () => {
  const all = [
    'locks.bands[1].upTo',
    'locks',
    'fillerLocks.component',
    'sources.locks.x',
    'components#3.code',
  ].map((place) => ({ place, message: '' }));
  expect(
    (['locks', 'fillerLocks', 'components', 'rails'] as const).map((name) => problemsOf(all, name).length),
  ).toEqual([3, 1, 1, 0]);
});

test('what cannot be read in the catalogue is a problem at its row', () => {
  const draft = writeComponent(good, 7, 'weight', 'heavy', 'us');
  expect(changedComponents('OMB', draft.catalogue).problems.map(({ place }) => place)).toEqual([
    'components#7.weight',
  ]);
});
