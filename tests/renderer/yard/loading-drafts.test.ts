// What is typed on the loading screen, and what the core is told of it.
import { describe, expect, test } from 'vitest';
import { givenRows, readGiven } from '../../../renderer/screens/yard/loading/given-draft.ts';
import { emptyLine, readLines, type SendLine } from '../../../renderer/screens/yard/loading/make-draft.ts';
import { emptyTruck, readTruck, truckTexts } from '../../../renderer/screens/yard/loading/truck-draft.ts';

const footNm = 304_800_000;

const line = (what: string, quantity: string, stop = '1'): SendLine => ({
  ...emptyLine(),
  what,
  quantity,
  stop,
});

describe('a truck', () => {
  test('bare numbers are feet and pounds where lengths are in feet, metres and kilograms elsewhere', () => {
    const texts = {
      code: ' T1 ',
      name: 'Flatbed',
      payload: '14,000',
      deckLength: '24',
      deckWidth: "8'",
      stackHeight: '6 ft',
    };
    const { truck, wrong } = readTruck(texts, 'us');
    expect(wrong).toEqual({});
    // 1 lb is 453.59237 g by definition.
    expect(truck).toEqual({
      code: 'T1',
      name: 'Flatbed',
      payloadGrams: 6_350_293,
      deckLengthNm: 24 * footNm,
      deckWidthNm: 8 * footNm,
      stackHeightNm: 6 * footNm,
    });
    expect(readTruck({ ...texts, payload: '6350', deckLength: '7.3' }, 'metric').truck).toMatchObject({
      payloadGrams: 6_350_000,
      deckLengthNm: 7_300_000_000,
    });
    expect(truck === null ? null : readTruck(truckTexts(truck, 'us'), 'us').truck).toEqual(truck);
  });

  test('everything that is missing or cannot be read is said at its field', () => {
    expect(Object.keys(readTruck(emptyTruck, 'us').wrong).sort()).toEqual([
      'code',
      'deckLength',
      'deckWidth',
      'name',
      'payload',
      'stackHeight',
    ]);
    const bad = { ...emptyTruck, code: 'T', name: 'T', payload: 'heavy', deckLength: '0' };
    const { truck, wrong } = readTruck(bad, 'us');
    expect(truck).toBeNull();
    expect(wrong['payload']!.message).toContain('heavy');
    expect(wrong['deckLength']!.message).toContain('over zero');
  });
});

describe('what is to go', () => {
  const tags = {
    components: new Set(['P836']),
    containers: new Set(['RK-1']),
    gangs: new Set(['GA-1']),
  };

  test('pieces have a number, containers and gangs go whole, empty lines say nothing', () => {
    const lines = [line('P836', '10', '2'), line('RK-1', ''), line('GA-1', '3'), line('', '')];
    expect(readLines(lines, tags)).toEqual({
      lines: [
        { component: 'P836', quantity: 10, stop: 2 },
        { container: 'RK-1', stop: 1 },
        { gang: 'GA-1', stop: 1 },
      ],
      wrong: {},
    });
  });

  test.each([
    ['P836', '', '1', 'How many P836?'],
    ['P836', '0', '1', 'How many P836?'],
    ['P836', '1.5', '1', 'How many P836?'],
    ['P836', '5', '0', 'The stop is a whole number from 1 to 50.'],
    ['P836', '5', '51', 'The stop is a whole number from 1 to 50.'],
    ['NOPE', '5', '1', 'NOPE is no component, container or gang.'],
    ['', '5', '1', 'Nothing is no component, container or gang.'],
  ])('%s, %s, stop %s is not sent', (what, quantity, stop, words) => {
    const bad = line(what, quantity, stop);
    expect(readLines([bad, line('P836', '1')], tags)).toEqual({
      lines: [{ component: 'P836', quantity: 1, stop: 1 }],
      wrong: { [bad.id]: words },
    });
  });
});

describe('what was given', () => {
  const held = { owner: 'OURS', condition: 'ready' as const };
  const list = {
    id: 'design:GB',
    of: 'design' as const,
    at: '2026-03-02T07:00:00-05:00',
    code: 'GB',
    name: '',
    job: null,
    neededAt: null,
    from: null,
    to: null,
    places: [
      {
        location: 'ENN',
        name: 'Yard',
        lines: [{ component: 'LK', name: 'Lock', ...held, quantity: 18, weightGrams: 1 }],
        weightGrams: 1,
      },
    ],
    short: [
      {
        component: 'R8',
        name: 'Rail',
        kind: 'stiffening-rail',
        owner: null,
        wanted: 4,
        there: 0,
        missing: 4,
        elsewhere: [],
      },
    ],
    hooks: [],
    coming: [],
    pieces: 18,
    weightGrams: 1,
  };
  const rows = givenRows(list, 'ENN', 'OURS');
  const draft = { number: 'I-1', from: 'ENN', to: 'TB', given: {}, insteadOf: {} };

  test('untouched it is as listed; what is short has a row of its own', () => {
    expect(rows.map(({ component, listed, missing }) => [component, listed, missing])).toEqual([
      ['LK', 18, 0],
      ['R8', 0, 4],
    ]);
    expect(readGiven(rows, draft, 'OURS')).toEqual({
      lines: [{ component: 'LK', ...held, quantity: 18, insteadOf: null }],
      errors: [],
    });
  });

  test('less of one, another in place of the other', () => {
    const [lock, rail] = rows.map(({ key }) => key);
    const typed = {
      ...draft,
      given: { [lock!]: '16' },
      insteadOf: { [rail!]: { component: 'R10', quantity: '4' } },
    };
    expect(readGiven(rows, typed, 'OURS').lines).toEqual([
      { component: 'LK', ...held, quantity: 16, insteadOf: null },
      { component: 'R10', ...held, quantity: 4, insteadOf: 'R8' },
    ]);
  });

  test('half a substitution and a number that is none are said at their rows', () => {
    const [lock, rail] = rows.map(({ key }) => key);
    const typed = {
      ...draft,
      given: { [lock!]: 'some' },
      insteadOf: { [rail!]: { component: 'R10', quantity: '' } },
    };
    const { lines, errors } = readGiven(rows, typed, 'OURS');
    expect(lines).toEqual([]);
    expect(errors.map(({ message }) => message)).toEqual([
      'How many LK is no whole number.',
      'In place of R8: how many, and of what?',
    ]);
  });
});
