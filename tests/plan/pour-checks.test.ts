import { describe, expect, test } from 'vitest';
import { checkPour } from '../../core/plan/check-pour.ts';
import { oppositeHoles } from '../../core/plan/opposite-holes.ts';
import { pourFindings } from '../../core/plan/pour-findings.ts';
import type { Pour } from '../../core/plan/pours.ts';
import { job, known, pourOf } from './pours-for-tests.ts';

const refusal = (changes: Partial<Pour>, others: Pour[] = []) =>
  checkPour(job, pourOf(changes), others, known);
const [sideA, sideB] = pourOf().sides;

describe('a pour that contradicts itself is refused, one code a reason', () => {
  const rows: readonly [code: string, field: string, changes: Partial<Pour>, others?: Pour[]][] = [
    ['sides', 'sides', { sides: [sideA, { ...sideB, side: 'A' }] }],
    [
      'gang-before-start',
      'sides.A.gangs',
      { sides: [{ ...sideA, gangs: [{ design: 'GA', atNm: -1 }] }, sideB] },
    ],
    ['unknown-design', 'sides.B.gangs', { sides: [sideA, { ...sideB, gangs: [{ design: 'GX', atNm: 0 }] }] }],
    [
      'unknown-component',
      'loose',
      { loose: [{ side: 'A', component: 'XX', quantity: 1, purpose: 'braces' }] },
    ],
    ['unknown-component', 'tieComponent', { tieComponent: 'XX' }],
    [
      'close-before-set',
      'sides.B.setAt',
      { sides: [sideA, { ...sideB, setAt: '2026-03-01T07:00:00-05:00' }] },
    ],
    ['finish-before-set', 'finishAt', { finishAt: '2026-03-03T07:00:00-05:00' }],
    ['unknown-pour', 'after', { after: ['W9'] }],
    ['cyclic-sequence', 'after', { after: ['W1'] }],
    [
      'cyclic-sequence',
      'after',
      { after: ['W2'] },
      [pourOf({ code: 'W2', after: ['W3'] }), pourOf({ code: 'W3', after: ['W1'] })],
    ],
  ];
  test.each(rows)('%s at %s', (code, field, changes, others) => {
    expect(refusal(changes, others)).toMatchObject({ code, field });
  });

  test('a circle names its pours in order', () => {
    const others = [pourOf({ code: 'W2', after: ['W1'] })];
    expect(refusal({ after: ['W2'] }, others)?.message).toContain('W1 after W2 after W1');
  });

  test('the pour as it stands is taken', () => {
    expect(refusal({})).toBeUndefined();
  });
});

describe('a doubtful pour is kept and its finding names the place', () => {
  const design = { widthNm: 3_657_600_000, holes: [{ xNm: 304_800_000, yNm: 609_600_000 }] };
  const designs = new Map([['GA', design]]);
  const rules = (changes: Partial<Pour>, others: Pour[] = []) =>
    pourFindings(job, pourOf(changes), others, designs).map((each) => `${each.severity} ${each.rule}`);

  test('nothing doubtful, nothing found', () => {
    expect(rules({})).toEqual([]);
  });

  test('a set that lasts past the finish is a stop', () => {
    expect(rules({ sides: [sideA, { ...sideB, setH: 17 }] })).toEqual(['stop set-before-pour']);
  });

  test('a set that begins at night is a caution', () => {
    expect(rules({ sides: [{ ...sideA, setAt: '2026-03-02T03:00:00-05:00' }, sideB] })).toEqual([
      'caution set-in-shift',
    ]);
  });

  test('closing while the first side is still being set is a caution', () => {
    expect(rules({ sides: [{ ...sideA, setH: 9 }, sideB] })).toEqual(['caution close-after-set']);
  });

  test('two gangs in one place are a stop', () => {
    const gangs = [
      { design: 'GA', atNm: 0 },
      { design: 'GA', atNm: 3_657_599_999 },
    ];
    expect(rules({ sides: [{ ...sideA, gangs }, sideB] })).toEqual(['stop gangs-overlap']);
  });

  test('a pour before the one it comes after is a stop', () => {
    const later = pourOf({ code: 'W0', finishAt: '2026-03-05T12:00:00-05:00' });
    expect(rules({ after: ['W0'] }, [later])).toEqual(['stop sequence']);
  });

  test('steel promised for the day after the close is a caution, for the day itself it is none, done it is none', () => {
    const gate = {
      name: 'steel',
      who: 'steel crew',
      before: 'close',
      promised: '2026-03-04',
      done: false,
    } as const;
    expect(rules({ gates: [gate] })).toEqual(['caution gate-late']);
    expect(rules({ gates: [{ ...gate, promised: '2026-03-03' }] })).toEqual([]);
    expect(rules({ gates: [{ ...gate, done: true }] })).toEqual([]);
  });

  test('a gang that is not its own mirror image leaves holes without a partner, counted by side', () => {
    const found = pourFindings(job, pourOf({ tieComponent: 'TR' }), [], designs);
    expect(found).toMatchObject([{ rule: 'ties-through', where: 'W1, 304.8 mm along, 609.6 mm up' }]);
    expect(found[0]?.message).toContain('1 tie holes of side A and 1 of side B');
  });

  test('holes 2 mm off have a partner within 2 mm, and none within a nanometre less', () => {
    const near = { widthNm: design.widthNm, holes: [{ xNm: 3_352_800_000 - 2_000_000, yNm: 609_600_000 }] };
    const both = new Map([...designs, ['GB', near]]);
    const pour = pourOf({ sides: [sideA, { ...sideB, gangs: [{ design: 'GB', atNm: 0 }] }] });
    expect(oppositeHoles(pour, both, 2_000_000)).toMatchObject({ pairs: 1, firstAlone: null });
    expect(oppositeHoles(pour, both, 1_999_999)).toMatchObject({ pairs: 0, alone: { A: 1, B: 1 } });
  });
});
