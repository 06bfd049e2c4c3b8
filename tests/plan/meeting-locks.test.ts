// Meeting edges and braces of a pour. Figures of the tables are common practice, no source.
import { describe, expect, test } from 'vitest';
import { meetingLocks, type PourDesign } from '../../core/plan/meeting-locks.ts';
import { pourFindings } from '../../core/plan/pour-findings.ts';
import type { LooseLine, PlacedGang, Pour } from '../../core/plan/pours.ts';
import { designOf, systemWith, taken } from '../gang/common-practice.ts';
import { job, pourOf } from './pours-for-tests.ts';

const foot = 304_800_000;
type Edges = Parameters<typeof designOf>[1];

function designed(edges: Edges = {}, rules: Parameters<typeof systemWith>[0] = {}): PourDesign {
  const system = systemWith({ braces: null, ...rules });
  const design = designOf([['P3x9', 0, 0]], edges);
  const takeOff = taken(system, design);
  return {
    widthNm: takeOff.widthNm,
    holes: [],
    takeOff,
    rules: system.rules,
    edges: design.edges,
    braced: design.braced ?? true,
  };
}

const [sideA, sideB] = pourOf().sides;
const gangs = (...at: readonly (readonly [string, number])[]): PlacedGang[] =>
  at.map(([design, feet]) => ({ design, atNm: feet * foot }));
const locksBetween = (quantity: number, purpose = 'locks between gangs'): LooseLine => ({
  side: 'both',
  component: 'LK',
  quantity,
  purpose,
});

function pour(a: PlacedGang[], b: PlacedGang[], loose: readonly LooseLine[] = []): Pour {
  return pourOf({
    sides: [
      { ...sideA, gangs: a },
      { ...sideB, gangs: b },
    ],
    loose,
  });
}

function found(one: Pour, designs: Record<string, PourDesign>) {
  return pourFindings(job, one, [], new Map(Object.entries(designs)));
}

function locksAt(
  a: PlacedGang[],
  b: PlacedGang[],
  designs: Record<string, PourDesign>,
): Readonly<Record<string, number>> {
  return meetingLocks(pour(a, b), new Map(Object.entries(designs))).locks;
}

describe('edges where gangs meet', () => {
  const designs = { GA: designed(), GC: designed({ edges: { right: 'inside-corner' } }) };
  const [pair, three] = [gangs(['GA', 0], ['GA', 3]), gangs(['GA', 0], ['GA', 3], ['GA', 6])];

  test('one edge on side A and two on side B take 4 locks each, once', () => {
    const { locks, meetings } = meetingLocks(pour(pair, three), new Map(Object.entries(designs)));
    expect(locks).toEqual({ LK: 12 });
    expect(meetings.map(({ side, atNm }) => [side, atNm / foot])).toEqual([
      ['A', 3],
      ['B', 3],
      ['B', 6],
    ]);
  });

  test('loose pieces with the same number say nothing, with another a caution names both', () => {
    expect(found(pour(pair, three, [locksBetween(12)]), designs)).toEqual([]);
    for (const held of [11, 13]) {
      const [caution] = found(pour(pair, three, [locksBetween(held)]), designs);
      expect(caution).toMatchObject({ rule: 'meeting-locks', severity: 'caution', where: 'W1' });
      expect(caution?.message).toContain('12 LK');
      expect(caution?.message).toContain(`hold ${held}`);
    }
    expect(found(pour(pair, three), designs)[0]?.message).toContain('hold 0');
  });

  test('more than the edges take is nothing doubtful where some of them are for corners', () => {
    const loose = [locksBetween(12), locksBetween(24, 'locks at the corner')];
    expect(found(pour(pair, three, loose), designs)).toEqual([]);
    expect(
      found(pour(pair, three, [locksBetween(2), locksBetween(9, 'locks at the corner')]), designs),
    ).toHaveLength(1);
  });

  test('at a corner gangs do not meet; side B is drawn from its other side', () => {
    expect(locksAt(gangs(['GC', 0], ['GA', 3]), [], designs)).toEqual({});
    expect(locksAt([], gangs(['GC', 0], ['GA', 3]), designs)).toEqual({ LK: 4 });
    expect(locksAt([], gangs(['GA', 0], ['GC', 3]), designs)).toEqual({});
  });

  test('6 in apart they take adjustable locks, 1 ft apart a stop names the made-up closure and the place', () => {
    const near = [
      { design: 'GA', atNm: 0 },
      { design: 'GA', atNm: 3.5 * foot },
    ];
    expect(meetingLocks(pour(near, []), new Map(Object.entries(designs))).locks).toEqual({ AL: 4 });
    const [stop] = found(pour(gangs(['GA', 0], ['GA', 4]), []), designs);
    expect(stop).toMatchObject({ rule: 'closure', severity: 'stop', where: 'W1, side A, 914.4 mm along' });
  });
});

function table(sides?: 'one' | 'both') {
  return { braces: { component: 'BR', maximumSpacing: '8 ft', ...(sides && { sides }) } };
}

function braces(a: PourDesign, b: PourDesign): readonly string[] {
  return found(pour(gangs(['A', 0]), gangs(['B', 0])), { A: a, B: b }).map(
    ({ rule, severity, where }) => `${severity} ${rule} ${where}`,
  );
}

describe('columns', () => {
  const half = designed({ edges: { left: 'column', right: 'column' } });

  test('two L-halves have two opening joints of 9 ft with 4 locks each; two columns have four', () => {
    expect(locksAt(gangs(['H', 0]), gangs(['H', 0]), { H: half })).toEqual({ LK: 8 });
    expect(locksAt(gangs(['H', 0], ['H', 10]), gangs(['H', 0], ['H', 10]), { H: half })).toEqual({ LK: 16 });
  });

  test('a half without its other half, and a gang with a column at one end only, open nowhere', () => {
    expect(locksAt(gangs(['H', 0]), [], { H: half })).toEqual({});
    const wall = designed({ edges: { left: 'column' } });
    expect(locksAt(gangs(['W', 0]), gangs(['W', 0]), { W: wall })).toEqual({});
  });
});

describe('braced sides', () => {
  const [yes, no] = [designed({}, table()), designed({ braced: false }, table())];

  test('one side is braced: neither and both are a caution', () => {
    expect(braces(yes, no)).toEqual([]);
    expect(braces(no, yes)).toEqual([]);
    expect(braces(no, no)).toEqual(['caution braced-sides W1']);
    expect(braces(yes, yes)).toEqual(['caution braced-sides W1']);
  });

  test('both sides are braced: one alone is a caution', () => {
    const [both, neither] = [designed({}, table('both')), designed({ braced: false }, table('both'))];
    expect(braces(both, both)).toEqual([]);
    expect(braces(both, neither)).toEqual(['caution braced-sides W1']);
  });

  test('tables without braces say nothing', () => {
    expect(braces(designed(), designed())).toEqual([]);
  });
});

function corner(side: 'A' | 'B' | 'both'): LooseLine {
  return { side, component: 'SC', quantity: 4, purpose: 'corners' };
}

function box(
  b: PlacedGang[],
  designs: Record<string, PourDesign>,
  loose: readonly LooseLine[] = [],
): readonly string[] {
  return found(pour([], b, loose), designs).map(
    ({ rule, severity, where }) => `${severity} ${rule} ${where}`,
  );
}

describe('closed boxes', () => {
  const inside = { edges: { left: 'inside-corner', right: 'inside-corner' } } as const;
  const gang = (shrinking: ReadonlySet<string>, edges: Edges = inside): PourDesign => ({
    ...designed(edges),
    shrinking,
  });
  const four = gangs(['G', 1], ['G', 5], ['G', 9], ['G', 13]);
  test('four inside corners round are a stop, until a piece of that side can be drawn in', () => {
    const designs = { G: gang(new Set(['SC'])) };
    const stop = 'stop box-shrinks W1, side B';
    expect(box(four, designs)).toEqual([stop]);
    expect(box(four, designs, [corner('A')])).toEqual([stop]);
    expect(box(four, designs, [{ ...corner('B'), component: 'IC' }])).toEqual([stop]);
    expect(box(four, designs, [corner('B')])).toEqual([]);
    expect(box(four, designs, [corner('both')])).toEqual([]);
  });

  test('three sides of a box, and a box of outside corners, come off', () => {
    const designs = {
      G: gang(new Set()),
      L: gang(new Set(), { edges: { left: 'inside-corner' } }),
      R: gang(new Set(), { edges: { right: 'inside-corner' } }),
      O: gang(new Set(), { edges: { left: 'outside-corner', right: 'outside-corner' } }),
    };
    expect(box(gangs(['L', 1], ['G', 5], ['R', 9]), designs)).toEqual([]);
    expect(box(gangs(['O', 1], ['O', 5], ['O', 9], ['O', 13]), designs)).toEqual([]);
  });
});
