// A proposal in words: what decided, what was found, what is loose, what is short, and which entry a refusal is about.
import { describe, expect, test } from 'vitest';
import type { Proposal } from '../../../renderer/screens/fill/fill-shapes.ts';
import { gatheredFindings, gatheredLoose, shortPanels } from '../../../renderer/screens/fill/gathered.ts';
import { refusedGang } from '../../../renderer/screens/fill/named-gangs.ts';
import { refusedField } from '../../../renderer/screens/fill/refused-field.ts';
import {
  proofWords,
  proposalName,
  scoreHeads,
  scoreWords,
} from '../../../renderer/screens/fill/score-words.ts';

const score = { newFaceNm: 0, holesAlone: 0, shortage: 0, fillerNm: 0, panelCount: 1, asymmetry: 0 };
const gangs: Proposal['gangs'] = [{ side: 'A', leg: 0, design: 'GA', fromNm: 0, widthNm: 5, bottomNm: 0 }];
const units = { length: (lengthNm: number) => `${lengthNm} nm` };

const found = (severity: 'stop' | 'caution' | 'note', message: string, where: string) => ({
  rule: 'r',
  severity,
  message,
  where,
});

test('What decided stands in its order, a word for each head; what is missing is marked', () => {
  expect(scoreWords({ score, gangs }, units).map(({ words }) => words)).toEqual([
    'none',
    'every tie through',
    'none short',
    'none',
    '1 panel',
    'even',
  ]);
  const worse = { newFaceNm: 7, holesAlone: 1, shortage: 2, fillerNm: 3, panelCount: 4, asymmetry: 1 };
  expect(scoreWords({ score: worse, gangs }, units)).toEqual([
    { words: '7 nm of face', isBad: false },
    { words: '1 hole alone', isBad: true },
    { words: '2 panels short', isBad: true },
    { words: '3 nm', isBad: false },
    { words: '4 panels', isBad: false },
    { words: 'uneven', isBad: false },
  ]);
  for (const standing of [gangs, []])
    expect(scoreWords({ score, gangs: standing }, units)).toHaveLength(
      scoreHeads({ gangs: standing }).length,
    );
  expect(proofWords(false)).toMatch(/^Not proven/u);
  expect(proposalName({ order: 'first' }, false)).toBe('New gangs');
});

test('Findings of the same words are said once with all their places, stops before cautions before notes', () => {
  expect(
    gatheredFindings([
      found('note', 'n', 'wall'),
      found('caution', 'c', 'design G1'),
      found('stop', 's', 'design G1'),
      found('stop', 's', 'design G2'),
      found('stop', 's', 'design G2'),
    ]),
  ).toEqual([
    { severity: 'stop', message: 's', places: ['design G1', 'design G2'] },
    { severity: 'caution', message: 'c', places: ['design G1'] },
    { severity: 'note', message: 'n', places: ['wall'] },
  ]);
});

test('Loose pieces alike are one line: corners and stop-ends with each place, locks with their legs', () => {
  const made = { widthNm: 1, heightNm: 2, areaM2: 3, backing: null, backingPieces: 0, hours: null };
  const lines = gatheredLoose([
    { side: 'B', purpose: 'inside-corner', component: 'IC8', quantity: 1, where: 'corner 1' },
    { side: 'B', purpose: 'inside-corner', component: 'IC8', quantity: 1, where: 'corner 2' },
    { side: 'both', purpose: 'stop-end', component: null, quantity: 1, where: 'start of the wall', made },
    { side: 'both', purpose: 'stop-end', component: null, quantity: 1, where: 'end of the wall', made },
    { side: 'A', purpose: 'gang-locks', component: 'LK', quantity: 3, where: "side A, leg 1, 6' along" },
    { side: 'A', purpose: 'gang-locks', component: 'LK', quantity: 4, where: "side A, leg 1, 9' along" },
  ]);
  expect(lines.map(({ purpose, quantity, places }) => [purpose, quantity, places])).toEqual([
    ['inside-corner', 2, ['corner 1, side B', 'corner 2, side B']],
    ['stop-end', 2, ['start of the wall', 'end of the wall']],
    ['gang-locks', 7, ['side A, leg 1']],
  ]);
});

describe('panels short', () => {
  const open = 'open' as const;
  const edges = { left: open, right: open };
  const design: Proposal['designs'][number] = {
    code: 'GA',
    name: 'GA',
    isNew: false,
    geometry: {
      panels: [0, 1, 2].map((xNm) => ({ panel: 'P24', xNm, yNm: 0, onSide: false })),
      fillers: [],
      edges,
      equalised: false,
    },
    symmetrical: true,
    widthNm: 1,
    heightNm: 1,
    weightGrams: 1,
  };

  test('are told with what all standing gangs need', () => {
    const standing = [...gangs, ...gangs, ...gangs, ...gangs];
    expect(shortPanels({ short: { P24: 5 }, gangs: standing, designs: [design] })).toEqual([
      { panel: 'P24', needed: 12, short: 5 },
    ]);
  });

  test('of a column are of both its halves, though they may be one design', () => {
    expect(shortPanels({ short: { P24: 1 }, gangs: [], designs: [design] })[0]?.needed).toBe(6);
    const other = { ...design, code: 'GB' };
    expect(shortPanels({ short: { P24: 1 }, gangs: [], designs: [design, other] })[0]?.needed).toBe(6);
  });
});

test('A refusal is told at its field, and of gangs to be kept at its gang', () => {
  expect(
    ['wall.legs[1]', 'wall.turns', 'rows[0]', 'height', 'column.widthB', 'useStock.locations', 'wall'].map(
      refusedField,
    ),
  ).toEqual(['legs', 'legs', 'rows', 'height', 'widthB', 'locations', undefined]);
  expect(refusedGang('designs[2].hand')).toEqual({ index: 2, field: 'hand' });
  expect(refusedGang('designs[0].assembleH')).toEqual({ index: 0, field: 'assemble' });
  expect(refusedGang('system')).toBeNull();
});
