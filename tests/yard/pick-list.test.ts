// What is taken from where: ours first (common practice, no source), place after place, heaviest first, and what is
// short. What was given instead is never silent.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { givenInstead, insteadRemark, notGiven } from '../../core/yard/given-instead.ts';
import { conditions, type Location, type Owner } from '../../core/yard/movement.ts';
import { pickId, readPickId } from '../../core/yard/pick-id.ts';
import { asWalked, pickList } from '../../core/yard/pick-list.ts';
import type { StockLine } from '../../core/yard/quantities.ts';

const owners: readonly Owner[] = [
  { code: 'OURS', name: 'Ours', kind: 'ours', agreement: null },
  { code: 'HIRE', name: 'Hire', kind: 'supplier', agreement: 'H1' },
  { code: 'FOUND', name: 'Found', kind: 'others', agreement: null },
];
const place = (code: string, kind: Location['kind']): Location => ({ code, name: code, kind });
const locations = [
  place('R2', 'rack'),
  place('R10', 'rack'),
  place('YARD', 'yard'),
  place('GA-1', 'gang'),
  place('SHOP', 'repair'),
  place('DEPOT', 'supplier'),
];
const weightGrams = new Map([
  ['P', 90_000],
  ['LK', 2000],
  ['R8', 18_000],
]);
const line = (
  component: string,
  location: string,
  quantity: number,
  more: Partial<StockLine> = {},
): StockLine => ({
  component,
  owner: 'OURS',
  location,
  condition: 'ready',
  quantity,
  basis: null,
  basisDate: null,
  ...more,
});

const key = (each: { component: string; owner: string; condition: string }, location: string): string =>
  [each.component, each.owner, each.condition, location].join(' ');

describe('a pick list', () => {
  test('goes place after place, R2 before R10, heaviest first, ours before hired', () => {
    const stock = [
      line('LK', 'R10', 50),
      line('LK', 'R2', 10),
      line('P', 'R10', 2),
      line('P', 'R2', 2, { owner: 'HIRE' }),
      line('R8', 'R10', 9),
    ];
    const {
      places,
      short,
      pieces,
      weightGrams: grams,
    } = pickList(
      [
        { component: 'LK', quantity: 55 },
        { component: 'P', quantity: 3 },
        { component: 'R8', quantity: 4 },
      ],
      { stock, locations, owners, weightGrams },
    );
    expect(
      places.map(({ location, lines }) => [
        location,
        lines.map(({ component, quantity, owner }) => `${quantity} ${component} ${owner}`),
      ]),
    ).toEqual([
      ['R2', ['1 P HIRE', '5 LK OURS']],
      ['R10', ['2 P OURS', '4 R8 OURS', '50 LK OURS']],
    ]);
    expect(short).toEqual([]);
    expect([pieces, grams]).toEqual([62, 3 * 90_000 + 55 * 2000 + 4 * 18_000]);
  });

  test('what is short says by how many, and what of it lies where it cannot be taken', () => {
    const stock = [
      line('LK', 'R2', 5),
      line('LK', 'R2', 3, { condition: 'to-clean' }),
      line('LK', 'SHOP', 2, { condition: 'to-repair' }),
      line('LK', 'GA-1', 23),
      line('LK', 'YARD', 4, { owner: 'FOUND' }),
      line('LK', 'DEPOT', 99, { owner: 'HIRE' }),
    ];
    const { places, short } = pickList([{ component: 'LK', quantity: 20 }], {
      stock,
      locations,
      owners,
      weightGrams,
    });
    expect(places.map((each) => each.lines.map((taken) => taken.quantity))).toEqual([[5]]);
    expect(short).toEqual([
      {
        component: 'LK',
        owner: null,
        wanted: 20,
        there: 5,
        missing: 15,
        elsewhere: [
          { location: 'R2', owner: 'OURS', condition: 'to-clean', quantity: 3 },
          { location: 'SHOP', owner: 'OURS', condition: 'to-repair', quantity: 2 },
          { location: 'YARD', owner: 'FOUND', condition: 'ready', quantity: 4 },
        ],
      },
    ]);
  });

  test('from one place alone, what lies elsewhere is named', () => {
    const stock = [line('P', 'R2', 1), line('P', 'YARD', 8)];
    const wanted = [{ component: 'P', quantity: 4 }];
    const { short } = pickList(wanted, { stock, locations, owners, weightGrams, from: ['R2'] });
    expect(short).toMatchObject([{ missing: 3, elsewhere: [{ location: 'YARD', quantity: 8 }] }]);
  });

  test('what goes back to a supplier is his and in the condition of the note, and is not taken twice', () => {
    const stock = [
      line('LK', 'YARD', 10, { owner: 'HIRE' }),
      line('LK', 'YARD', 4, { owner: 'HIRE', condition: 'to-repair' }),
      line('LK', 'YARD', 5),
    ];
    const { places, short } = pickList(
      [
        { component: 'LK', quantity: 7 },
        { component: 'LK', quantity: 6, owner: 'HIRE', condition: 'ready' },
        { component: 'LK', quantity: 6, owner: 'HIRE', condition: 'to-repair' },
      ],
      { stock, locations, owners, weightGrams },
    );
    expect(places[0]?.lines.map(({ owner, condition, quantity }) => [owner, condition, quantity])).toEqual([
      ['HIRE', 'ready', 8],
      ['HIRE', 'to-repair', 4],
      ['OURS', 'ready', 5],
    ]);
    expect(short).toMatchObject([{ component: 'LK', owner: 'HIRE', wanted: 6, there: 4, missing: 2 }]);
  });

  test('takes never more than there is nor than is wanted, and every piece wanted is taken or short', () => {
    const anyLine = fc
      .tuple(
        fc.constantFrom('LK', 'P', 'R8'),
        fc.constantFrom(...locations.map(({ code }) => code)),
        fc.constantFrom(...owners.map(({ code }) => code)),
        fc.constantFrom(...conditions),
        fc.integer({ min: -3, max: 30 }),
      )
      .map(([component, location, owner, condition, quantity]) =>
        line(component, location, quantity, { owner, condition }),
      );
    const lines = fc.uniqueArray(anyLine, { maxLength: 30, selector: (each) => key(each, each.location) });
    const wants = fc.array(
      fc.record({ component: fc.constantFrom('LK', 'P', 'R8'), quantity: fc.integer({ min: 1, max: 60 }) }),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(lines, wants, (stock, wanted) => {
        const list = pickList(wanted, { stock, locations, owners, weightGrams });
        for (const component of ['LK', 'P', 'R8']) {
          const asked = wanted.filter((each) => each.component === component);
          const total = asked.reduce((sum, each) => sum + each.quantity, 0);
          const taken = list.places
            .flatMap((each) => each.lines)
            .filter((each) => each.component === component);
          const short = list.short.find((each) => each.component === component)?.missing ?? 0;
          expect(taken.reduce((sum, each) => sum + each.quantity, 0) + short).toBe(total);
        }
        for (const { location, lines: taken } of list.places)
          for (const each of taken) {
            expect(each.owner).not.toBe('FOUND');
            expect(['ready', 'ready-hidden']).toContain(each.condition);
            expect(['R2', 'R10', 'YARD']).toContain(location);
            const there = stock.find((at) => key(at, at.location) === key(each, location))!;
            expect(each.quantity).toBeLessThanOrEqual(there.quantity);
          }
        const walked = list.places.map((each) => each.location);
        expect(walked.toSorted(asWalked)).toEqual(walked);
      }),
      { numRuns: 500 },
    );
  });
});

describe('what was given instead', () => {
  const components = new Map([
    ['R8', { kind: 'stiffening-rail', name: 'Rail 8 ft', lengthNm: 8 }],
    ['R10', { kind: 'stiffening-rail', name: 'Rail 10 ft', lengthNm: 10 }],
    ['P836', { kind: 'panel', name: 'Panel 36' }],
    ['P830', { kind: 'panel', name: 'Panel 30' }],
  ]);

  test('a rail of another length is a stop for the designer, any other piece a caution, the same piece nothing', () => {
    const lines = [
      { component: 'R10', quantity: 3, insteadOf: 'R8' },
      { component: 'P830', quantity: 1, insteadOf: 'P836' },
      { component: 'P836', quantity: 4, insteadOf: null },
    ];
    expect(givenInstead(lines, components, 'gang GB')).toEqual([
      {
        rule: 'given-instead',
        severity: 'stop',
        message:
          '3 R10 (Rail 10 ft) given in place of R8 (Rail 8 ft) for gang GB: a rail of another length. Ask the designer before it is built in.',
        where: 'gang GB',
      },
      expect.objectContaining({ severity: 'caution', where: 'gang GB' }),
    ]);
    expect(lines.map(insteadRemark)).toEqual([
      'Given in place of R8: ask the designer',
      'Given in place of P836: ask the designer',
      null,
    ]);
  });

  test('what was given neither as listed nor in its place is still missing', () => {
    const wanted = [
      { component: 'R8', quantity: 5 },
      { component: 'P836', quantity: 4 },
    ];
    const given = [
      { component: 'R10', quantity: 3, insteadOf: 'R8' },
      { component: 'P836', quantity: 4, insteadOf: null },
    ];
    expect(notGiven(wanted, given)).toEqual([{ component: 'R8', quantity: 2 }]);
  });
});

describe('what a pick list is for', () => {
  test.each([
    ['design:GA', { of: 'design', design: 'GA' }],
    ['pour:TB26:P01', { of: 'pour', job: 'TB26', pour: 'P01', side: null }],
    ['pour:TB26:P01:A', { of: 'pour', job: 'TB26', pour: 'P01', side: 'A' }],
    ['note:0198-N1', { of: 'note', note: '0198-N1' }],
    ['pour:T%3AB:P%201', { of: 'pour', job: 'T:B', pour: 'P 1', side: null }],
  ] as const)('%s', (text, picked) => {
    expect(readPickId(text)).toEqual({ ok: true, value: { picked, from: null } });
    expect(pickId(picked, null)).toBe(text);
    expect(readPickId(pickId(picked, 'R 2@x'))).toEqual({ ok: true, value: { picked, from: 'R 2@x' } });
  });

  test.each([
    '',
    'design',
    'design:',
    'pour:TB26',
    'pour:TB26:P01:C',
    'pour:A:B:A:x',
    'gang:GA',
    'design:%',
    'design:GA@',
    'design:GA@A@B',
  ])('%j is refused', (text) => {
    expect(readPickId(text)).toMatchObject({ ok: false, error: { code: 'not-a-pick-list', field: 'id' } });
  });
});
